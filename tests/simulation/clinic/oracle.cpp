#include "tests/simulation/clinic/oracle.hpp"

#include "core/wire/write.hpp"

#include <algorithm>

namespace limbledger::ledger::clinic_sim {

namespace {

std::string named(ActId act) { return "act " + std::to_string(act); }

bool is_finding(Deed deed) { return deed == Deed::open || deed == Deed::record || deed == Deed::correct || deed == Deed::settle; }

// The acts of one object that are there, and where each entry comes from.
struct Held {
  Acts acts;
  std::map<model::EntryId, ActId> of_entry;
};

Held held_of(Device& device, const model::ObjectId& object, const Doings& doings) {
  Held out;
  std::map<ActId, std::set<std::int64_t>> parts;
  const auto operations = device.log->operations(object);
  for (const Opened& one : *operations) {
    const auto act = doings.find(one.operation().request);
    if (!act) {
      throw Complaint{"doubled", "an operation under a request that nobody made"};
    }
    parts[*act].insert(one.operation().part.steps);
    out.acts.insert(*act);
    out.of_entry[one.entry()] = *act;
  }
  // However often it was sent, the program takes it for one.
  std::set<std::pair<ActId, std::int64_t>> once;
  const Graph graph(*operations);
  for (std::size_t i = 0; i < graph.size(); ++i) {
    const ActId act = out.of_entry.at(graph.at(i).entry());
    if (!once.emplace(act, graph.at(i).operation().part.steps).second) {
      throw Complaint{"doubled", named(act) + " counts more than once"};
    }
  }
  for (const auto& [act, there] : parts) {
    if (there.size() != doings.at(act).parts.size()) {
      throw Complaint{"torn", named(act) + " has " + std::to_string(there.size()) + " of " + std::to_string(doings.at(act).parts.size()) + " parts"};
    }
  }
  return out;
}

class ExamJudge {
 public:
  ExamJudge(const Doings& doings, const Held& held, const Page& page) : doings_(doings), held_(held), page_(page), fold_(*page.exam) {
    for (const ActId act : held.acts) {
      const Deed deed = doings.at(act).deed;
      // A signature under something that is gone for ever cannot be checked; it waits.
      const bool is_signed = deed == Deed::sign || deed == Deed::settle || deed == Deed::add;
      if (!is_signed || std::includes(held.acts.begin(), held.acts.end(), doings.at(act).seen.begin(), doings.at(act).seen.end())) {
        counts_.insert(act);
      }
      for (const Part& part : doings.at(act).parts) {
        for (const std::string& words : counts_.contains(act) ? part.replaces : std::set<std::string>{}) {
          replaced_[words].insert(act);
        }
      }
    }
  }

  std::size_t judge() {
    judge_findings();
    judge_slots();
    judge_impressions();
    judge_addenda();
    judge_put_off();
    judge_state();
    judge_newer();
    return fold_.exam.conflicts ? fold_.exam.conflicts->size() : 0;
  }

 private:
  [[nodiscard]] bool has_mark(const model::EntryId& entry, std::string_view word) const {
    return fold_.exam.marks && std::any_of(fold_.exam.marks->begin(), fold_.exam.marks->end(), [&](const model::EntryMark& one) { return one.entry == entry && one.mark.text == word; });
  }

  // For whoever replays it: these acts, and what their record says of them.
  [[nodiscard]] std::string said_of(const Acts& acts) const {
    std::string out;
    for (const auto& [entry, act] : held_.of_entry) {
      out += acts.contains(act) ? ' ' + named(act) : "";
      for (const model::EntryMark& one : acts.contains(act) && fold_.exam.marks ? *fold_.exam.marks : std::vector<model::EntryMark>{}) {
        out += one.entry == entry ? ' ' + one.mark.text : "";
      }
    }
    return out;
  }

  [[nodiscard]] bool unseen_by_any(ActId act, Deed deed) const {
    return std::any_of(counts_.begin(), counts_.end(), [&](ActId other) { return doings_.at(other).deed == deed && doings_.unseen(act, other); });
  }

