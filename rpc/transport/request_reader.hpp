// One HTTP request at a time: Beast checks every byte, the few fields that anybody asks for are kept, and the memory is used
// again for the next request. Included by http.cpp alone.
#pragma once

#include "rpc/transport/connection.hpp"

#include <boost/beast/http/basic_parser.hpp>

#include <array>
#include <string>
#include <string_view>

namespace limbledger::rpc {

// What is kept of a request; the parser is made anew for each, this is not.
class KeptRequest {
 public:
  using Field = boost::beast::http::field;

  void clear() {
    text_.clear();
    body_.clear();
    if (body_.capacity() > kept_bytes_max) {
      body_ = std::string();
    }
    values_.fill({});
    method_ = target_ = {};
  }
  void request_line(std::string_view method, std::string_view target) {
    method_ = keep(method);
    target_ = keep(target);
  }
  void field(Field name, std::string_view value) {
    for (std::size_t i = 0; i < asked_for.size(); ++i) {
      if (asked_for[i] == name) {
        if (values_[i].count++ == 0) {
          values_[i].where = keep(value);
        }
        return;
      }
    }
  }
  void body(std::string_view part) { body_ += part; }

  [[nodiscard]] std::string_view method() const { return text_at(method_); }
  [[nodiscard]] std::string_view target() const { return text_at(target_); }
  [[nodiscard]] std::string_view body() const { return body_; }
  // The first of that name.
  [[nodiscard]] std::optional<std::string_view> value(Field name) const {
    const Value* kept = kept_of(name);
    return kept == nullptr || kept->count == 0 ? std::nullopt : std::optional(text_at(kept->where));
  }
  [[nodiscard]] std::string_view text(Field name) const { return value(name).value_or(std::string_view()); }
  [[nodiscard]] bool twice(Field name) const {
    const Value* kept = kept_of(name);
    return kept != nullptr && kept->count > 1;
  }

 private:
  static constexpr std::size_t kept_bytes_max = std::size_t{64} * 1024;
  static constexpr std::array asked_for{Field::host,         Field::origin,     Field::content_type,      Field::authorization,         Field::sec_fetch_site,   Field::access_control_request_method,
                                        Field::upgrade,      Field::connection, Field::sec_websocket_key, Field::sec_websocket_version, Field::expect};
  struct Where {
    std::size_t at = 0;
    std::size_t size = 0;
  };
  struct Value {
    Where where;
    std::size_t count = 0;
  };

  [[nodiscard]] Where keep(std::string_view text) {
    const Where where{text_.size(), text.size()};
    text_ += text;
    return where;
  }
  [[nodiscard]] std::string_view text_at(const Where& where) const { return std::string_view(text_).substr(where.at, where.size); }
  [[nodiscard]] const Value* kept_of(Field name) const {
    for (std::size_t i = 0; i < asked_for.size(); ++i) {
      if (asked_for[i] == name) {
        return &values_[i];
      }
    }
    return nullptr;
  }

  std::string text_;
  std::string body_;
  std::array<Value, asked_for.size()> values_{};
  Where method_;
  Where target_;
};

class RequestReader final : public boost::beast::http::basic_parser<true> {
 public:
  explicit RequestReader(KeptRequest& kept) : kept_(kept) { kept_.clear(); }

  [[nodiscard]] boost::beast::http::verb verb() const { return verb_; }
  [[nodiscard]] unsigned http_version() const { return version_; }

 private:
  using Text = boost::beast::string_view;
  using Verb = boost::beast::http::verb;
  using Field = boost::beast::http::field;

  [[nodiscard]] static std::string_view plain(Text text) { return {text.data(), text.size()}; }

  void on_request_impl(Verb verb, Text method, Text target, int version, ErrorCode&) override {
    verb_ = verb;
    version_ = static_cast<unsigned>(version);
    kept_.request_line(plain(method), plain(target));
  }
  void on_response_impl(int, Text, int, ErrorCode&) override {}
  void on_field_impl(Field name, Text, Text value, ErrorCode&) override { kept_.field(name, plain(value)); }
  void on_header_impl(ErrorCode&) override {}
  void on_body_init_impl(const boost::optional<std::uint64_t>&, ErrorCode&) override {}
  std::size_t on_body_impl(Text part, ErrorCode&) override {
    kept_.body(plain(part));
    return part.size();
  }
  void on_chunk_header_impl(std::uint64_t, Text, ErrorCode&) override {}
  std::size_t on_chunk_body_impl(std::uint64_t, Text part, ErrorCode&) override {
    kept_.body(plain(part));
    return part.size();
  }
  void on_finish_impl(ErrorCode&) override {}

  KeptRequest& kept_;
  Verb verb_ = Verb::unknown;
  unsigned version_ = 11;
};

}  // namespace limbledger::rpc
