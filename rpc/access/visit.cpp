#include "rpc/access/visit.hpp"

#include "core/service/desk.hpp"
#include "core/service/methods/ledger/changes.hpp"

#include <algorithm>
#include <utility>
#include <vector>

namespace limbledger::rpc {

namespace {

using service::Scope;
using wire::Fault;

// RFC 6455, section 7.4.1.
constexpr std::uint16_t close_done = 1000;
constexpr std::uint16_t close_no_text = 1003;
constexpr std::uint16_t close_policy = 1008;
constexpr std::uint16_t close_too_big = 1009;

constexpr std::string_view bearer = "bearer ";

[[nodiscard]] HttpReply refusal(const Service& service, unsigned status, const Fault& fault, std::string fields = {}) {
  return {status, refusal_text(service, fault), std::move(fields)};
}

// The token of "Bearer TOKEN"; the scheme in any case.
[[nodiscard]] std::string_view token_of(std::string_view authorization) {
  if (authorization.size() < bearer.size()) {
    return {};
  }
  for (std::size_t i = 0; i < bearer.size(); ++i) {
    const char c = authorization[i];
    if ((c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c) != bearer[i]) {
      return {};
    }
  }
  return authorization.substr(bearer.size());
}

}  // namespace

class Visit final : public Conversation, private service::Admission {
 public:
  explicit Visit(Visits& visits) : visits_(visits) {}
  ~Visit() override {
    visits_.sockets_.erase(this);
    visits_.waiting_.erase(this);
  }

  std::optional<HttpReply> head(const HttpHead& head) override {
    cors_.clear();
    caller_.scope = Scope::none;
    auto refused = look_at(head);
    if (refused) {
      refused->fields += cors_;
    }
    return refused;
  }

  HttpReply body(std::string_view text) override {
    if (!within_rate()) {
      return http_trouble(Trouble::often, text);
    }
    auto reply = answered(text);
    if (later_ && hold(text)) {
      HttpReply held;
      held.later = true;
      return held;
    }
    if (!reply) {
      return {204, {}, cors_};
    }
    return {200, std::move(*reply), cors_};
  }

  void http_opened(std::function<void(HttpReply)> send) override { later_ = std::move(send); }

  HttpReply http_trouble(Trouble trouble, std::string_view text) override {
    HttpReply reply = trouble_reply(trouble, text);
    reply.fields += cors_;
    return reply;
  }

  void socket_opened(std::function<void(std::string)> send) override {
    send_ = std::move(send);
    visits_.sockets_.insert(this);
  }

  bool admitted() const override { return caller_.scope != Scope::none; }

  SocketReply message(std::string_view text) override {
    if (!within_rate()) {
      return socket_trouble(Trouble::often, text);
    }
    SocketReply reply{answered(text), 0};
    if (hold(text)) {
      reply.text.reset();
    }
    if (left_) {
      reply.close = close_done;
    }
    return reply;
  }

  SocketReply socket_trouble(Trouble trouble, std::string_view text) override {
    const Service& service = visits_.service_;
    switch (trouble) {
      case Trouble::often:
        return {answer_refused(text, service, too_often()), 0};
      case Trouble::large_message:
        return {answer_too_large(service), close_too_big};
      case Trouble::binary:
        return {refusal_text(service, Fault{"websocket.binary", "", "a text message"}), close_no_text};
      case Trouble::silent:
        return {refusal_text(service, Fault("token.missing", "", "session.open within " + std::to_string(visits_.limits_.session_ms / 1000) + " seconds")
                                          .with("session_ms", std::to_string(visits_.limits_.session_ms))),
                close_policy};
      default:
        return {refusal_text(service, Fault{"http.request", "", "a WebSocket message"}), close_policy};
    }
  }

  void after_reply() override { visits_.tell_changes(); }

  // Asks again for each call that waits, and sends what there is to say or what has waited long enough.
  void look(bool all) override {
    if (held_.empty()) {
      return;
    }
    service::Desk& desk = *visits_.service_.context.desk;
    const std::int64_t now = visits_.tokens_.up_ms();
    const std::uint64_t mark = service::change_mark(desk);
    std::vector<Held> before;
    before.swap(held_);
    for (Held& one : before) {
      const bool over = all || now >= one.until_up_ms;
      if (!over && one.mark == mark) {
        held_.push_back(std::move(one));
        continue;
      }
      auto reply = answered(one.text);
      if (!over && visits_.service_.context.wait_ms) {  // what changed was nothing for this caller
        one.mark = mark;
        held_.push_back(std::move(one));
      } else if (send_) {
        send_(reply.value_or(std::string{}));
      } else {
        later_({200, reply.value_or(std::string{}), cors_});
      }
    }
    if (held_.empty()) {
      visits_.waiting_.erase(this);
    }
  }

