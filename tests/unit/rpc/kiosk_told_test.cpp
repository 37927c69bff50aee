// C16: what a kiosk learns of its exam, and what the examiners learn of a dangerous answer given there. Source: clinical safety C16
// ("a dangerous answer ... rings the examiner's list"); contract, section 9 (to a kiosk no alert, withheld step or assessment).
#include "core/reference/edition.hpp"
#include "tests/unit/rpc/token_house.hpp"

namespace limbledger::rpc {

namespace {

using namespace test;

std::string told_answer(std::string_view item, std::string_view side, std::string_view more = {}) {
  return R"({"item":")" + std::string(item) + R"(","side":")" + std::string(side) + R"(","value":{"kind":"answer","answer":"yes"})" + std::string(more) + "}";
}

struct WaitingRoom : TokenHouse {
  std::string exam = open_exam(1);
  std::string seen = at(asks(examiner, "exam.read", R"({"exam":")" + exam + "\"}"), "/result/revision");
  std::string kiosk = at(asks(examiner, "token.make", R"({"scope":"kiosk","exam":")" + exam + "\"}"), "/result/token");
  unsigned written = 100;

  std::string writes(const std::string& token, const std::string& finding) {
    const std::string reply = asks(token, "finding.record",
                                   R"({"exam":")" + exam + R"(","findings":[)" + finding + R"(],"seen":)" + seen + R"(,"request":")" + service::test::request_id(++written) + "\"}");
    CAPTURE(reply);
    REQUIRE(refused_for(reply).empty());
    seen = at(reply, "/result/revision");
    return reply;
  }
  std::string of_exam(const std::string& token, std::string_view method, const std::string& more = {}) {
    return asks(token, method, R"({"exam":")" + exam + "\"" + more + "}");
  }
};

// A WebSocket session and what it was told unasked.
struct Session {
  std::vector<std::string> told;
  std::unique_ptr<Conversation> talk;

  Session(TokenHouse& house, const std::string& token) : talk(house.visits.begin()) {
    talk->socket_opened([this](std::string text) { told.push_back(std::move(text)); });
    const SocketReply opened = talk->message(R"({"jsonrpc":"2.0","id":1,"method":"session.open","params":{"token":")" + token + "\"}}");
    CHECK(at(opened.text.value_or("{}"), "/error/code").empty());
  }
};

}  // namespace

TEST_CASE("C16: a kiosk reads what its exam was opened with and its own answers, and nothing that an examiner found or wrote") {
  WaitingRoom house;
  house.writes(house.examiner, R"({"item":"knee.effusion_stroke","side":"left","value":{"kind":"grade","scale":"effusion/stroke","grade":"2+"},"remark":"soft end"})");
  house.writes(house.examiner, told_answer("history.locking", "left", R"(,"origin":"self_reported")"));
  const std::string consent = house.of_exam(house.examiner, "consent.record",
                                            R"(,"consent":{"examine":"yes","record":"yes","send":"no"},"company":{"chaperone":"present","chaperone_name":"Somebody Invented"},"seen":)" +
                                                house.seen + R"(,"request":")" + service::test::request_id(99) + "\"");
  house.seen = at(consent, "/result/revision");
  house.writes(house.kiosk, told_answer("history.pop", "left"));
  const std::string read = house.of_exam(house.kiosk, "exam.read");
  CHECK(at(read, "/result/exam/complaint") == "acute_knee");
  CHECK(at(read, "/result/exam/side") == "left");
  CHECK(at(read, "/result/exam/revision") == at(read, "/result/revision"));
  CHECK(at(read, "/result/exam/findings/0/item") == "history.pop");
  CHECK(at(read, "/result/exam/findings/1").empty());
  for (const char* hidden : {"effusion", "soft end", "history.locking", "chaperone", "consent", "examiner", "names", "conflicts"}) {
    CAPTURE(hidden);
    CHECK(read.find(hidden) == std::string::npos);
  }
  // Its form knows that the question is answered, and not how or by which finding; the examiner's form says both.
  const std::string form = house.of_exam(house.kiosk, "form.describe", R"(,"complaint":"acute_knee")");
  const std::size_t step = form.find(R"("item":"history.locking")");
  REQUIRE(step != std::string::npos);
  CHECK(form.substr(step, form.find(R"("item":)", step + 10) - step).find(R"("recorded":[{"side":"left"}])") != std::string::npos);
  CHECK(at(house.of_exam(house.examiner, "exam.read"), "/result/exam/findings/2/item").size() > 0);
}