  // The findings of the acts that count: each once in the record, standing as people left it.
  void judge_findings() {
    std::map<std::string, std::vector<const model::Finding*>> shown;
    for (const model::Finding& one : fold_.history) {
      shown[one.remark->text].push_back(&one);
    }
    for (const ActId act : counts_) {
      if (!is_finding(doings_.at(act).deed)) {
        continue;
      }
      for (const Part& part : doings_.at(act).parts) {
        if (part.slot.empty()) {
          continue;
        }
        const auto found = shown.find(part.words);
        if (found == shown.end()) {
          throw Complaint{"lost", "the finding " + part.words + " is not in its record"};
        }
        if (found->second.size() > 1) {
          throw Complaint{"doubled", "the finding " + part.words + " is there " + std::to_string(found->second.size()) + " times"};
        }
        judge_one(act, part, *found->second.front());
      }
    }
  }

  void judge_one(ActId act, const Part& part, const model::Finding& finding) {
    const auto replaced = replaced_.find(part.words);
    const bool stands = finding.standing == model::Standing::current || finding.standing == model::Standing::in_conflict;
    if (stands != (replaced == replaced_.end())) {
      throw Complaint{"settled", "the finding " + part.words + (stands ? " stands though it was replaced by" + said_of(replaced->second) : " does not stand though nobody who saw it replaced it")};
    }
    if (!stands) {
      const bool withdrawn = std::all_of(replaced->second.begin(), replaced->second.end(), [&](ActId by) { return doings_.at(by).deed == Deed::take_back; });
      if (withdrawn != (finding.standing == model::Standing::withdrawn)) {
        throw Complaint{"settled", "the finding " + part.words + " was taken back, and is said to be replaced, or the other way round"};
      }
    } else {
      standing_[part.slot].push_back({act, &part});
      const auto on_page = std::count_if(fold_.exam.findings->begin(), fold_.exam.findings->end(), [&](const model::Finding& one) { return one.remark->text == part.words; });
      if (on_page != 1) {
        throw Complaint{on_page == 0 ? "settled" : "doubled", "the finding " + part.words + " stands, and is on the page " + std::to_string(on_page) + " times"};
      }
    }
    if (unseen_by_any(act, Deed::sign) != has_mark(*finding.entry, "late")) {
      throw Complaint{"settled", "the finding " + part.words + " and a signature: it is not said, or said wrongly, that neither saw the other"};
    }
    if (unseen_by_any(act, Deed::withdraw) != has_mark(*finding.entry, "withdrawal_unseen")) {
      throw Complaint{"settled", "the finding " + part.words + " and the withdrawal of its exam: it is not said, or said wrongly, that neither saw the other"};
    }
    if (doings_.at(act).by_newer_program && !has_mark(*finding.entry, "newer_parts")) {
      throw Complaint{"hidden", "the finding " + part.words + " has parts from a newer program, and does not say so"};
    }
  }

  // Two that stand in one slot and had not been on each other's writer's screen are shown as a conflict, and nothing else is.
  void judge_slots() {
    std::map<std::string, std::set<std::string>> expected;  // by slot: the words that stand against each other
    for (const auto& [slot, parts] : standing_) {
      for (const auto& one : parts) {
        if (std::any_of(parts.begin(), parts.end(), [&](const auto& other) { return doings_.unseen(one.first, other.first); })) {
          expected[slot].insert(one.second->words);
        }
        judge_taken_back(*one.second, one.first);
      }
    }
    std::map<std::string, std::set<std::string>> shown;
    for_each_conflict("finding", [&](const model::Conflict& conflict) {
      auto& words = shown[wire::write(*conflict.item) + wire::write(*conflict.side)];
      for (const model::EntryId& entry : conflict.entries) {
        words.insert(words_in_history(entry));
      }
    });
    if (shown != expected) {
      throw Complaint{"settled", "conflicts of values: " + std::to_string(expected.size()) + " nobody has settled, " + std::to_string(shown.size()) + " are shown, or others"};
    }
    for_each_conflict("request", [](const model::Conflict&) { throw Complaint{"doubled", "one request is said to have two contents"}; });
  }

  // Whoever took a finding back had not seen this newer value of it.
  void judge_taken_back(const Part& part, ActId act) {
    const bool expected = std::any_of(counts_.begin(), counts_.end(), [&](ActId other) {
      return doings_.at(other).deed == Deed::take_back && doings_.at(other).parts.front().finding == part.finding && doings_.unseen(act, other);
    });
    bool shown = false;
    for_each_conflict("withdrawal", [&](const model::Conflict& conflict) {
      for (const model::EntryId& entry : conflict.entries) {
        shown = shown || words_in_history(entry) == part.words;
      }
    });
    if (shown != expected) {
      throw Complaint{"settled", "the finding " + part.words + " and its withdrawal, unseen by each other: " + (expected ? "not shown as a conflict" : "a conflict that is none")};
    }
  }