  // An examiner's session alone: somebody at a kiosk was asked to call.
  void tell_staff(const std::string& text) {
    if (caller_.scope == Scope::examiner && !left_ && visits_.tokens_.find(token_number_)) {
      send_(text);
    }
  }

  // Sends what changed since the last time, or where the ledger stands once it is first open.
  void tell() {
    if (caller_.scope == Scope::none || caller_.scope == Scope::sync || left_) {
      return;
    }
    const auto grant = visits_.tokens_.find(token_number_);
    if (!grant) {
      return;  // ended or expired: nothing is told any more
    }
    if (visits_.service_.context.desk != nullptr && !visits_.service_.context.desk->flush()) {
      return;
    }
    caller_ = grant->caller;
    service::Context context = visits_.service_.context;
    context.caller = caller_;
    for (bool more = true; more;) {
      service::ChangesReadParams params;
      params.cursor = cursor_;
      const auto changes = service::changes_read(context, params);
      if (!changes) {
        return;  // the next time may do; the cursor stays
      }
      const bool first = !cursor_;
      more = changes->more.value_or(false);
      cursor_ = changes->cursor;
      if (first || !changes->changes.empty()) {
        send_("{\"jsonrpc\":\"2.0\",\"method\":\"" + std::string(changed_name) + "\",\"params\":" + wire::write(*changes) + "}");
      }
    }
  }

 private:
  struct Held {
    std::string text;
    std::int64_t until_up_ms = 0;
    std::uint64_t mark = 0;
  };

  // Keeps the call that was just answered, to be answered again, where it would rather wait and may.
  [[nodiscard]] bool hold(std::string_view text) {
    const service::Context& context = visits_.service_.context;
    if (!context.wait_ms || context.desk == nullptr || left_ || held_.size() >= waits_max) {
      return false;
    }
    held_.push_back({std::string(text), visits_.tokens_.up_ms() + *context.wait_ms, service::change_mark(*context.desk)});
    visits_.waiting_.insert(this);
    return true;
  }

  [[nodiscard]] static std::string count_of(double figure) { return std::to_string(static_cast<std::int64_t>(figure)); }

  [[nodiscard]] Fault too_often() const {
    const service::NetworkLimits named = published(visits_.limits_, visits_.tokens_.limits());
    return Fault("limit.rate", "", "fewer messages a second")
        .with("messages_a_second", std::to_string(named.messages_a_second.steps))
        .with("messages_at_once", std::to_string(named.messages_at_once.steps))
        .with("wait_ms", "1000");
  }

  // Of all calls with this token, over whichever connections they come.
  [[nodiscard]] bool within_rate() const { return caller_.scope == Scope::none || visits_.tokens_.take_call(token_number_); }

  // Everything that can be said before the body is read.
  [[nodiscard]] std::optional<HttpReply> look_at(const HttpHead& head) {
    const Service& service = visits_.service_;
    if (head.ambiguous) {
      return refusal(service, 400, Fault{"http.request", "", "Host, Origin, Content-Type and Authorization once each"});
    }
    if (!head.host || !visits_.addresses_.is_host(*head.host)) {
      return refusal(service, 403, Fault{"host.refused", "", "127.0.0.1, localhost or [::1], with the port"});
    }
    const bool foreign = head.origin ? !visits_.addresses_.is_origin(*head.origin) : head.fetch_site == "cross-site";
    if (foreign) {
      return refusal(service, 403, Fault{"origin.refused", "", "an origin of this sidecar"}, "Vary: Origin\r\n");
    }
    if (head.origin) {
      cors_ = "Access-Control-Allow-Origin: " + std::string(*head.origin) + "\r\nVary: Origin\r\n";
    }
    if (auto page = page_at(head)) {
      return page;
    }
    if (head.target != rpc_path) {
      return refusal(service, 404, Fault{"http.path", "", std::string(rpc_path) + (head.method == "GET" && !visits_.pages_.empty() ? ", or a file that was in the folder of --pages at the start" : "")});
    }
    if (head.upgrade && head.method == "GET") {
      return std::nullopt;
    }
    if (head.method == "OPTIONS" && head.origin && head.preflight) {
      return HttpReply{204, {}, "Access-Control-Allow-Methods: POST\r\nAccess-Control-Allow-Headers: Authorization, Content-Type\r\nAccess-Control-Max-Age: 600\r\n"};
    }
    if (head.method != "POST") {
      return refusal(service, 405, Fault{"http.method", "", "POST"}, "Allow: POST, OPTIONS\r\n");
    }
    if (!head.content_type || !is_json(*head.content_type)) {
      return refusal(service, 415, Fault{"http.content_type", "", "application/json"}, "Accept: application/json\r\n");
    }
    return look_at_token(head);
  }

