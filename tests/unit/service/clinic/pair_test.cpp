// pair.list and pair.decide: the program lists and a person decides; while two records are one, exams are found under either, and undoing
// gives both back as they were. Cases HC-... are of the project's own list; people are invented.
#include "tests/unit/service/desk_fixture.hpp"

#include "core/wire/write.hpp"

namespace limbledger::service::test::clinic_pairs {

namespace {

std::string enrolled(const DeskFixture& fixture, const std::string& name, const std::string& more, unsigned request) {
  return at(fixture.ok("person.register", R"({"names":[{"text":)" + wire::quoted(name) + "}]," + more + R"(,"request":")" + request_id(request) + "\"}"), "/person/person");
}

std::string seen_for_first_time(const DeskFixture& fixture, const std::string& person, unsigned request) {
  return at(fixture.ok("exam.open", R"({"person":")" + person + R"(","complaint":"free","setting":"outreach","request":")" + request_id(request) + "\"}"), "/exam/exam");
}

std::string decision(const std::string& a, const std::string& b, const std::string& same, const std::string& seen, unsigned request, const std::string& reason = "asked_person") {
  return R"({"persons":[")" + a + R"(",")" + b + R"("],"same":")" + same + R"(","reason":")" + reason + R"(","seen":)" + seen + R"(,"request":")" + request_id(request) + "\"}";
}

struct Twice {
  DeskFixture fixture;
  std::string one = enrolled(fixture, "Amina Invented", R"("sex":"female","home":"Upper Ford","birth":{"date":"2015-03-12"})", 1);
  std::string two = enrolled(fixture, "Amina Invnted", R"("sex":"female","home":"Upper Ford","birth":{"date":"2015-12-03"})", 2);
};

}  // namespace

TEST_CASE("HC-078: a woman registered twice is listed with each field's agreement and weight; nothing is joined by it") {
  const Twice t;
  const std::string list = t.fixture.ok("pair.list", "{}");
  CHECK(at(list, "/total") == "1");
  CHECK(at(list, "/learnt") == "false");
  CHECK(at(list, "/pairs/0/working/0/level") == "near");
  CHECK(at(list, "/pairs/0/working/1/level") == "swapped_day_month");
  CHECK(at(list, "/pairs/0/working/4/weight") == "0");
  CHECK(at(list, "/pairs/0/decided") == "[]");
  CHECK(at(t.fixture.ok("person.read", R"({"person":")" + t.one + "\"}"), "/linked").empty());
}

TEST_CASE("look-alikes at registration come with the weight of each field, also where one name holds the other, and twins are named as that") {
  const Twice t;
  const std::string third = t.fixture.ok("person.register", R"({"names":[{"text":"Amina Fatou Invented"}],"sex":"female","home":"Upper Ford","birth":{"date":"2015-03-12"},"request":")" + request_id(3) + "\"}");
  CHECK(third.find(R"("part_of_name")") != std::string::npos);
  CHECK(at(third, "/look_alikes/0/working/0/field") == "name");
  CHECK(at(third, "/look_alikes/0/working/2/level") == "same");
  CHECK(at(third, "/look_alikes/0/working/4/weight") == "0");
  const std::string twin = t.fixture.ok("person.register", R"({"names":[{"text":"Musa Invented"}],"sex":"male","home":"Upper Ford","birth":{"date":"2015-03-12"},"request":")" + request_id(4) + "\"}");
  CHECK(twin.find(R"("perhaps_twins")") != std::string::npos);
}

TEST_CASE("while two records are one, exams of both are found under either, each of the record it was entered for; undoing gives both back") {
  const Twice t;
  const std::string exam_one = seen_for_first_time(t.fixture, t.one, 10);
  const std::string exam_two = seen_for_first_time(t.fixture, t.two, 11);
  const std::string before = t.fixture.ok("person.read", R"({"person":")" + t.two + "\"}");
  const std::string decided = t.fixture.ok("pair.decide", decision(t.one, t.two, "yes", "[]", 20));
  CHECK(at(decided, "/pair/same") == "yes");
  CHECK(at(decided, "/pair/decided/0/by_name") == std::string(examiner_label));
  for (const std::string& who : {t.one, t.two}) {
    const std::string read = t.fixture.ok("person.read", R"({"person":")" + who + "\"}");
    CHECK(read.find(exam_one) != std::string::npos);
    CHECK(read.find(exam_two) != std::string::npos);
    CHECK(at(read, "/linked/0/person") == (who == t.one ? t.two : t.one));
    CHECK(at(read, "/look_alikes") == "[]");  // one with it is no look-alike
    const std::string found = t.fixture.ok("exam.find", R"({"person":")" + who + "\"}");
    CHECK(found.find(exam_one) != std::string::npos);
    CHECK(found.find(exam_two) != std::string::npos);
  }
  // HC-095: it still says for whom it was entered.
  CHECK(at(t.fixture.ok("exam.read", R"({"exam":")" + exam_two + "\"}"), "/exam/person") == t.two);
  CHECK(at(t.fixture.ok("pair.list", "{}"), "/total") == "0");
  CHECK(at(t.fixture.ok("pair.list", R"({"decided":true})"), "/total") == "1");
  t.fixture.ok("pair.decide", decision(t.one, t.two, "undo", at(decided, "/revision"), 21, "decided_wrongly"));
  CHECK(t.fixture.ok("person.read", R"({"person":")" + t.two + "\"}") == before);
  CHECK(at(t.fixture.ok("pair.list", "{}"), "/total") == "1");
}

