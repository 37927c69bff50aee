#include "rpc/program/examples/talk.hpp"

namespace limbledger::rpc {

std::span<const Line> example_talk() {
  static const std::vector<Line> talk{
      {"health.check", "a ledger that is locked", R"({})", {}},
      {"session.open", "over the standard input no token is taken", R"({"client":"form 1","protocol":1})", {}},
      {"catalogue.read", "one item with its scale", R"({"items":["knee.lachman"]})", {}},
      {"ledger.unlock", "by an examiner's passphrase", R"({"examiner":"Amina Invented","passphrase":"@passphrase"})", {}},
      {"changes.read", "where the ledger stands now", R"({})", {{"cursor", "/cursor"}}},
      {"place.amend", "a new place", R"({"changes":{"name":"Invented Ford","travel":[{"to":"invented district hospital","minutes":150}],"here":[{"what":"film","there":"no"}]},"request":"6a0c5b9e-0000-4000-8000-000000000001"})", {{"place", "/places/0/place/place"}}},
      {"place.read", "every place", R"({})", {}},
      {"person.register", "a person known by name and year of birth", R"({"names":[{"text":"Kofi Invented"}],"birth":{"date":"2001"},"sex":"male","request":"6a0c5b9e-0000-4000-8000-000000000002"})", {{"person", "/person/person"}, {"person_seen", "/revision"}}},
      {"person.amend", "what was not known before", R"({"person":"@person","changes":{"home":"Upper Ford"},"replaces":[],"seen":"@person_seen","request":"6a0c5b9e-0000-4000-8000-000000000003"})", {}},
      {"person.find", "by a part of the name", R"({"text":"kofi"})", {}},
      {"form.write", "the same on paper, for somebody who cannot lie on the side", R"({"complaint":"acute_knee","minutes":10,"cannot":["lie_side"]})", {}},
      {"form.describe", "what to draw in one minute, where somebody cannot lie face down", R"({"complaint":"chronic_knee","minutes":1,"cannot":["lie_prone"]})", {}},
      {"exam.open", "a knee hurt yesterday", R"({"person":"@person","complaint":"acute_knee","setting":"outreach","side":"left","place":"@place","injured_on":"2026-11-23","offset_min":180,"request":"6a0c5b9e-0000-4000-8000-000000000004"})", {{"exam", "/exam/exam"}, {"revision", "/revision"}}},
      {"consent.record", "by the person, with somebody beside", R"({"exam":"@exam","consent":{"examine":"yes","record":"yes","send":"no","by":"self","capacity":"yes"},"company":{"chaperone":"offered","others":["brother"]},"seen":"@revision","request":"6a0c5b9e-0000-4000-8000-000000000005"})", {{"revision", "/revision"}}},
      {"finding.check", "a value to be confirmed before anything is written", R"({"exam":"@exam","findings":[{"item":"knee.flexion_passive","side":"left","value":{"kind":"angle","toward_deg":168},"instrument":"goniometer_long","position":"supine"}]})", {}},
      {"finding.record", "an angle read twice, and a test that pain stopped", R"({"exam":"@exam","findings":[{"item":"knee.flexion_active","side":"left","value":{"kind":"angle","trials":[111,113]},"instrument":"goniometer_long","position":"supine","pain":{"score":4,"familiar":true}},{"item":"knee.mcmurray","side":"left","value":{"kind":"not_done","reason":"pain"}}],"seen":"@revision","request":"6a0c5b9e-0000-4000-8000-000000000006"})", {{"revision", "/revision"}, {"not_done", "/recorded/1/finding"}, {"entry", "/recorded/0/entry"}}},
      {"finding.record", "a correction names the entry that it replaces", R"({"exam":"@exam","findings":[{"item":"knee.flexion_active","side":"left","value":{"kind":"angle","toward_deg":114},"instrument":"goniometer_long","position":"supine","replaces":["@entry"]}],"seen":"@revision","request":"6a0c5b9e-0000-4000-8000-000000000007"})", {{"revision", "/revision"}}},
      {"finding.record", "what cannot wait comes back as an alert", R"({"exam":"@exam","findings":[{"item":"history.mechanism","side":"midline","value":{"kind":"choice","choice":"twist"}},{"item":"vessel.pulse_dorsalis_pedis","side":"right","value":{"kind":"grade","scale":"pulse/0-3","grade":"2"}},{"item":"vessel.pulse_dorsalis_pedis","side":"left","value":{"kind":"grade","scale":"pulse/0-3","grade":"0"}}],"seen":"@revision","request":"6a0c5b9e-0000-4000-8000-000000000008"})", {{"revision", "/revision"}, {"alert", "/alerts/0/alert"}, {"alert_side", "/alerts/0/side"}}},
      {"request.read", "whether a call whose answer was lost was recorded", R"({"request":"6a0c5b9e-0000-4000-8000-000000000008"})", {}},
      {"finding.history", "one item of one side, oldest first", R"({"exam":"@exam","item":"knee.flexion_active","side":"left"})", {}},
      {"alert.handle", "what was done about it", R"({"exam":"@exam","alert":"@alert","side":"@alert_side","action":"The surgeon on call was told; the leg travels splinted.","seen":"@revision","request":"6a0c5b9e-0000-4000-8000-000000000009"})", {{"revision", "/revision"}}},
      {"exam.assess", "one decision rule", R"({"exam":"@exam","only":["rule.ottawa_knee"]})", {}},
      {"exam.assess", "the motion against the published values", R"({"exam":"@exam","only":["motion.norm"]})", {{"statement", "/statements/0/statement"}}},
      {"exam.assess", "what is missing, with sentences in a language", R"({"exam":"@exam","only":["alerts","missing","motion.side"],"language":"en"})", {}},
      {"statement.explain", "the working of one statement", R"({"exam":"@exam","statement":"@statement"})", {}},
      {"step.suggest", "what to examine next, in the ten minutes that are left", R"({"exam":"@exam","minutes":10})", {}},
      {"finding.withdraw", "recorded by mistake", R"({"exam":"@exam","finding":"@not_done","reason":"meant for the other knee","seen":"@revision","request":"6a0c5b9e-0000-4000-8000-000000000010"})", {{"revision", "/revision"}}},
      {"impression.record", "in the examiner's own words", R"({"exam":"@exam","impression":{"text":"torn meniscus","side":"left","certainty":"probable","alternatives":["torn ligament, front"]},"replaces":[],"seen":"@revision","request":"6a0c5b9e-0000-4000-8000-000000000011"})", {{"revision", "/revision"}}},
      {"plan.record", "a referral with its day", R"({"exam":"@exam","plan_items":[{"kind":"referral","text":"Knee clinic","side":"left","who":"invented district hospital","by":"2026-12-08"}],"replaces":[],"seen":"@revision","request":"6a0c5b9e-0000-4000-8000-000000000012"})", {{"revision", "/revision"}}},
      {"exam.amend", "the day of the injury was wrong", R"({"exam":"@exam","changes":{"injured_on":"2026-11-22"},"seen":"@revision","request":"6a0c5b9e-0000-4000-8000-000000000013"})", {{"revision", "/revision"}}},
      {"exam.read", "the exam as it stands", R"({"exam":"@exam"})", {}},
      {"exam.sign", "as it was shown; what is left is listed", R"({"exam":"@exam","read_aloud":"Kofi Invented, born 2001, LEFT knee, twisted, no pulse felt on the left foot","seen":"@revision","request":"6a0c5b9e-0000-4000-8000-000000000014"})", {{"revision", "/revision"}}},
      {"addendum.record", "what came to mind after the signature", R"({"exam":"@exam","kind":"text","reason":"told by telephone","text":"The brother saw the knee go out.","seen":"@revision","request":"6a0c5b9e-0000-4000-8000-000000000015"})", {}},
      {"note.write", "the page of the exam", R"({"exam":"@exam"})", {}},
      {"person.register", "another person", R"({"names":[{"text":"Awa Invented"}],"birth":{"age_years":50,"plus_minus":5,"on":"2026-11-24"},"sex":"female","request":"6a0c5b9e-0000-4000-8000-000000000016"})", {{"other", "/person/person"}}},
      {"exam.open", "in a hurry, without a person", R"({"complaint":"free","setting":"outreach","request":"6a0c5b9e-0000-4000-8000-000000000017"})", {{"second", "/exam/exam"}, {"second_seen", "/revision"}}},
      {"finding.record", "one finding", R"({"exam":"@second","findings":[{"item":"knee.flexion_passive","side":"left","value":{"kind":"angle","toward_deg":130},"instrument":"goniometer_long","position":"supine"}],"seen":"@second_seen","request":"6a0c5b9e-0000-4000-8000-000000000018"})", {{"second_seen", "/revision"}}},
      {"exam.move", "to the person whose exam it is", R"({"exam":"@second","person":"@other","reason":"opened before she was registered","seen":"@second_seen","request":"6a0c5b9e-0000-4000-8000-000000000019"})", {{"second_seen", "/revision"}}},
      {"exam.swap_sides", "the sides were taken the wrong way round", R"({"exam":"@second","reason":"examined from the foot of the couch","seen":"@second_seen","request":"6a0c5b9e-0000-4000-8000-000000000020"})", {{"second_seen", "/revision"}}},
      {"exam.withdraw", "an exam that should not be there", R"({"exam":"@second","reason":"recorded twice","seen":"@second_seen","request":"6a0c5b9e-0000-4000-8000-000000000021"})", {}},
      {"exam.find", "the exams of a person", R"({"person":"@person"})", {}},
      {"person.read", "a person with the exams", R"({"person":"@person"})", {}},
      {"changes.read", "what changed since, or within half a minute from now", R"({"cursor":"@cursor","wait_ms":30000})", {}},
      {"document.assess", "an exam that stands in no ledger", R"({"document":{"format":"limbledger-exam/1","as_of":"2026-11-24","person":{"birth":{"date":"1971"},"sex":"female","norm_sex":"female"},"exam":{"complaint":"chronic_knee","setting":"primary_care"},"findings":[{"item":"knee.flexion_passive","side":"left","value":{"kind":"angle","toward_deg":118},"instrument":"goniometer_long","position":"supine"}]},"only":["motion.norm"]})", {}},
      {"ledger.verify", "every entry holds", R"({})", {}},
      {"ledger.lock", "on purpose", R"({})", {}},
      {"examiner.add", "by the printed code, where every passphrase is lost", R"({"code":"@code","examiner":"Amina Invented 2026","passphrase":"another four words here"})", {}},
      {"session.end", "the talk is over", R"({})", {}},
  };
  return talk;
}

}  // namespace limbledger::rpc