  // A file of the front end that is served beside; what stands behind a question mark is the page's own business.
  [[nodiscard]] std::optional<HttpReply> page_at(const HttpHead& head) const {
    if (head.upgrade || (head.method != "GET" && head.method != "HEAD")) {
      return std::nullopt;
    }
    const auto page = visits_.pages_.find(head.target.substr(0, head.target.find('?')));
    if (page == visits_.pages_.end()) {
      // Every browser asks for it unbidden, and a front end that has none is no mistake.
      return head.target == "/favicon.ico" ? std::optional(HttpReply{204, {}, "Cache-Control: max-age=86400\r\n"}) : std::nullopt;
    }
    const Page& shown = page->second.later ? *page->second.later() : page->second;
    return HttpReply{200, shown.text, shown.fields.empty() ? visits_.page_fields_ : shown.fields, shown.type};
  }

  // Without one, what anybody may ask is answered, and the rest says that a token is missing.
  [[nodiscard]] std::optional<HttpReply> look_at_token(const HttpHead& head) {
    if (!head.authorization) {
      return std::nullopt;
    }
    const std::string_view sent = token_of(*head.authorization);
    const auto grant = visits_.tokens_.find(sent);
    if (!grant) {
      Fault fault = grant.error().faults.front();
      if (sent.empty()) {
        fault.expected = "Authorization: Bearer TOKEN";
      }
      return refusal(visits_.service_, 401, fault, "WWW-Authenticate: Bearer\r\n");
    }
    caller_ = grant->caller;
    expires_at_ = grant->expires_at;
    token_number_ = grant->number;
    return std::nullopt;
  }

  [[nodiscard]] HttpReply trouble_reply(Trouble trouble, std::string_view text) const {
    const Service& service = visits_.service_;
    const NetLimits& limits = visits_.limits_;
    switch (trouble) {
      case Trouble::large_head:
        return refusal(service, 431, Fault("limit.head", "", "at most " + std::to_string(limits.head_bytes) + " bytes").with("head_bytes", std::to_string(limits.head_bytes)));
      case Trouble::large_message:
        return {413, answer_too_large(service), {}};
      case Trouble::slow:
        return refusal(service, 408,
                       Fault("limit.time", "", "the head within " + std::to_string(limits.head_ms / 1000) + " seconds, the whole within " + std::to_string(limits.request_ms / 1000))
                           .with("head_ms", std::to_string(limits.head_ms))
                           .with("request_ms", std::to_string(limits.request_ms)));
      case Trouble::often: {
        auto reply = answer_refused(text, service, too_often());
        return {429, reply ? std::move(*reply) : refusal_text(service, too_often()), "Retry-After: 1\r\n"};
      }
      case Trouble::crowded:
        return refusal(service, 503,
                       Fault("limit.rate", "", "fewer connections at once")
                           .with("connections", std::to_string(limits.connections))
                           .with("connections_a_second", count_of(limits.connections_a_second))
                           .with("wait_ms", "1000"),
                       "Retry-After: 1\r\n");
      default:
        return refusal(service, 400, Fault{"http.request", "", "one whole request"});
    }
  }

  [[nodiscard]] std::optional<std::string> answered(std::string_view text) {
    service::Context& context = visits_.service_.context;
    // A WebSocket, and a call that waits, may outlive their token; and a kiosk's may have opened its exam over another connection.
    if (caller_.scope != Scope::none) {
      const auto grant = visits_.tokens_.find(token_number_);
      if (!grant) {
        caller_.scope = Scope::none;
        return answer_refused(text, visits_.service_, grant.error().faults.front());
      }
      caller_ = grant->caller;
    }
    context.caller = caller_;
    context.admission = this;
    context.wait_ms.reset();
    auto reply = answer(text, visits_.service_);
    context.admission = nullptr;
    caller_ = context.caller;
    context.caller = {Scope::none, std::nullopt};
    if (left_) {
      caller_.scope = Scope::none;
    }
    if (send_ && caller_.scope != Scope::none && !cursor_ && context.desk != nullptr && !context.desk->locked()) {
      cursor_ = service::change_cursor(*context.desk);
    }
    return reply;
  }

