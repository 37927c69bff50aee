#include "core/report/brief/settled.hpp"

#include "core/model/operation.hpp"
#include "core/report/letter/letter_parts.hpp"
#include "core/report/page_parts.hpp"
#include "core/wire/read.hpp"
#include "core/wire/write.hpp"

#include <algorithm>
#include <utility>
#include <vector>

namespace limbledger::report {

namespace {

// One value that was decided on: what holds, then what that undid.
struct Told {
  std::string what;
  std::vector<const model::Settled*> decisions;
};

[[nodiscard]] std::string born_in_words(const Words& words, const model::Birth& birth) {
  if (birth.date) {
    return birth.date->to_text();
  }
  const std::string age = birth.age_years ? wire::write(*birth.age_years) : std::string();
  // Two returns, here and below: GCC 12 takes the temporary of a conditional call for unset.
  if (!birth.on) {
    return age;
  }
  return words.say("msg.settled.aged", {{"age", age, true}, {"on", birth.on->to_text(), false, true}});
}

// As it was written, so far as the program has words for it.
class InWords {
 public:
  InWords(const SettledIn& in, const std::string& about, const std::string& json) : in_(in), about_(about), json_(json) {}

  [[nodiscard]] std::string text() const {
    return about_ == "withdrawal"   ? of<model::Observation>([&](const auto& one) { return item_label(in_.words, in_.edition, one.item) + ", " + side_first(one.side) + observed(one); })
           : about_ == "finding"    ? of<model::Observation>([&](const auto& one) { return observed(one); })
           : about_ == "impression" ? of<model::Impression>([&](const auto& one) { return side_first(one.side) + as_written(one.text.text); })
           : about_ == "plan"       ? of<model::PlanItem>([&](const auto& one) { return planned(one); })
           : about_ == "became"     ? of<model::Became>([&](const auto& one) { return enum_word(in_.words, "became", one); })
           : about_ == "consent"    ? of<model::Consent>([&](const auto& one) { return allowed(one); })
           : about_ == "complaint"  ? of<model::Word>([&](const auto& one) { return word_of(in_.words, "complaint", one.text); })
           : about_ == "person"     ? of<model::PersonId>([&](const auto& one) { return in_.words.say("msg.settled.record", {{"id", one.to_text(), false, true}}); })
           : about_ == "side"       ? of<model::Side>([&](const auto& one) { return side_of(in_.words, one); })
           : about_ == "setting"    ? of<model::Setting>([&](const auto& one) { return enum_word(in_.words, "setting", one); })
           : about_ == "injured_on" || about_ == "examined_on" ? of<model::PartialDate>([](const auto& one) { return one.to_text(); })
           : about_ == "sex"        ? of<model::Sex>([&](const auto& one) { return enum_word(in_.words, "sex", one); })
           : about_ == "home"       ? of<wire::Name>([](const auto& one) { return as_written(one.text); })
           : about_ == "birth"      ? of<model::Birth>([&](const auto& one) { return born_in_words(in_.words, one); })
           : about_ == "names"      ? of<std::vector<model::PersonName>>([](const auto& all) { return named(all); })
                                    : std::string();
  }

 private:
  template <class T, class Say>
  [[nodiscard]] std::string of(const Say& say) const {
    const auto read = wire::read_text<T>(json_, wire::Unknown::ignore);
    return read ? say(*read) : std::string();
  }
  [[nodiscard]] std::string side_first(const std::optional<model::Side>& side) const {
    return side && *side != model::Side::midline ? side_of(in_.words, *side) + ": " : std::string();
  }
  [[nodiscard]] std::string observed(const model::Observation& seen) const {
    return value_text(in_.words, in_.edition, model::as_finding(seen));
  }
  [[nodiscard]] std::string planned(const model::PlanItem& item) const {
    std::string text = enum_word(in_.words, "plan", item.kind) + ": " + side_first(item.side) + as_written(item.text.text);
    if (item.by) {
      text += ", " + in_.words.say("msg.plan.by", {{"date", item.by->to_text(), false, true}});
    }
    if (item.became) {
      text += ", " + enum_word(in_.words, "became", *item.became);
    }
    return text;
  }
  [[nodiscard]] std::string allowed(const model::Consent& consent) const {
    const auto answer = [&](const std::optional<model::ConsentWord>& word) {
      return word ? enum_word(in_.words, "value", *word) : in_.words.say("msg.consent.not_asked");
    };
    const std::string text =
        in_.words.say("msg.settled.consent", {{"examine", answer(consent.examine), false, true}, {"record", answer(consent.record), false, true}, {"send", answer(consent.send), false, true}});
    return consent.by ? text + ", " + in_.words.say("msg.clinic.consent_by", {{"by", consent.by->text}}) : text;
  }
  [[nodiscard]] static std::string named(const std::vector<model::PersonName>& all) {
    std::vector<std::string> names;
    for (const model::PersonName& one : all) {
      names.push_back(as_written(one.text.text));
    }
    return joined(names, " / ");
  }

