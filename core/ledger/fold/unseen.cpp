#include "core/ledger/fold/fold.hpp"

#include <algorithm>
#include <array>

namespace limbledger::ledger {

namespace {

constexpr std::array<std::string_view, 5> unseen_words{"side_exchange_unseen", "exchanged_twice", "late", "signature_unseen", "withdrawal_unseen"};
constexpr std::array<std::string_view, 4> looks_at{"sign", "addendum", "settle", "countersign"};
// Of two exchanges that took each other back: whoever says which side it is of, or exchanges once more.
constexpr std::array<std::string_view, 5> looks_at_exchanges{"addendum", "settle", "countersign", "exam", "swap_sides"};

// What no method of its own changes once the exam is signed.
constexpr std::array<std::string_view, 4> closed_by_signature{"impression", "plan", "consent", "exam"};

template <std::size_t Count>
[[nodiscard]] bool is_among(std::string_view word, const std::array<std::string_view, Count>& words) {
  return std::find(words.begin(), words.end(), word) != words.end();
}

[[nodiscard]] bool still_stands(const ExamFold& fold, const model::EntryId& entry) {
  const auto found = std::find_if(fold.history.begin(), fold.history.end(), [&](const model::Finding& one) { return one.entry == entry; });
  return found == fold.history.end() || found->standing == model::Standing::current || found->standing == model::Standing::in_conflict;
}

}  // namespace

std::vector<model::EntryMark> unseen_marks(const ExamFold& fold, std::span<const Opened> operations) {
  std::vector<model::EntryMark> out;
  const auto& marks = fold.exam.marks;
  if (!marks || std::none_of(marks->begin(), marks->end(), [](const model::EntryMark& one) { return is_among(one.mark.text, unseen_words); })) {
    return out;
  }
  const Graph graph(operations);
  // What each of the two had not seen of the other: looked at by who saw both, that is all that stood then.
  // Whoever signs reads the side aloud that stands: that says nothing of a value that was written before the sides were exchanged.
  const auto looked_at = [&](std::size_t node, std::string_view mark) {
    for (std::size_t i = 0; i < graph.size(); ++i) {
      const bool saw_both = graph.saw(i, node) && std::any_of(operations.begin(), operations.end(), [&](const Opened& other) {
                              const auto at = graph.find(other.entry());
                              return at && *at != node && graph.saw(i, *at) && !graph.saw(node, *at) && !graph.saw(*at, node);
                            });
      const std::string_view op = graph.at(i).operation().op.text;
      const bool looks = mark == "exchanged_twice" ? is_among(op, looks_at_exchanges) : (is_among(op, looks_at) && !(mark == "side_exchange_unseen" && op == "sign"));
      if (saw_both && looks) {
        return true;
      }
    }
    return false;
  };
  for (const model::EntryMark& one : *marks) {
    const auto node = graph.find(one.entry);
    if (is_among(one.mark.text, unseen_words) && node && still_stands(fold, one.entry) && !looked_at(*node, one.mark.text)) {
      out.push_back(one);
    }
  }
  return out;
}

std::vector<model::Conflict> open_conflicts(const ExamFold& fold, std::span<const Opened> operations) {
  std::vector<model::Conflict> out = fold.exam.conflicts.value_or(std::vector<model::Conflict>{});
  if (!fold.exam.signed_ || std::none_of(out.begin(), out.end(), [](const model::Conflict& one) { return is_among(one.about.text, closed_by_signature); })) {
    return out;
  }
  const Graph graph(operations);
  const auto saw_all = [&](std::size_t i, const model::Conflict& conflict) {
    const bool saw_values = std::all_of(conflict.entries.begin(), conflict.entries.end(), [&](const model::EntryId& one) {
      const auto at = graph.find(one);
      return at && graph.saw(i, *at);
    });
    return saw_values && std::any_of(operations.begin(), operations.end(), [&](const Opened& other) {
             const auto at = graph.find(other.entry());
             return at && other.operation().op.text == "sign" && graph.saw(i, *at);
           });
  };
  std::erase_if(out, [&](const model::Conflict& conflict) {
    for (std::size_t i = 0; i < graph.size(); ++i) {
      if (is_among(conflict.about.text, closed_by_signature) && graph.at(i).operation().op.text == "addendum" && saw_all(i, conflict)) {
        return true;
      }
    }
    return false;
  });
  return out;
}

}  // namespace limbledger::ledger
