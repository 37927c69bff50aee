#include "core/report/letter/letter.hpp"

#include "core/report/brief/added.hpp"
#include "core/report/brief/brief.hpp"
#include "core/report/brief/settled.hpp"
#include "core/report/letter/letter_parts.hpp"

#include <algorithm>
#include <utility>

namespace limbledger::report {

namespace {

constexpr std::size_t letter_columns = 120;  // at the size of the letter

[[nodiscard]] std::string reader_line(const PageView& view, const LetterAsk& ask) {
  // Two returns, here and below: GCC 12 takes the temporary of a conditional call for unset.
  if (!ask.to) {
    return view.say("letter.to_blank");
  }
  return view.say("letter.to", {{"to", *ask.to}});
}

[[nodiscard]] std::vector<std::string> letter_head(const PageView& view, const LetterAsk& ask) {
  const model::Exam& exam = view.exam;
  std::vector<std::string> lines;
  // Read by reference: GCC 12 takes a copy of an optional inside a conditional for unset.
  const bool asked = exam.consent && exam.consent->send;
  const bool may_send = may_be_sent(view);
  // Whoever is about to send it reads this first (HC-064).
  if (asked && !may_send) {
    lines.push_back(view.say("letter.own_hand", {{"send", enum_word(view.words, "value", *exam.consent->send), false, true}, {"care", care_goes_on(view), false, true}}));
  } else if (!asked) {
    lines.push_back(view.say("letter.send_not_asked", {{"care", care_goes_on(view), false, true}}));
  }
  if (ask.protected_) {
    lines.push_back(view.say("letter.for_reader_alone"));
  }
  if (ask.corrects) {
    lines.push_back(view.say("letter.corrects", {{"day", *ask.corrects, false, true}}));
  }
  std::vector<std::string> from{reader_line(view, ask)};
  if (exam.examiner) {
    from.push_back(view.say("letter.from", {{"examiner", view.examiner(*exam.examiner)}}));
  }
  if (exam.place) {
    const auto at = view.names.places.find(*exam.place);
    from.push_back(view.say("page.place", {{"place", at == view.names.places.end() ? exam.place->to_text() : at->second}}));
  }
  if (may_send) {
    from.push_back(view.say("letter.may_be_sent"));
  }
  lines.push_back(joined(from, ". "));
  lines.push_back(identity_line(view));
  // A sealed letter tells nothing that stands outside it.
  if (!ask.protected_) {
    lines.insert(lines.end(), view.names.undecided.begin(), view.names.undecided.end());
  }
  if (!ask.protected_) {
    std::vector<std::string> told;
    if (const std::vector<std::string> facts = weighty_facts(view); !facts.empty()) {
      told.push_back(view.say("page.facts_of_person", {{"facts", joined(facts, "; "), false, true}}));
    }
    told.push_back(allergies_told(view));
    // Whoever receives the person has to speak with them, and to know who consents.
    const std::string answers = who_answers(view);
    lines.push_back(joined(told, ". ") + "." + (answers.empty() ? "" : " " + answers));
  }
  std::vector<std::string> why{view.say(
      "page.complaint", {{"complaint", word_of(view.words, "complaint", exam.complaint.text) + view.side_after(exam.side), false, true}})};
  const std::string when = view.when_text();
  if (exam.examiner) {
    why.push_back(view.say("letter.examined_by", {{"examiner", view.examiner(*exam.examiner)}, {"when", when, false, true}}));
  } else {
    why.push_back(view.say("page.examined", {{"when", when, false, true}}));
  }
  if (exam.injured_on) {
    why.push_back(view.say("page.injured", {{"date", exam.injured_on->to_text(), false, true}}));
  }
  // By this a reply or a film is filed where two people bear one name; a sealed letter is tied to no record.
  if (exam.exam && !ask.protected_) {
    why.push_back(view.say("page.exam_id", {{"exam", exam.exam->to_text(), false, true}}));
  }
  if (exam.signed_) {
    std::string says = signed_words(view);
    says.erase(says.find_last_not_of('.') + 1);
    // Whoever reads on has to know that the signature names gaps; which they are stands below.
    const std::string gaps = left_incomplete(view);
    why.push_back(gaps.empty() ? says : view.say("letter.signed_incomplete", {{"signed", says, false, true}, {"what", gaps, false, true}}));
  } else {
    why.push_back(view.say("letter.not_signed"));
  }
  lines.push_back(joined(why, ". "));
  if (const std::string since = settled_since_signed(view); !since.empty() && !ask.protected_) {
    lines.push_back(since);
  }
  if (const std::string exchanged = exchanged_head(view); !exchanged.empty() && !ask.protected_) {
    lines.push_back(exchanged);
  }
  // A sealed letter tells nothing that stands outside it.
  if (const std::string added = added_head(view); !added.empty() && !ask.protected_) {
    lines.push_back(added);
  }
  return lines;
}

[[nodiscard]] SheetSection question_section(const PageView& view, const LetterAsk& ask) {
  SheetSection section = view.section("letter.question");
  if (ask.protected_) {
    section.plain(as_written(ask.question));
    return section;
  }
  // Sent to be seen, or asked in writing: the question alone does not say.
  const auto planned = [&](model::PlanKind kind) {
    const std::vector<model::PlanItem> plan = view.exam.plan.value_or(std::vector<model::PlanItem>{});
    return std::any_of(plan.begin(), plan.end(), [&](const model::PlanItem& item) { return item.kind == kind && item.became != model::Became::declined; });
  };
  const bool review = planned(model::PlanKind::review);
  // What was found calls for more than an answer in writing.
  const bool found = how_soon(view).found;
  const std::vector<model::PlanItem> plan_items = view.exam.plan.value_or(std::vector<model::PlanItem>{});
  const bool film_arranged = std::all_of(plan_items.begin(), plan_items.end(), [](const model::PlanItem& item) {
    return item.kind != model::PlanKind::film || item.became == model::Became::declined || item.became == model::Became::arranged;
  });
  const std::string_view sent = planned(model::PlanKind::referral) ? "letter.sent_referral"
                                : planned(model::PlanKind::film) && film_arranged && !review ? "letter.sent_film_arranged"
                                : planned(model::PlanKind::film)   ? (review ? "letter.sent_film_and_review" : "letter.sent_film")
                                : found                            ? "letter.sent_nothing_yet"
                                : review                           ? "letter.sent_review"
                                                                   : "letter.sent_nothing";
  std::string says = view.say(sent);
  // Of a letter that nobody sends, what it asks for is not under way by it; that nothing is arranged stands under no condition.
  if (!may_be_sent(view) && sent != "letter.sent_nothing_yet") {
    says = view.say(record_stays(view) ? "letter.if_own_hand" : "letter.if_sent", {{"says", says, false, true}});
  }
  section.plain(as_written(ask.question) + " " + says);
  return section;
}

[[nodiscard]] SheetSection letter_changed(const PageView& view, const LetterAsk& ask) {
  SheetSection section = view.section("letter.changed");
  for (const std::string& line : ask.changed) {
    section.bullet(line);
  }
  return section;
}

[[nodiscard]] SheetSection reply_section(const PageView& view, const LetterAsk& ask) {
  SheetSection section = view.section("letter.reply");
  std::vector<std::string> to;
  if (view.exam.examiner) {
    to.push_back(as_written(view.examiner(*view.exam.examiner)));
  }
  if (view.exam.place) {
    const auto at = view.names.places.find(*view.exam.place);
    to.push_back(as_written(at == view.names.places.end() ? view.exam.place->to_text() : at->second));
  }
  for (const model::Telephone& telephone : ask.telephones) {
    to.push_back(as_written(telephone.who.text) + " " + as_written(telephone.number.text));
  }
  if (to.empty()) {
    section.plain(view.say("letter.reply_blank"));
  } else {
    section.plain(view.say(record_stays(view) && !ask.protected_ ? "letter.reply_hand" : "letter.reply_to", {{"to", joined(to), false, true}}));
  }
  section.plain(view.say(asks_answer_alone(view) ? "letter.reply_lines_answer" : "letter.reply_lines"));
  return section;
}

// A line breaks between words.
[[nodiscard]] std::size_t wrapped_lines(std::string_view text, std::size_t columns_here) {
  std::size_t lines = 1;
  std::size_t used = 0;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find_first_of(" \n", at), text.size());
    const std::size_t width = width_of(text.substr(at, end - at));
    const bool fits = used == 0 || used + 1 + width <= columns_here;
    lines += fits ? 0 : 1;
    used = fits && used != 0 ? used + 1 + width : width;
    lines += used > columns_here ? used / columns_here : 0;  // one word that is longer than the line
    used = used > columns_here ? used % columns_here : used;
    if (end < text.size() && text[end] == '\n') {
      ++lines;
      used = 0;
    }
    at = end + 1;
  }
  return lines;
}

