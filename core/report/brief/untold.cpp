// Why a no about pain is none where no finding says so: a reader who sees the no and the open danger asks for it.
#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"
#include "core/report/brief/brief.hpp"

#include "core/wire/number.hpp"

#include <algorithm>

namespace limbledger::report {

std::string untold_pain(const PageView& view) {
  const interpret::View exam(view.exam, view.person, view.edition, view.assessment.as_of);
  const interpret::Answers answers(exam);
  std::vector<std::string> noes;
  for (const model::Finding* finding : interpret::untold_noes(answers)) {
    // What is kept from a page is not told by the way.
    if (std::find(view.findings.begin(), view.findings.end(), finding) != view.findings.end()) {
      noes.push_back(view.label(finding->item) + view.side_after(finding->side) + ": " + view.value(*finding));
    }
  }
  if (noes.empty()) {
    return {};
  }
  std::string why;
  switch (interpret::pain_untold_by(answers)) {
    case interpret::UntoldBy::nothing:
      return {};
    case interpret::UntoldBy::speaker:
      why = view.say("untold.speaker", {{"who", view.exam.who_spoke->who.text}});
      break;
    case interpret::UntoldBy::interpreter:
      why = view.say("untold.interpreter");
      break;
    case interpret::UntoldBy::answers:
      why = view.say("untold.answers");
      break;
    case interpret::UntoldBy::age:
      why = view.say("untold.age", {{"years", wire::write_number(interpret::tells_of_pain_from, 1), true}});
      break;
  }
  return view.say("page.untold_pain", {{"noes", joined(noes, "; "), false, true}, {"why", why, false, true}});
}

}  // namespace limbledger::report