  Result<service::Admitted> enter(const std::optional<std::string_view>& token, const std::optional<std::string_view>& once) override {
    if (once) {
      auto traded = visits_.tokens_.trade(*once);
      if (!traded) {
        return traded.error();
      }
      return shown(traded->grant, std::move(traded->text));
    }
    if (token) {
      const auto grant = visits_.tokens_.find(*token);
      if (!grant) {
        Fault fault = grant.error().faults.front();
        fault.path = "/token";
        return fault;
      }
      return shown(*grant, std::nullopt);
    }
    if (visits_.service_.context.caller.scope == Scope::none) {
      return Fault{"token.missing", "/token", "the token of sidecar.json, or a one-time code as once"};
    }
    return service::Admitted{visits_.service_.context.caller, expires_at_, std::nullopt};
  }

  [[nodiscard]] service::Admitted shown(const Grant& grant, std::optional<std::string> token) {
    token_number_ = grant.number;
    expires_at_ = grant.expires_at;
    return {grant.caller, grant.expires_at, std::move(token)};
  }

  void bind(const model::ExamId& exam) override { visits_.tokens_.bind(token_number_, exam); }

  void leave() override {
    // Over HTTP the token is all that a session is. A WebSocket is a session of its own, and others may talk with the same token.
    send_ ? visits_.tokens_.end_traded(token_number_) : visits_.tokens_.end(token_number_);
    left_ = static_cast<bool>(send_);
  }

  Visits& visits_;
  service::Caller caller_{Scope::none, std::nullopt};
  model::Instant expires_at_;
  std::uint64_t token_number_ = 0;  // which token was shown
  std::string cors_;
  std::function<void(std::string)> send_;  // only over WebSocket
  std::function<void(HttpReply)> later_;   // only over HTTP
  std::vector<Held> held_;
  std::optional<wire::Remark> cursor_;
  bool left_ = false;
};

service::NetworkLimits published(const NetLimits& limits, const TokenLimits& tokens) {
  const auto count = [](auto figure) { return service::AnyCount{static_cast<std::int64_t>(figure)}; };
  // Of a connection and of a token the smaller counts; they are the same but in tests.
  return {count(limits.head_bytes),
          count(limits.connections),
          count(limits.connections_a_second),
          count(std::min(static_cast<std::int64_t>(limits.messages_a_second), tokens.calls_a_second)),
          count(std::min(static_cast<std::int64_t>(limits.messages_rush), tokens.calls_at_once)),
          count(waits_max),
          count(tokens.tokens),
          count(limits.head_ms),
          count(limits.request_ms),
          count(limits.idle_ms),
          count(limits.session_ms),
          count(limits.socket_idle_ms)};
}

std::unique_ptr<Conversation> Visits::begin() { return std::make_unique<Visit>(*this); }

void Visits::tell_staff_called() {
  const auto called = std::exchange(service_.context.staff_called, std::nullopt);
  if (!called) {
    return;
  }
  const std::string text = "{\"jsonrpc\":\"2.0\",\"method\":\"" + std::string(staff_called_name) + "\",\"params\":" + wire::write(service::StaffCalled{*called}) + "}";
  const std::vector<Visit*> all(sockets_.begin(), sockets_.end());
  for (Visit* visit : all) {
    if (sockets_.contains(visit)) {
      visit->tell_staff(text);
    }
  }
}

void Visits::tell_changes() {
  if (service_.context.desk == nullptr) {
    return;
  }
  tell_staff_called();
  const std::uint64_t mark = service::change_mark(*service_.context.desk);
  if (mark == told_mark_) {
    return;
  }
  told_mark_ = mark;
  const std::vector<Visit*> waiting(waiting_.begin(), waiting_.end());
  for (Visit* visit : waiting) {
    if (waiting_.contains(visit)) {
      visit->look(false);
    }
  }
  if (mark == 0) {
    return;
  }
  const std::vector<Visit*> all(sockets_.begin(), sockets_.end());
  for (Visit* visit : all) {
    if (sockets_.contains(visit)) {
      visit->tell();
    }
  }
}

}  // namespace limbledger::rpc