// All in one paragraph: what the last lines of its bullets leave empty is room.
[[nodiscard]] SheetSection run_together(SheetSection section) {
  std::string text;
  for (const SheetLine& line : section.lines) {
    text += (text.empty() ? "" : " ") + std::string(line.kind == LineKind::bullet ? "\u2022 " : "") + line.text;
  }
  section.lines.clear();
  section.plain(text);
  return section;
}

}  // namespace

Sheet letter_of_length(const PageView& view, const LetterAsk& ask, int shortened, bool bullets) {
  Sheet sheet;
  sheet.look = SheetLook::letter;
  sheet.banner = view.names.banner;
  sheet.title = view.say(ask.protected_ ? "letter.title_sealed" : "letter.title");
  sheet.who = person_line(view);
  sheet.examined = view.say("page.examined_day", {{"day", view.day_text(), false, true}});
  sheet.head = letter_head(view, ask);
  std::vector<SheetSection>& sections = sheet.sections;
  if (ask.corrects) {
    sections.push_back(letter_changed(view, ask));
  }
  sections.push_back(question_section(view, ask));
  if (SheetSection added = added_section(view); !added.lines.empty() && !ask.protected_) {
    sections.push_back(std::move(added));
  }
  sections.push_back(letter_urgency(view, ask, shortened));
  if (ask.protected_) {
    sections.push_back(letter_private(view));
  } else {
    sections.push_back(letter_until(view, ask, shortened));
    if (SheetSection travels = by_transfer_section(view); !travels.lines.empty()) {
      sections.push_back(std::move(travels));
    }
    sections.push_back(impression_section(view));
    sections.back().title = view.say("letter.impression");  // by whom stands in the head
    sections.push_back(letter_function(view, shortened));
    sections.push_back(letter_found(view, shortened));
    if (SheetSection settled = letter_settled(view, shortened == letter_shortest); !settled.lines.empty()) {
      sections.push_back(std::move(settled));
    }
    sections.push_back(letter_treatment(view));
    sections.push_back(letter_medicines(view));
    sections.push_back(letter_not_examined(view, shortened));
    if (shortened == letter_shortest && !bullets) {
      for (SheetSection& section : sections) {
        section = run_together(std::move(section));
      }
    }
  }
  sections.push_back(reply_section(view, ask));
  SheetSection about = view.section("letter.about_title");
  about.plain(view.say("letter.about"));
  sections.push_back(std::move(about));
  return sheet;
}