  void judge_impressions() {
    std::set<std::string> expected;
    for (const ActId act : counts_) {
      if (doings_.at(act).deed == Deed::impress && !replaced_.contains(doings_.at(act).parts.front().words)) {
        expected.insert(doings_.at(act).parts.front().words);
      }
    }
    std::set<std::string> shown;
    if (fold_.exam.impression) {
      shown.insert(fold_.exam.impression->text.text);
    }
    for_each_conflict("impression", [&](const model::Conflict& conflict) {
      for (const model::EntryId& entry : conflict.entries) {
        shown.insert(doings_.at(held_.of_entry.at(entry)).parts.front().words);
      }
    });
    if (shown != expected) {
      throw Complaint{"settled", "impressions: " + std::to_string(expected.size()) + " stand, " + std::to_string(shown.size()) + " are shown, or others"};
    }
  }

  void judge_addenda() {
    std::map<std::string, std::size_t> shown;
    for (const model::Addendum& one : fold_.exam.addenda.value_or(std::vector<model::Addendum>{})) {
      ++shown[one.text->text];
    }
    for (const ActId act : counts_) {
      const std::string& words = doings_.at(act).parts.front().words;
      if (doings_.at(act).deed == Deed::add && shown[words] != 1) {
        throw Complaint{shown[words] == 0 ? "lost" : "doubled", "the addendum " + words + " is there " + std::to_string(shown[words]) + " times"};
      }
    }
  }

  // Whatever else was written: each stands, once, with the line that it names.
  void judge_put_off() {
    for (const Opened& one : page_.operations) {
      const auto* said = std::get_if<model::PutOffBody>(&one.body());
      if (said == nullptr) {
        continue;
      }
      const std::string& words = doings_.at(held_.of_entry.at(one.entry())).parts.front().words;
      const std::vector<PutOff> listed = put_offs(page_.operations, said->about.text, said->entries, {});
      const auto times = std::count_if(listed.begin(), listed.end(), [&](const PutOff& other) { return other.said.asked.text == words; });
      if (times != 1) {
        throw Complaint{times == 0 ? "lost" : "doubled", "what was put off, " + words + ", is there " + std::to_string(times) + " times"};
      }
    }
    for (const ActId act : counts_) {
      const std::string& words = doings_.at(act).parts.front().words;
      if (doings_.at(act).deed == Deed::put_off && std::none_of(page_.operations.begin(), page_.operations.end(), [&](const Opened& one) {
            const auto* said = std::get_if<model::PutOffBody>(&one.body());
            return said != nullptr && said->asked.text == words;
          })) {
        throw Complaint{"lost", "what was put off, " + words + ", is not in its record"};
      }
    }
  }

  void judge_state() {
    const auto has = [this](Deed deed) { return std::any_of(held_.acts.begin(), held_.acts.end(), [&](ActId act) { return doings_.at(act).deed == deed; }); };
    const auto expected = has(Deed::withdraw) ? model::ExamState::withdrawn : has(Deed::sign) ? model::ExamState::signed_ : model::ExamState::open;
    if (fold_.exam.state != expected) {
      throw Complaint{"settled", "an exam is shown as " + wire::write(*fold_.exam.state) + " and is " + wire::write(expected)};
    }
  }

  void judge_newer() {
    std::size_t newer = 0;
    for (const auto& [entry, act] : held_.of_entry) {
      if (doings_.at(act).deed == Deed::newer) {
        ++newer;
        if (!has_mark(entry, "newer_edition")) {
          throw Complaint{"hidden", named(act) + " needs a newer program, and the exam does not say so"};
        }
      }
    }
    if (fold_.unread != newer) {
      throw Complaint{"hidden", std::to_string(newer) + " operations need a newer program, " + std::to_string(fold_.unread) + " are said to"};
    }
  }

  template <class Do>
  void for_each_conflict(std::string_view about, Do&& what) {
    for (const model::Conflict& conflict : fold_.exam.conflicts.value_or(std::vector<model::Conflict>{})) {
      if (conflict.about.text == about) {
        what(conflict);
      }
    }
  }

