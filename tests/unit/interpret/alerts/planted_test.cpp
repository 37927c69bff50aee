// Planted dangers ring on the very answer that settles them and on none before; what order they were told in does not matter, the other
// leg gives the same of the other leg, what is not recorded never says more, and a correction leaves its trace. Clinical safety, C2.
#include "tests/unit/interpret/alerts/planted.hpp"

#include "core/wire/write.hpp"
#include "tests/unit/interpret/draw.hpp"

#include <set>

using namespace limbledger;
using namespace limbledger::interpret_test;

namespace {

std::size_t ringing(const Bench& bench) {
  const auto alerts = bench.assess().alerts;
  return static_cast<std::size_t>(std::count_if(alerts.begin(), alerts.end(), [](const auto& one) { return one.interrupts; }));
}

Bench mirrored(Bench bench) {
  bench.exam.side = Side::right;
  for (auto& finding : *bench.exam.findings) {
    finding.side = finding.side == Side::left ? Side::right : (finding.side == Side::right ? Side::left : Side::midline);
  }
  return bench;
}

// Some of what the planted people told, of either leg, in any complaint and at any age.
Bench mixed(std::uint64_t seed) {
  Draw draw(seed);
  const auto& all = planted();
  const Planted& base = all[draw.below(all.size())];
  Bench bench = visit(base.complaint, draw.one_in(3) ? 1940 + static_cast<int>(draw.below(86)) : base.born);
  for (const Planted& one : {base, all[draw.below(all.size())], all[draw.below(all.size())]}) {
    for (std::string line : one.answers) {
      if (draw.one_in(4)) {
        continue;
      }
      if (const auto at = line.find(" left "); at != std::string::npos && draw.one_in(3)) {
        line.replace(at, 6, draw.one_in(2) ? " right " : " both ");
      }
      if (line.ends_with(" yes") && draw.one_in(3)) {
        line.replace(line.size() - 3, 3, "no");
      }
      tell(bench, line);
    }
  }
  if (draw.one_in(4)) {
    bench.exam.side.reset();
  }
  return bench;
}

std::vector<std::string> dangers_of(const Bench& bench, bool exchanged) {
  std::vector<std::string> parts;
  const auto said = bench.assess();
  for (const auto& one : said.alerts) {
    parts.push_back(exchanged ? exchange_words(wire::write(one)) : wire::write(one));
  }
  for (const auto& one : said.flags) {
    parts.push_back(exchanged ? exchange_words(wire::write(one)) : wire::write(one));
  }
  std::sort(parts.begin(), parts.end());
  return parts;
}

}  // namespace

TEST_CASE("mixed dangers: the order changes nothing, the other leg gives the same of the other leg, and what is taken away never makes a no of what was open") {
  std::size_t alerts = 0;
  std::size_t noes = 0;
  for (std::uint64_t seed = 1; seed <= 200; ++seed) {
    CAPTURE(seed);
    const Bench bench = mixed(seed);
    const auto before = dangers_of(bench, false);
    alerts += bench.assess().alerts.size();
    Bench turned = bench;
    std::reverse(turned.exam.findings->begin(), turned.exam.findings->end());
    CHECK(dangers_of(turned, false) == before);
    Bench other = mirrored(bench);
    other.exam.side = bench.exam.side ? std::optional(Side::right) : std::nullopt;
    CHECK(dangers_of(other, true) == before);
    Draw draw(seed + 5000);
    Bench less = bench;
    if (less.exam.findings->empty()) {
      continue;
    }
    less.exam.findings->erase(less.exam.findings->begin() + static_cast<std::ptrdiff_t>(draw.below(less.exam.findings->size())));
    const auto all_flags = bench.assess().flags;
    for (const auto& one : less.assess().flags) {
      const auto was = std::find_if(all_flags.begin(), all_flags.end(), [&](const auto& held) { return held.flag == one.flag && held.side == one.side; });
      const bool said_no = one.answer == interpret::FlagAnswer::asked_no;
      noes += said_no ? 1 : 0;
      // From raised to no is no more certain: a yes that stood beside a no was taken away.
      const bool was_open = was != all_flags.end() && was->answer != interpret::FlagAnswer::asked_no && was->answer != interpret::FlagAnswer::raised;
      const bool now_no = said_no && was_open;
      CHECK_MESSAGE(!now_no, one.flag.text);
    }
  }
  CHECK(alerts > 200);  // the mixtures are not empty
  CHECK(noes > 60);
}