  const SettledIn& in_;
  const std::string& about_;
  const std::string& json_;
};

[[nodiscard]] std::string who(const SettledIn& in, const std::optional<model::ExaminerId>& examiner) {
  return examiner ? in.examiner(*examiner) : in.words.say("msg.settled.nobody");
}

[[nodiscard]] std::string by_and_when(const SettledIn& in, const std::optional<model::ExaminerId>& by, model::Instant at) {
  return in.words.say("msg.settled.by_at", {{"by", who(in, by)}, {"at", local_time(at, in.offset_min), false, true}});
}

[[nodiscard]] std::string weighed_words(const SettledIn& in, const std::string& about, const model::Weighed& one) {
  const std::string by = by_and_when(in, one.by, one.at);
  std::string value;
  if (one.value) {
    value = InWords(in, about, one.value->json).text();
  } else if (one.reason) {
    value = in.words.say("msg.settled.taken_back", {{"reason", one.reason->text}});
  } else {
    value = in.words.say("msg.settled.not_said");
  }
  if (value.empty()) {
    return in.words.say("msg.settled.as_written", {{"by", by, false, true}});
  }
  return in.words.say("msg.settled.value", {{"value", value, false, true}, {"whose", by, false, true}});
}

[[nodiscard]] std::vector<Told> all_told(const PageView& view) {
  std::vector<Told> all;
  for (const model::Finding* finding : view.findings) {
    if (finding->settled) {
      Told told{view.label(finding->item) + view.side_after(finding->side), {}};
      for (const model::Settled& one : *finding->settled) {
        told.decisions.push_back(&one);
      }
      all.push_back(std::move(told));
    }
  }
  for (const std::vector<model::Settled>* list : {view.exam.settled ? &*view.exam.settled : nullptr, &view.names.of_person}) {
    for (std::size_t i = 0; list != nullptr && i < list->size(); ++i) {
      const model::Settled& one = (*list)[i];
      if (!one.undone.value_or(false) || i == 0) {
        all.push_back({settled_about(view.words, one), {}});
      }
      all.back().decisions.push_back(&one);
    }
  }
  return all;
}

// The others have their mark where they stand.
[[nodiscard]] std::string first_named(const PageView& view, std::vector<std::string> what) {
  constexpr std::size_t named_max = 4;
  const std::size_t others = what.size() > named_max ? what.size() - named_max : 0;
  what.resize(what.size() - others);
  std::string text = joined(what, "; ");
  if (others != 0) {
    text += "; " + view.say("settled.others", {{"count", std::to_string(others), true}});
  }
  return text;
}

[[nodiscard]] SettledIn page_words(const PageView& view) {
  return {view.words, view.edition, [&view](const model::ExaminerId& id) { return view.examiner(id); }, view.exam.offset_min ? view.exam.offset_min->steps : 0};
}

}  // namespace

std::string settled_about(const Words& words, const model::Settled& settled) { return word_of(words, "settled_about", settled.about.text); }

std::string settled_text(const SettledIn& in, const std::string& what, const model::Settled& settled) {
  const auto& among = settled.among;
  const auto taken = std::find_if(among.begin(), among.end(), [&](const model::Weighed& one) { return settled.taken && one.entry == *settled.taken; });
  std::string value;
  if (taken != among.end()) {
    value = weighed_words(in, settled.about.text, *taken);
  } else {
    // A page of one person names no other: whose the record is, is read at the clinic by its id.
    const std::string bare = settled.value ? InWords(in, settled.about.text, settled.value->json).text() : in.words.say("msg.settled.not_known");
    value = in.words.say("msg.settled.new_value", {{"value", bare, false, true}, {"by", who(in, settled.by)}});
  }
  std::string signature;
  if (settled.after_signature) {
    signature = in.words.say(*settled.after_signature == model::AfterSignature::seen ? "msg.settled.after_signature" : "msg.settled.signature_unseen");
  }
  std::string text = in.words.say(settled.undone.value_or(false) ? "msg.settled.undone" : "msg.settled.stands",
                                  {{"what", what, false, true}, {"value", value, false, true}, {"by_at", by_and_when(in, settled.by, settled.at), false, true}, {"signature", signature, false, true}});
  std::vector<std::string> others;
  for (auto one = among.begin(); one != among.end(); ++one) {
    if (one != taken) {
      others.push_back(weighed_words(in, settled.about.text, *one));
    }
  }
  for (const model::Weighed& one : settled.sides_exchanged.value_or(std::vector<model::Weighed>{})) {
    text += " " + in.words.say("msg.settled.sides_exchanged", {{"by_at", by_and_when(in, one.by, one.at), false, true}, {"reason", one.reason ? one.reason->text : std::string()}});
  }
  if (others.empty()) {
    text += settled.sides_exchanged ? std::string() : " " + in.words.say("msg.settled.alone");
  } else {
    text += " " + in.words.say("msg.settled.not_taken", {{"values", joined(others, "; "), false, true}});
  }
  if (settled.reason && !settled.reason->text.empty()) {
    return text + " " + in.words.say("msg.settled.reason", {{"reason", settled.reason->text}});
  }
  return text + " " + in.words.say("msg.settled.no_reason");
}

std::vector<std::string> impressions_undecided(const PageView& view) {
  std::vector<std::string> all;
  for (const model::Conflict& conflict : view.exam.conflicts.value_or(std::vector<model::Conflict>{})) {
    for (const wire::Raw& value : conflict.about.text == "impression" ? conflict.values.value_or(std::vector<wire::Raw>{}) : std::vector<wire::Raw>{}) {
      if (const auto body = wire::read_text<model::ImpressionBody>(value.json, wire::Unknown::ignore)) {
        all.push_back(view.side_before(body->impression.side) + as_written(body->impression.text.text));
      }
    }
  }
  return all;
}

std::optional<model::ExaminerId> impression_writer(const model::Exam& exam) {
  for (const model::Settled& one : exam.settled.value_or(std::vector<model::Settled>{})) {
    if (one.about.text == "impression" && !one.undone) {
      for (const model::Weighed& weighed : one.among) {
        if (one.taken && weighed.entry == *one.taken) {
          return weighed.by;
        }
      }
      return one.by;
    }
  }
  return std::nullopt;
}

SheetSection settled_section(const PageView& view) {
  SheetSection section = view.section("settled.title");
  const SettledIn in = page_words(view);
  for (const Told& told : all_told(view)) {
    for (const model::Settled* one : told.decisions) {
      const std::string text = settled_text(in, told.what, *one);
      if (one == told.decisions.front()) {
        section.bullet(text);
      } else {
        section.under(text);
      }
    }
  }
  return section;
}

std::string settled_since_signed(const PageView& view) {
  std::vector<std::string> what;
  for (const Told& told : all_told(view)) {
    if (told.decisions.front()->after_signature) {
      what.push_back(told.what);
    }
  }
  if (what.empty()) {
    return {};
  }
  return view.say("settled.since_signed", {{"what", first_named(view, what), false, true}});
}

SheetSection letter_settled(const PageView& view, bool shortest) {
  constexpr std::size_t whole_max = 2;
  SheetSection section = view.section("settled.title");
  const std::vector<Told> all = all_told(view);
  if (!shortest || all.size() <= whole_max) {
    return settled_section(view);
  }
  std::vector<std::string> what;
  for (const Told& told : all) {
    what.push_back(told.what);
  }
  section.plain(view.say("letter.by_name", {{"where", kept_where(view, "settled.title"), false, true}, {"what", first_named(view, what), false, true}}));
  return section;
}

}  // namespace limbledger::report
