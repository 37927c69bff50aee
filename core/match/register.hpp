// A clinic's people made ready for asking who may be registered twice. Only pairs that share a block are compared: a birth to the
// day (day and month in either order), a year with the sound of a word of the name, two sounds, a sound with the home, the whole
// name, a number. A block that is too long is walked along its births in a window, so that no pair is left out for the size of
// a village. The sound is a coarse key of our own for finding, never proof. Nobody is ever merged by it.
#pragma once

#include "core/match/weights.hpp"

#include <map>
#include <optional>
#include <set>
#include <vector>

namespace limbledger::match {

using PeopleById = std::map<model::PersonId, model::Person>;
using PersonPair = std::pair<model::PersonId, model::PersonId>;  // the lower id first

struct FieldWeight {
  Field field{};
  model::Word level;
  double weight = 0;
};

// What a pair is shown with. Strong: odds of nine to one and more where the model holds; nothing is done by it.
struct Candidate {
  PersonPair pair;
  double weight = 0;
  bool strong = false;
  bool perhaps_twins = false;
  bool perhaps_kin = false;
  Pattern pattern{};
  std::vector<FieldWeight> working;
};

class Register {
 public:
  explicit Register(const PeopleById& people);

  // Compares so many pairs more; true once all are compared, those that are drawn for learning too. It is nearly all of the work, and is
  // done once: what follows from a decision needs no comparison.
  bool compare_more(std::size_t most);
  // Pairs to be compared in all, and those that are.
  [[nodiscard]] std::size_t to_compare() const;
  [[nodiscard]] std::size_t done() const { return seen_.size() + drawn_count_; }

  // Learns m and u from these people, and from the pairs that were decided; few people (under 500, our convention) keep the
  // starting model. Compares what is left to compare.
  void learn_from(const std::set<PersonPair>& one, const std::set<PersonPair>& two);
  [[nodiscard]] const Model& model() const { return model_; }

  // The candidates among all, the most weighty first; `but` left out. Each once, by lower id first.
  [[nodiscard]] std::vector<Candidate> candidates(const std::set<PersonPair>& but = {});
  [[nodiscard]] std::size_t compared() const { return pairs_.size(); }
  // Nothing where they are not people of this register.
  [[nodiscard]] std::optional<Candidate> of(const model::PersonId& a, const model::PersonId& b) const;

 private:
  void make_blocks();
  struct Seen {  // of a pair that was compared
    Pattern pattern{};
    bool perhaps_twins = false;
    bool perhaps_kin = false;
  };
  [[nodiscard]] std::size_t people_of_one_name(std::size_t a, std::size_t b) const;

  std::vector<model::PersonId> ids_;
  std::vector<Looked> people_;
  std::map<Letters, std::size_t> how_many_;             // a folded name -> people with it
  std::vector<std::pair<std::uint32_t, std::uint32_t>> pairs_;  // that share a block
  std::vector<Seen> seen_;                              // of `pairs_`, as far as compared
  std::map<Pattern, double> drawn_;                     // of pairs drawn without regard to agreement
  std::size_t drawn_count_ = 0;
  std::size_t apart_ = 1;                               // how far the pairs drawn now are apart, and the next of them
  std::size_t next_ = 0;
  Model model_;
};

// Two people, weighed: `same_name` of so many people share the name that they share.
[[nodiscard]] Candidate judge_pair(const Model& model, const model::PersonId& a, const Looked& looked_a, const model::PersonId& b, const Looked& looked_b,
                                   std::size_t same_name, std::size_t people);
[[nodiscard]] bool is_worth_asking(const Model& model, const Candidate& candidate);

}  // namespace limbledger::match