  [[nodiscard]] std::string words_in_history(const model::EntryId& entry) const {
    const auto found = std::find_if(fold_.history.begin(), fold_.history.end(), [&](const model::Finding& one) { return one.entry == entry; });
    return found == fold_.history.end() ? "" : found->remark->text;
  }

  const Doings& doings_;
  const Held& held_;
  const Page& page_;
  const ExamFold& fold_;
  Acts counts_;
  std::map<std::string, Acts> replaced_;  // by words: who replaced it
  std::map<std::string, std::vector<std::pair<ActId, const Part*>>> standing_;
};

// A value of a member stands until somebody who saw it gave the same member another.
std::set<std::string> standing_values(const Doings& doings, const Acts& held, std::optional<std::string> Act::*member) {
  std::set<std::string> out;
  for (const ActId act : held) {
    const auto& value = doings.at(act).*member;
    if (value && std::none_of(held.begin(), held.end(), [&](ActId later) { return doings.at(later).*member && doings.at(later).seen.contains(act); })) {
      out.insert(*value);
    }
  }
  return out;
}

std::size_t judge_person(const Doings& doings, const Held& held, const PersonFold& fold) {
  const auto shown_as = [&fold](std::string_view about) -> std::set<std::string> {
    std::set<std::string> out;
    for (const model::Conflict& conflict : fold.conflicts) {
      for (std::size_t i = 0; conflict.about.text == about && i < conflict.values->size(); ++i) {
        out.insert((*conflict.values)[i].json);
      }
    }
    return out;
  };
  std::set<std::string> homes = shown_as("home");
  std::set<std::string> births = shown_as("birth");
  if (fold.person.home) {
    homes.insert('"' + fold.person.home->text + '"');
  }
  if (fold.person.birth) {
    births.insert(wire::write(*fold.person.birth));
  }
  std::set<std::string> homes_expected;
  std::set<std::string> births_expected;
  for (const std::string& home : standing_values(doings, held.acts, &Act::home)) {
    homes_expected.insert('"' + home + '"');
  }
  for (const std::string& birth : standing_values(doings, held.acts, &Act::birth)) {
    births_expected.insert(R"({"date":")" + birth + R"("})");
  }
  if (homes != homes_expected || births != births_expected) {
    throw Complaint{"settled", "a person's home or birth: what stands is not what is shown"};
  }
  const std::size_t names = fold.person.names ? fold.person.names->size() : 0;
  const auto registered = std::count_if(held.acts.begin(), held.acts.end(), [&](ActId act) { return doings.at(act).deed == Deed::enrol; });
  if (names != static_cast<std::size_t>(registered)) {
    throw Complaint{names == 0 ? "lost" : "doubled", "a person has " + std::to_string(names) + " names"};
  }
  return fold.conflicts.size();
}

std::size_t judge_pairs(const Doings& doings, const Held& held, const LinkFold& links) {
  std::map<PersonPair, Acts> expected;
  Acts counts;
  for (const ActId act : held.acts) {
    const Acts& seen = doings.at(act).seen;
    if (doings.at(act).deed == Deed::decide && std::includes(held.acts.begin(), held.acts.end(), seen.begin(), seen.end())) {
      counts.insert(act);
    }
  }
  for (const ActId act : counts) {
    const std::string& words = doings.at(act).parts.front().words;
    if (std::none_of(counts.begin(), counts.end(), [&](ActId later) { return doings.at(later).parts.front().replaces.contains(words); })) {
      expected[doings.at(act).pair].insert(act);
    }
  }
  std::size_t conflicts = 0;
  for (const auto& [persons, standing] : expected) {
    const auto pair = links.pairs.find(persons);
    if (pair == links.pairs.end()) {
      throw Complaint{"lost", "a decision about two records is not there"};
    }
    Acts shown;
    for (const Decided& one : pair->second.heads) {
      shown.insert(held.of_entry.at(one.entry));
    }
    const model::SamePerson first = doings.at(*standing.begin()).same;
    const bool differ = std::any_of(standing.begin(), standing.end(), [&](ActId act) { return doings.at(act).same != first; });
    if (shown != standing || pair->second.in_conflict != differ || (differ && pair->second.same)) {
      throw Complaint{"settled", "decisions about two records: " + std::to_string(standing.size()) + " stand, " + std::to_string(shown.size()) + " are shown, or not as a conflict"};
    }
    conflicts += differ ? 1 : 0;
  }
  return conflicts;
}

void judge_same_pages(const std::vector<Device*>& devices) {
  const std::string said = devices.front()->said();
  for (Device* device : devices) {
    if (device->said() != said) {
      throw Complaint{"diverged", "device " + std::to_string(device->number) + " says otherwise than the hub of the same entries"};
    }
  }
}

// What was begun as an exam or a person stands in the list of these, whatever was written into its record since.
void judge_lists(Device& device, const std::map<model::ObjectId, Held>& held, const Doings& doings) {
  const auto exams = device.records->exams();
  const auto persons = device.records->persons();
  for (const auto& [object, one] : held) {
    const Acts& acts = one.acts;
    const auto began = [&doings, &acts](Deed deed) { return std::any_of(acts.begin(), acts.end(), [&](ActId act) { return doings.at(act).deed == deed; }); };
    if (began(Deed::open) && !(*exams)->contains(model::ExamId{object.bytes})) {
      throw Complaint{"lost", "an exam is in no list of device " + std::to_string(device.number)};
    }
    if (began(Deed::enrol) && !(*persons)->contains(model::PersonId{object.bytes})) {
      throw Complaint{"lost", "a person is in no list of device " + std::to_string(device.number)};
    }
  }
}

// What a newer program wrote beside the operations is handed on to the byte.
bool holds_place(Device& device, const Place& place) {
  const auto rows = device.disk->read(place.replica, place.seq, place.seq, 64);
  return std::any_of(rows->begin(), rows->end(), [&](const Row& row) { return row.hash == place.hash && row.state == RowState::whole && row.body == Bytes(40, 7); });
}

}  // namespace

void judge_screen(Device& device, const Doings& doings) {
  std::map<model::ObjectId, Held> held;
  for (const auto& [act, place] : device.promised.own) {
    const Act& done = doings.at(act);
    if (done.deed == Deed::other_kind) {
      continue;
    }
    const auto [found, is_new] = held.try_emplace(done.object);
    if (is_new) {
      found->second = held_of(device, done.object, doings);
    }
    if (!found->second.acts.contains(act)) {
      throw Complaint{"lost", named(act) + " was acknowledged on device " + std::to_string(device.number) + " and is not there"};
    }
  }
}

Judged judge_home(const std::vector<Device*>& devices, const Doings& doings) {
  Judged out;
  Device& hub = *devices.front();
  for (Device* device : devices) {
    if (device->have() != hub.have()) {
      throw Complaint{"diverged", "device " + std::to_string(device->number) + " holds other entries than the hub"};
    }
  }
  std::map<model::ObjectId, Held> held;
  Acts there;
  for (const auto& [object, known] : hub.log->index().objects) {
    held[object] = held_of(hub, object, doings);
    there.insert(held[object].acts.begin(), held[object].acts.end());
  }
  for (Device* device : devices) {
    for (const ActId act : device->promised.acts) {
      const Act& done = doings.at(act);
      if (done.place ? std::any_of(devices.begin(), devices.end(), [&](Device* other) { return !holds_place(*other, *done.place); }) : !there.contains(act)) {
        throw Complaint{"lost", named(act) + " was acknowledged by device " + std::to_string(device->number) + " and is not at the hub"};
      }
    }
  }
  judge_same_pages(devices);
  judge_reports(hub, doings);
  for (Device* device : devices) {
    judge_lists(*device, held, doings);
    device->open();  // and when it starts again
    judge_lists(*device, held, doings);
  }
  for (const auto& [object, known] : hub.log->index().objects) {
    if (known.type == ObjectType::exam) {
      const Page page = hub.page(model::ExamId{object.bytes});
      if (page.exam) {
        ++out.exams;
        out.conflicts += ExamJudge(doings, held[object], page).judge();
      }
    } else if (known.type == ObjectType::person) {
      if (const auto person = hub.records->person(model::PersonId{object.bytes})) {
        out.conflicts += judge_person(doings, held[object], (*person)->fold);
      }
    } else if (object == hub.log->clinic_object()) {
      out.conflicts += judge_pairs(doings, held[object], **hub.records->links());
    }
  }
  for (Device* device : devices) {
    const auto verified = verify_store(*device->disk, the_clinic(), device->log.get());
    if (!verified || !verified->damage.empty()) {
      throw Complaint{"damaged", "the ledger of device " + std::to_string(device->number) + " does not verify"};
    }
  }
  return out;
}

}  // namespace limbledger::ledger::clinic_sim