TEST_CASE("C2: every planted emergency interrupts on the very answer that settles it, and on no answer before") {
  std::set<std::string> rang;
  for (const Planted& one : planted()) {
    CAPTURE(one.alert);
    for (std::size_t told = 0; told < one.answers.size(); ++told) {
      CAPTURE(told);
      CHECK(ringing(tell_first(one, told)) == 0);
    }
    const Bench whole = tell_first(one, one.answers.size());
    CHECK(stands(whole, one));
    CHECK((ringing(whole) > 0) == one.interrupts);
    if (one.interrupts) {
      const auto found = alert(whole, one.alert);
      REQUIRE(found);
      CHECK(found->interrupts);
      rang.insert(one.alert);
    }
  }
  // One for each alert that can ring at all.
  CHECK(rang == std::set<std::string>{"open_fx", "knee_disloc_vasc", "acs", "ali", "dislocation", "hip_disloc", "ankle_disloc", "nsti", "df_infect", "ces", "septic_adult",
                                      "septic_child", "dvt", "scfe", "acutely_ill"});
}

TEST_CASE("planted dangers: told in the other order, and of the other leg, they say the same; each answer left out never makes a no") {
  for (const Planted& one : planted()) {
    CAPTURE(one.alert);
    const Bench whole = tell_first(one, one.answers.size());
    Bench turned = whole;
    std::reverse(turned.exam.findings->begin(), turned.exam.findings->end());
    CHECK(stands(turned, one));
    CHECK(line_of(turned, one.alert) == line_of(whole, one.alert));
    CHECK(stands(mirrored(whole), one));
    CHECK(line_of(mirrored(whole), one.alert) == line_of(whole, one.alert));
    for (std::size_t out = 0; out < whole.exam.findings->size(); ++out) {
      Bench less = whole;
      less.exam.findings->erase(less.exam.findings->begin() + static_cast<std::ptrdiff_t>(out));
      CHECK(flag(less, one.alert) != "asked_no");
    }
  }
}

TEST_CASE("planted dangers: where the answer that settles it was refused, it is not raised and not answered no; where nothing was told, neither") {
  std::size_t cannot = 0;
  for (const Planted& one : planted()) {
    CAPTURE(one.alert);
    Bench bench = tell_first(one, one.answers.size());
    bench.exam.findings->back().value = model::NotDone{model::WhyNot::declined, std::nullopt};
    const Bench before = tell_first(one, one.answers.size() - 1);
    CHECK(stands(bench, one) == stands(before, one));  // raised already by less, or not at all
    CHECK(flag(bench, one.alert) != "asked_no");
    cannot += flag(bench, one.alert) == "cannot_answer" ? 1U : 0U;
    CHECK_FALSE(stands(tell_first(one, 0), one));
    CHECK(flag(tell_first(one, 0), one.alert) != "asked_no");
  }
  CHECK(cannot > 3);
}

TEST_CASE("C8: what a kiosk said or was carried over raises none of the planted dangers, and answers none with no") {
  for (const Planted& one : planted()) {
    CAPTURE(one.alert);
    for (const auto origin : {model::Origin::self_reported, model::Origin::carried_over, model::Origin::bulk_expected}) {
      Bench bench = tell_first(one, one.answers.size());
      for (auto& finding : *bench.exam.findings) {
        finding.origin = origin;
      }
      CHECK_FALSE(stands(bench, one));
      CHECK(flag(bench, one.alert) != "asked_no");
    }
  }
}

TEST_CASE("C2: an alert goes by a correction of its own inputs alone, and leaves that it was withdrawn by it; another correction leaves it raised") {
  for (const Planted& one : planted()) {
    if (one.prompt) {
      continue;
    }
    CAPTURE(one.alert);
    const Bench raised_then = tell_first(one, one.answers.size());
    const auto judged = [&](const Bench& now) {
      interpret::AssessAsk ask = now.ask();
      ask.before_corrections = {raised_then.exam};
      for (const auto& found : interpret::assess(now.exam, now.person, {}, *now.edition, ask).alerts) {
        if (found.alert.text == "alert." + one.alert) {
          return found;
        }
      }
      return interpret::Alert{};
    };
    const Bench taken_back = tell_first(one, one.answers.size() - 1);
    if (!stands(taken_back, one)) {
      const auto withdrawn = judged(taken_back);
      CHECK(withdrawn.alert.text == "alert." + one.alert);
      CHECK(withdrawn.state == interpret::AlertState::withdrawn_by_correction);
      CHECK_FALSE(withdrawn.interrupts);
    }
    Bench other = raised_then;
    tell(other, "history.pain_now 3");
    CHECK(judged(other).state == interpret::AlertState::raised);
  }
}