TEST_CASE("HC-079: who was decided not to be the same is not asked about again, also after a restart, and is still named as alike") {
  Twice t;
  t.fixture.ok("pair.decide", decision(t.two, t.one, "no", "[]", 20));
  t.fixture.reopen();
  t.fixture.unlock();
  CHECK(at(t.fixture.ok("pair.list", "{}"), "/total") == "0");
  const std::string alike = t.fixture.ok("person.read", R"({"person":")" + t.one + "\"}");
  CHECK(at(alike, "/look_alikes/0/person") == t.two);
  CHECK(at(alike, "/look_alikes/0/because").find("decided_not_the_same") != std::string::npos);
}

TEST_CASE("a decision is refused that nobody was shown the last of, or that stands against the others, or has nothing to undo") {
  const Twice t;
  const std::string three = enrolled(t.fixture, "Amina Invent", R"("sex":"female")", 3);
  CHECK(codes_of(t.fixture.call("pair.decide", decision(t.one, t.two, "undo", "[]", 20))) == "pair.undecided");
  const std::string first = t.fixture.ok("pair.decide", decision(t.one, t.two, "yes", "[]", 21));
  CHECK(at(t.fixture.ok("pair.decide", decision(t.one, t.two, "yes", "[]", 21)), "/repeat") == "true");
  CHECK(codes_of(t.fixture.call("pair.decide", decision(t.one, t.two, "no", "[]", 22))) == "finding.stale");
  CHECK(codes_of(t.fixture.call("pair.decide", decision(t.one, three, "yes", at(first, "/revision"), 23))) == "revision.unknown");
  t.fixture.ok("pair.decide", decision(t.two, three, "yes", "[]", 24));
  const auto inside = t.fixture.call("pair.decide", decision(t.one, three, "no", "[]", 25));
  CHECK(codes_of(inside) == "pair.contradicts");
  CHECK(path_of(inside) == "/same");
  CHECK(codes_of(t.fixture.call("pair.decide", decision(t.one, t.one, "yes", "[]", 26))) == "value.empty");
  const std::string four = enrolled(t.fixture, "Yaw Otherwise", R"("sex":"male")", 4);
  t.fixture.ok("pair.decide", decision(four, three, "no", "[]", 27));
  CHECK(codes_of(t.fixture.call("pair.decide", decision(four, t.one, "yes", "[]", 28))) == "pair.contradicts");
  CHECK(at(t.fixture.ok("pair.list", R"({"decided":true})"), "/total") == "3");
}

TEST_CASE("earlier exams of a linked record are compared with, and no more once it is undone") {
  const Twice t;
  const auto bent = [&](const std::string& person, int deg, const std::string& when, unsigned request) {
    const std::string opened = t.fixture.ok("exam.open", R"({"person":")" + person + R"(","complaint":"free","setting":"outreach","examined_at":")" + when + R"(","request":")" + request_id(request) + "\"}");
    const std::string exam = at(opened, "/exam/exam");
    t.fixture.ok("finding.record", R"({"exam":")" + exam + R"(","findings":[{"item":"knee.flexion_passive","side":"left","value":{"kind":"angle","toward_deg":)" + std::to_string(deg) +
                                       R"(},"instrument":"goniometer_long","position":"supine"}],"seen":)" + at(opened, "/revision") + R"(,"request":")" + request_id(request + 1) + "\"}");
    return exam;
  };
  bent(t.one, 90, "2026-11-20T10:00:00.000Z", 30);
  const std::string later = bent(t.two, 130, "2026-11-23T10:00:00.000Z", 40);
  const auto compares = [&] { return t.fixture.ok("exam.assess", R"({"exam":")" + later + R"("})").find("own_past") != std::string::npos; };
  CHECK_FALSE(compares());
  const std::string decided = t.fixture.ok("pair.decide", decision(t.one, t.two, "yes", "[]", 50));
  CHECK(compares());
  t.fixture.ok("pair.decide", decision(t.one, t.two, "undo", at(decided, "/revision"), 51));
  CHECK_FALSE(compares());
}

TEST_CASE("two records of two sexes become one only where that is confirmed; that they are two is never asked") {
  const DeskFixture fixture;
  const std::string her = enrolled(fixture, "Neema Madeup", R"("sex":"female","home":"Upper Ford","birth":{"date":"2014-02-02"})", 1);
  const std::string him = enrolled(fixture, "Kito Madeup", R"("sex":"male","home":"Upper Ford","birth":{"date":"2014-02-02"})", 2);
  const auto asked = fixture.call("pair.decide", decision(her, him, "yes", "[]", 3));
  CHECK(codes_of(asked) == "value.unusual");
  CHECK(path_of(asked) == "/same");
  std::string confirmed = decision(her, him, "yes", "[]", 4);
  confirmed.insert(1, R"("confirmed":["value.unusual"],)");
  CHECK(fixture.call("pair.decide", confirmed).has_value());
  const std::string other = enrolled(fixture, "Neema Madeup", R"("sex":"female","home":"Upper Ford","birth":{"date":"2014-02-03"})", 5);
  CHECK(fixture.call("pair.decide", decision(him, other, "no", "[]", 6)).has_value());
  // Of all who would be one, through whoever's sex is not said.
  const std::string unsaid = enrolled(fixture, "N Madeup", R"("sex":"unknown","home":"Upper Ford","birth":{"date":"2014-02-03"})", 7);
  const std::string boy = enrolled(fixture, "Kito Otherwise", R"("sex":"male","home":"Upper Ford","birth":{"date":"2014-02-03"})", 8);
  CHECK(fixture.call("pair.decide", decision(other, unsaid, "yes", "[]", 9)).has_value());
  CHECK(codes_of(fixture.call("pair.decide", decision(boy, unsaid, "yes", "[]", 10))) == "value.unusual");
}

}  // namespace limbledger::service::test::clinic_pairs
