// The people who work at the devices. Each opens a form, which shows what the device shows then; what they write names what that form
// showed, however long it lay open and whatever came in behind it. A request whose answer never came is sent again, also after a
// restart, and also to a device that was put back to an older copy.
#pragma once

#include "tests/simulation/clinic/device.hpp"

namespace limbledger::ledger::clinic_sim {

inline const model::EditionId the_edition{"facts.test"};

// Four, so that people meet.
inline const std::array<std::string, 4> slots{R"("knee.flexion_passive""left")", R"("knee.flexion_passive""right")", R"("knee.extension_passive""left")",
                                              R"("knee.extension_passive""right")"};

[[nodiscard]] inline std::string words_of(ActId act, std::size_t part) { return "a" + std::to_string(act) + "." + std::to_string(part); }
[[nodiscard]] inline std::string quoted(const std::string& text) { return '"' + text + '"'; }

// A finding on the screen that counts.
struct Shown {
  std::string words;
  model::EntryId entry;
  model::FindingId finding;
  std::string slot;
  bool in_conflict = false;
  bool by_newer_program = false;
};

struct Form {
  model::ExamId exam;
  std::vector<model::EntryId> revision;
  Acts seen;
  std::vector<Shown> shown;
  std::vector<model::EntryId> impressions;
  std::set<std::string> impression_words;
  bool is_signed = false;
  bool is_withdrawn = false;
  bool may_sign = true;
};

// A device, and what lies before the person who sits at it.
struct Seat {
  std::unique_ptr<Device> device;
  std::optional<Form> form;
  std::optional<Sent> page;        // about a person or a pair: filled in, not sent yet
  std::vector<Sent> recent;        // the person's own memory of what was sent last
  std::vector<Sent> unanswered;
  std::unique_ptr<Device> copy;    // made earlier, and put away
};

class People {
 public:
  People(Planted planted, std::uint64_t seed) : planted_(planted), dice_(seed) {}

  // Two exams and two people that all are to meet in.
  void begin_day(Seat& seat);
  // One thing that somebody does at this seat.
  void work(Seat& seat);
  void send_again(Seat& seat);
  // The last few things once more, from memory: the device may have forgotten them.
  void repeat_recent(Seat& seat);
  void write_other_kind(Seat& seat);

  [[nodiscard]] const Doings& doings() const { return doings_; }
  [[nodiscard]] std::size_t repeats() const { return repeats_; }
  [[nodiscard]] std::size_t overtaken() const { return overtaken_; }
  [[nodiscard]] std::size_t acknowledged() const { return acknowledged_; }

 private:
  void open_exam(Seat& seat);
  [[nodiscard]] bool open_form(Seat& seat);
  void write_in_form(Seat& seat);
  void write_newer(Seat& seat, bool is_readable);
  void fill_person_page(Seat& seat, bool is_new);
  void fill_pair_page(Seat& seat);
  void report(Seat& seat);
  // Those that it comes after.
  [[nodiscard]] static bool holds_reports(Device& device, const NewOperation& report);

  [[nodiscard]] model::RequestId new_request();
  [[nodiscard]] NewOperation operation(const Seat& seat, const Act& act, std::string op, std::string body_json) const;
  [[nodiscard]] Part finding_part(const Act& act, ActId id, std::size_t number, const std::string& slot);
  [[nodiscard]] std::string finding_json(const Part& part);
  [[nodiscard]] Acts acts_in(std::span<const Opened> operations) const;
  [[nodiscard]] Acts whole_acts_in(std::span<const Opened> operations) const;
  [[nodiscard]] bool send(Seat& seat, Sent sent, bool again);
  void acknowledge(Seat& seat, ActId act);
  void overtake(Seat& seat, NewOperation& operation);

  Planted planted_;
  Dice dice_;
  Doings doings_;
  std::uint64_t requests_ = 0;
  std::size_t repeats_ = 0;
  std::size_t overtaken_ = 0;
  std::size_t acknowledged_ = 0;
};

}  // namespace limbledger::ledger::clinic_sim