std::size_t letter_lines(const Sheet& sheet) {
  constexpr std::size_t across = 120;  // the head has the whole width
  constexpr std::size_t across_bold = 100;
  std::size_t lines = sheet.banner.empty() ? 0 : 2;
  for (const std::string& line : sheet.head) {
    lines += wrapped_lines(line, &line == &sheet.head.front() ? across_bold : across);
  }
  for (const SheetSection& section : sheet.sections) {
    // The title runs into the first line, in bold.
    const std::string run_in(width_of(section.title) + width_of(section.title) / 5 + 2, 'x');
    for (const SheetLine& line : section.lines) {
      const bool first = &line == &section.lines.front();
      const std::size_t across_here = line.kind == LineKind::plain ? letter_columns : letter_columns - 2;
      lines += wrapped_lines(first ? run_in + " " + line.text : line.text, across_here);
    }
  }
  return lines;
}

Sheet letter_sheet(const PageView& view, const LetterAsk& ask) {
  Sheet sheet = letter_of_length(view, ask, 0);
  for (int shortened = 1; shortened < letter_shortest && letter_lines(sheet) > letter_lines_max; ++shortened) {
    sheet = letter_of_length(view, ask, shortened);
  }
  // What was found and what was added keep a line for each as long as they can: paragraphs of bullets are hard to read.
  for (int shortened = letter_shortest - 1; shortened <= letter_shortest && letter_lines(sheet) > letter_lines_max && !ask.protected_; ++shortened) {
    sheet = letter_of_length(view, ask, shortened, true);
    for (auto section = sheet.sections.rbegin(); section != sheet.sections.rend() && letter_lines(sheet) > letter_lines_max; ++section) {
      const auto is = [&](std::string_view title) { return section->title == view.say(title); };
      if (!is("letter.found") && !is("page.added") && !is("letter.reply") && !is("letter.about_title")) {
        *section = run_together(std::move(*section));
      }
    }
  }
  if (letter_lines(sheet) > letter_lines_max) {
    sheet = letter_of_length(view, ask, letter_shortest);
  }
  return sheet;
}