TEST_CASE("C16: an answer that calls the staff is told to the sessions of examiners at once, and to nobody else as such") {
  WaitingRoom house;
  Session examiner(house, house.examiner);
  Session viewer(house, house.tokens.make({service::Scope::viewer, std::nullopt}).text);
  Session kiosk(house, house.kiosk);
  const std::string cursor = at(house.asks(house.examiner, "changes.read"), "/result/cursor");
  house.writes(house.kiosk, told_answer("history.pop", "left"));
  house.visits.tell_changes();
  REQUIRE(examiner.told.size() == 1);
  CHECK(at(examiner.told[0], "/params/changes/0/staff_called").empty());
  CHECK(at(house.writes(house.kiosk, told_answer("history.saddle_numbness", "midline")), "/result/tell_staff") == "true");
  house.visits.tell_changes();
  REQUIRE(examiner.told.size() == 3);
  CHECK(examiner.told[1] == R"({"jsonrpc":"2.0","method":"staff.called","params":{"exam":")" + house.exam + "\"}}");
  CHECK(at(examiner.told[2], "/params/changes/0/staff_called/0") == "history.saddle_numbness");
  for (const std::string& text : viewer.told) {
    CHECK(at(text, "/method") == "ledger.changed");
  }
  for (const std::string& text : kiosk.told) {
    CHECK(text.find("staff") == std::string::npos);
  }
  // Who was away learns it by asking, from wherever they had got to; a kiosk does not.
  const std::string asked = house.asks(house.examiner, "changes.read", R"({"cursor":")" + cursor + "\"}");
  CHECK(at(asked, "/result/changes/0/object") == house.exam);
  CHECK(at(asked, "/result/changes/0/staff_called") == R"(["history.saddle_numbness"])");
  CHECK(house.asks(house.kiosk, "changes.read", R"({"cursor":")" + cursor + "\"}").find("staff") == std::string::npos);
  // A list of the day marks the exam, whoever reads it.
  const std::string viewing = house.tokens.make({service::Scope::viewer, std::nullopt}).text;
  for (const std::string& reader : {house.examiner, viewing}) {
    const std::string listed = house.asks(reader, "exam.find");
    CAPTURE(listed);
    CHECK(at(listed, "/result/exams/0/exam") == house.exam);
    CHECK(at(listed, "/result/exams/0/staff_called") == R"(["history.saddle_numbness"])");
  }
  // Taken back at the kiosk, it was answered all the same.
  const std::string entry = at(house.of_exam(house.kiosk, "exam.read"), "/result/exam/findings/1/entry");
  house.writes(house.kiosk, R"({"item":"history.saddle_numbness","side":"midline","value":{"kind":"answer","answer":"no"},"replaces":[")" + entry + "\"]}");
  CHECK(at(house.asks(house.examiner, "exam.find"), "/result/exams/0/staff_called") == R"(["history.saddle_numbness"])");
  // The same words from an examiner are a finding: they raise the alert, and call nobody.
  house.writes(house.examiner, told_answer("history.bladder_bowel_change", "midline"));
  house.visits.tell_changes();
  for (std::size_t i = 3; i < examiner.told.size(); ++i) {
    CHECK(examiner.told[i].find("staff_called") == std::string::npos);
  }
}

TEST_CASE("C16: while the ledger is locked the examiners' sessions are told which exam calls, and once it is open what was answered") {
  WaitingRoom house;
  Session examiner(house, house.examiner);
  const std::string cursor = at(house.asks(house.examiner, "changes.read"), "/result/cursor");
  house.locks();
  house.writes(house.kiosk, told_answer("history.saddle_numbness", "midline"));
  house.visits.tell_changes();
  REQUIRE(examiner.told.size() == 1);
  CHECK(examiner.told[0] == R"({"jsonrpc":"2.0","method":"staff.called","params":{"exam":")" + house.exam + "\"}}");
  house.visits.tell_changes();
  CHECK(examiner.told.size() == 1);
  house.desk.unlock();
  house.visits.tell_changes();
  REQUIRE(examiner.told.size() == 2);
  CHECK(at(examiner.told[1], "/params/changes/0/staff_called/0") == "history.saddle_numbness");
}

// Each question for which a kiosk calls the staff, as the facts name them: red flags page, by way of alerts.json.
TEST_CASE("C16: whatever calls the staff at a kiosk is the first that exam.assess asks of the examiner, and reassures nobody") {
  const reference::Edition* edition = reference::built_in_edition();
  REQUIRE(edition != nullptr);
  std::vector<std::string> items;
  for (const reference::AlertRow& row : edition->alerts()) {
    for (const model::ItemId& item : row.tell_staff) {
      if (std::find(items.begin(), items.end(), item.text) == items.end()) {
        items.push_back(item.text);
      }
    }
  }
  REQUIRE(items.size() >= 9);
  items.emplace_back("general.temperature");
  for (const std::string& item : items) {
    CAPTURE(item);
    WaitingRoom house;
    const model::Item* described = edition->item(model::ItemId{item});
    REQUIRE(described != nullptr);
    const std::string side = described->sides.front() == model::Side::midline ? "midline" : "left";
    // A hot question of another danger waits as well, so that the first place is not there for the taking.
    house.writes(house.examiner, R"({"item":"knee.effusion_stroke","side":"left","value":{"kind":"grade","scale":"effusion/stroke","grade":"2+"}})");
    const std::string reply = house.writes(house.kiosk, item == "general.temperature" ? R"({"item":"general.temperature","side":"midline","value":{"kind":"temperature","cel":39.2}})"
                                                                                       : told_answer(item, side));
    CHECK(at(reply, "/result/tell_staff") == "true");
    const std::string finding = at(reply, "/result/recorded/0/finding");
    const std::string assessed = house.of_exam(house.examiner, "exam.assess");
    const std::string first = at(assessed, "/result/questions/0/question");
    REQUIRE_FALSE(first.empty());
    const reference::AlertRow* row = edition->alert(first);
    REQUIRE(row != nullptr);
    bool named = std::find(row->tell_staff.begin(), row->tell_staff.end(), model::ItemId{item}) != row->tell_staff.end();
    for (int i = 0; !at(assessed, "/result/flags/" + std::to_string(i) + "/flag").empty(); ++i) {
      const std::string flag = "/result/flags/" + std::to_string(i);
      const bool of_it = at(assessed, flag + "/findings").find(finding) != std::string::npos;
      named = named || (of_it && at(assessed, flag + "/flag") == first);
      CHECK_FALSE((of_it && at(assessed, flag + "/answer") == "asked_no"));
    }
    CAPTURE(first);
    CAPTURE(finding);
    CAPTURE(at(assessed, "/result/flags"));
    CHECK(named);
  }
}

}  // namespace limbledger::rpc
