// The description for people: it names what the table has, every link in it leads somewhere, it loads nothing from elsewhere; and
// trouble that is played for those who test a front end. Header fields: Content Security Policy 3.
#include "core/ledger/world.hpp"
#include "core/reference/edition.hpp"
#include "core/service/call.hpp"
#include "core/store/memory.hpp"
#include "core/wire/html.hpp"
#include "rpc/emit/page/faults_of.hpp"
#include "rpc/emit/page/page.hpp"
#include "rpc/emit/page/shortened.hpp"
#include "rpc/program/demo/trouble.hpp"
#include "rpc/program/examples/examples.hpp"
#include "tests/unit/house_rules.hpp"
#include "tests/unit/rpc/holds.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <regex>
#include <set>

namespace limbledger::rpc {

namespace {

std::string whole_page(std::span<const TryLine> lines = {}) {
  PageAsk ask;
  ask.table = service::methods();
  ask.examples = held_talk().examples;
  ask.walk = held_walk().examples;
  ask.try_out = lines;
  ask.kept = "{}";
  return description_page(ask);
}

std::vector<std::string> all_of(const std::string& text, const char* pattern) {
  const std::regex wanted(pattern);
  std::vector<std::string> found;
  for (std::sregex_iterator at(text.begin(), text.end(), wanted), end; at != end; ++at) {
    found.push_back((*at)[1].str());
  }
  return found;
}

}  // namespace

TEST_CASE("the page has every method with its purpose, each of its params and its examples, and every fault with what to do") {
  const std::string page = whole_page();
  for (const service::Method& method : service::methods()) {
    CAPTURE(method.name);
    const std::size_t begin = page.find("<article id=\"" + std::string(method.name) + "\">");
    REQUIRE(begin != std::string::npos);
    const std::string article = page.substr(begin, page.find("</article>", begin) - begin);
    CHECK(holds(article, wire::html_escaped(method.summary)));
    for (const wire::Field& field : method.params().fields) {
      CHECK(holds(article, "<code>" + std::string(field.name) + "</code>"));
    }
    for (const Example& example : held_talk().examples) {
      CHECK((example.method != method.name || holds(article, "Example: " + wire::html_escaped(example.title))));
    }
  }
  for (const wire::FaultCode& row : wire::fault_codes()) {
    CHECK(holds(page, "<tr id=\"fault-" + std::string(row.code) + "\">"));
    CHECK(holds(page, wire::html_escaped(row.hint)));
  }
  CHECK(holds(page, "<code>messages_a_second</code>"));
}

TEST_CASE("the page shows the walk in its order, and how a form goes on after the program was started again") {
  const std::string page = whole_page();
  std::size_t at = page.find("<section id=\"walk\">");
  REQUIRE(at != std::string::npos);
  const std::size_t end = page.find("</section>", at);
  for (const Example& one : held_walk().examples) {
    CAPTURE(one.method);
    at = page.find("<code>" + one.method + "</code></a></h3><p>" + wire::html_escaped(one.title), at);
    REQUIRE(at < end);
  }
  const std::string walk = page.substr(page.find("<section id=\"walk\">"), end - page.find("<section id=\"walk\">"));
  CHECK(holds(walk, "&quot;times_raised&quot;: 1"));
  CHECK(holds(walk, "&quot;meanwhile_text&quot;: ["));
  // Of each form one step of each control, a text of each kind of name, what is withheld and what is recorded.
  for (const char* shown : {"&quot;control&quot;: &quot;angle&quot;", "&quot;control&quot;: &quot;grade&quot;", "&quot;control&quot;: &quot;choices&quot;", "&quot;toward&quot;: ", "&quot;refuse&quot;: [", "&quot;confirm&quot;: [",
                            "&quot;message&quot;: &quot;msg.why.", "&quot;message&quot;: &quot;msg.toward.", "&quot;message&quot;: &quot;msg.despite.", "&quot;withheld&quot;: [\n", "&quot;by&quot;: &quot;concern.", "&quot;recorded&quot;: ", " more\n"}) {
    CAPTURE(shown);
    CHECK(holds(walk, shown));
  }
  CHECK_FALSE(holds(walk, "and so on"));
  for (const char* said : {"Stopped and started again", "token.unknown", "token.used", "sessionStorage", "token make --ledger DIR --scope examiner --once", "localStorage", "Scripts stand in files of their own", "times_raised",
                           "&quot;beside&quot;: true", "examined_at", "look_alikes", "\"despite\":",
                           // What waited goes in its order, and a finding that comes after the signature is kept.
                           "the lowest number first", "no <code>exam.sign</code> while a finding of that exam waits", "answered <code>exam.signed</code> all the same is kept",
                           "It reads the files of <code>DIR</code> once", "\"pain\":{\"score\":6,\"familiar\":true}", "<code>\"reproduces\":\"familiar\"</code>", "<code>text.yes</code>"}) {
    CAPTURE(said);
    CHECK(holds(page, said));
  }
}

TEST_CASE("every link of the page leads to a place in it, no place has two names, and nothing is loaded from elsewhere") {
  const std::string page = whole_page();
  const std::vector<std::string> places = all_of(page, " id=\"([^\"]*)\"");
  const std::set<std::string> known(places.begin(), places.end());
  CHECK(known.size() == places.size());
  for (const std::string& link : all_of(page, "href=\"#([^\"]*)\"")) {
    CAPTURE(link);
    CHECK(known.contains(link));
  }
  CHECK(all_of(page, "src=\"([^\"]*)\"") == std::vector<std::string>{"/description.js"});
  // An address is there as words alone, of a hub.
  CHECK(all_of(page, "(=\"?https?:|url\\(|@import)").empty());
  for (const std::string& address : all_of(page, "(https?:[^ <&;]*)")) {
    CAPTURE(address);
    CHECK((address.starts_with("https://HOST:PORT") || address.starts_with("https://192.0.2.20:7443") || address.starts_with("http://127.0.0.1:")));
  }
  CHECK(page.find("style=") == std::string::npos);
  CHECK(page.find("onclick") == std::string::npos);
}

TEST_CASE("only a page with a try-out has forms, and one for every method that the day calls") {
  CHECK(whole_page().find("<form") == std::string::npos);
  CHECK(whole_page().find("id=\"day\"") == std::string::npos);
  const std::array lines{TryLine{"exam.read", "the </script> of a title", R"({"exam":"@exam","remark":"</script><b>"})", "{}"}};
  const std::string page = whole_page(lines);
  CHECK(all_of(page, "<form class=\"try\" data-method=\"([^\"]*)\"") == std::vector<std::string>{"exam.read"});
  CHECK(holds(page, "<\\/script><b>"));  // data that cannot end its element
  CHECK(holds(page, "the &lt;/script&gt; of a title"));
}

// Whatever code a source of the methods names has to stand with a method, or with every call.
TEST_CASE("every fault that the sources of the methods name is described, and none that the table lacks") {
  std::set<std::string> described(faults_of_every_call().begin(), faults_of_every_call().end());
  for (const service::Method& method : service::methods()) {
    for (const std::string_view code : faults_of(method)) {
      described.emplace(code);
    }
  }
  for (const std::string& code : described) {
    CAPTURE(code);
    CHECK(wire::find_fault_code(code) != nullptr);
  }
  std::size_t named = 0;
  for (const house::Source& source : house::read_tree({"core/service"})) {
    for (const std::string& code : all_of(source.text, "\"([a-z_]+\\.[a-z_]+)\"")) {
      const bool is_code = wire::find_fault_code(code) != nullptr;
      // Those of opening a ledger, and of what carries an exchange, are the program's.
      const bool is_programs = source.path.starts_with("core/service/exchange/");
      if (is_code && !is_programs && !code.starts_with("entry.") && code != "ledger.missing" && code != "ledger.in_use") {
        CAPTURE(source.path);
        CAPTURE(code);
        CHECK(described.contains(code));
        ++named;
      }
    }
  }
  CHECK(named > 100);
  const auto faults = faults_of(*std::find_if(service::methods().begin(), service::methods().end(), [](const service::Method& one) { return one.name == "finding.record"; }));
  for (const char* code : {"finding.stale", "exam.signed", "value.unusual", "request.reused", "ledger.locked", "exam.not_yours"}) {
    CAPTURE(code);
    CHECK(std::find(faults.begin(), faults.end(), code) != faults.end());
  }
}

TEST_CASE("trouble is asked for by words, and others are none") {
  TroubleAsk ask;
  CHECK_FALSE(ask.any());
  for (const char* word : {"slow", "slow=", "slow=-1", "slow=5x", "kill", "kill=", "kill=finding.recorded", "fire", "", "full=1000001", "slow=60001", "clock", "clock=", "clock=2001", "clock=5"}) {
    CAPTURE(word);
    CHECK_FALSE(take_trouble(word, ask));
  }
  CHECK_FALSE(ask.any());
  CHECK(take_trouble("slow=250", ask));
  CHECK(take_trouble("full", ask));
  CHECK(take_trouble("locked=2", ask));
  CHECK(take_trouble("kill=0", ask));
  CHECK(ask.kill_method.empty());
  CHECK(take_trouble("kill=finding.record", ask));
  CHECK(take_trouble("clock=2001-01-01T00:00:00.000Z", ask));
  CHECK(ask.clock_ms == 978307200000);  // as `date -d 2001-01-01T00:00Z +%s` has it
  CHECK(ask.slow_ms == 250);
  CHECK(ask.full_after == 0);
  CHECK(ask.locked_after == 2);
  CHECK(ask.kill_after == 0);
  CHECK(ask.kill_method == "finding.record");
}

TEST_CASE("a long answer is shortened in the middle: each kind of step and of text once, the first of any other list, and how many are left out") {
  CHECK(shortened(R"({"positions":[{"steps":[{"control":"a"},{"control":"a"},{"control":"b"},{"control":"a","recorded":{}}]},{"steps":[{"control":"b"}]}]})") ==
        "{\n  \"positions\": [\n    {\n      \"steps\": [\n        {\n          \"control\": \"a\"\n        },\n        {\n          \"control\": \"b\"\n        },\n        {\n          \"control\": "
        "\"a\",\n          \"recorded\": {}\n        }\n        ... and 1 more\n      ]\n    },\n    {\n      \"steps\": [\n        ... and 1 more\n      ]\n    }\n  ]\n}");
  CHECK(shortened(R"({"texts":[{"message":"msg.why.pain"},{"message":"msg.why.other"},{"message":"msg.side.left"}]})") ==
        "{\n  \"texts\": [\n    {\n      \"message\": \"msg.why.pain\"\n    },\n    {\n      \"message\": \"msg.side.left\"\n    }\n    ... and 1 more\n  ]\n}");
  CHECK(shortened("[1,2,3,4,5,6]") == "[\n  1,\n  2,\n  3,\n  4\n  ... and 2 more\n]");
}

TEST_CASE("a store behind a shut gate is read as before and takes nothing") {
  store::MemoryStore inner;
  GatedStore gated(inner);
  CHECK(gated.append({}, {}, {{"a", {1}}}).has_value());
  gated.shut(true);
  const auto refused = gated.append({}, {}, {{"b", {2}}});
  REQUIRE_FALSE(refused.has_value());
  CHECK(refused.error().faults.front().code == "ledger.read_only");
  CHECK(gated.heads()->meta == ledger::Meta{{"a", {1}}});
  gated.shut(false);
  CHECK(gated.append({}, {}, {{"b", {2}}}).has_value());
}

}  // namespace limbledger::rpc