model::LetterPage letter_page(const Sheet& sheet) {
  model::LetterPage page;
  if (!sheet.banner.empty()) {
    page.banner = model::PrintedText{sheet.banner};
  }
  page.title.text = sheet.title;
  page.who.text = sheet.who;
  page.examined.text = sheet.examined;
  for (const std::string& line : sheet.head) {
    page.head.push_back({line});
  }
  for (const SheetSection& section : sheet.sections) {
    model::LetterSection kept{{section.title}, {}};
    for (const SheetLine& line : section.lines) {
      const auto kind = line.kind == LineKind::bullet  ? model::LetterLineKind::bullet
                        : line.kind == LineKind::under ? model::LetterLineKind::under
                                                       : model::LetterLineKind::plain;
      kept.lines.push_back({kind, {line.text}});
    }
    page.sections.push_back(std::move(kept));
  }
  return page;
}

Sheet letter_sheet(const model::LetterPage& page, const Words& words, const std::vector<model::Word>& stale_because, const std::string& written) {
  Sheet sheet;
  sheet.look = SheetLook::letter;
  sheet.banner = page.banner ? page.banner->text : std::string();
  sheet.title = page.title.text;
  if (!written.empty()) {
    sheet.title = words.say("msg.letter.title_written", {{"title", sheet.title, false, true}, {"at", written, false, true}});
  }
  sheet.who = page.who.text;
  sheet.examined = page.examined.text;
  if (!stale_because.empty()) {
    std::vector<std::string> because;
    for (const model::Word& one : stale_because) {
      because.push_back(word_of(words, "letter_changed", one.text));
    }
    sheet.head.push_back(words.say("msg.letter.stale", {{"because", joined(because, "; "), false, true}}));
  }
  for (const model::PrintedText& line : page.head) {
    sheet.head.push_back(line.text);
  }
  for (const model::LetterSection& section : page.sections) {
    SheetSection shown{section.title.text, {}};
    for (const model::LetterLine& line : section.lines) {
      switch (line.kind) {
        case model::LetterLineKind::plain:
          shown.plain(line.text.text);
          break;
        case model::LetterLineKind::bullet:
          shown.bullet(line.text.text);
          break;
        case model::LetterLineKind::under:
          shown.under(line.text.text);
          break;
      }
    }
    sheet.sections.push_back(std::move(shown));
  }
  return sheet;
}

}  // namespace limbledger::report
