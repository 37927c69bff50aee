// How the inputs of several rules are heard alike: one input from several items, the gates of a body, and whose complaint it is.
// No blank reads as no here either.
#pragma once

#include "core/interpret/rules/sheet.hpp"

#include <initializer_list>
#include <string_view>

namespace limbledger::interpret {

[[nodiscard]] bool complaint_among(const View& view, std::initializer_list<std::string_view> complaints);
// The side complained of; either where none was named.
[[nodiscard]] bool side_complained_of(const View& view, model::Side side);
// Something of these stands on this side, whatever it says.
[[nodiscard]] bool any_recorded(const View& view, model::Side side, std::initializer_list<std::string_view> items);
// Why rules of this region do not hold on this side (fused, implant, no_limb); empty where they may.
[[nodiscard]] std::string_view body_gate(const View& view, std::string_view region, model::Side side);
// Known to be under this age, or to be of it and over; open where the birth is not known or lies across.
[[nodiscard]] Tri under_age(const View& view, std::int64_t years);

struct SheetSource {
  reference::ItemKey item;
  Says says = &says_answer;
};
enum class SheetJoin : std::uint8_t {
  parts,     // yes by any; no when each of them says no
  one_thing  // ways of telling the same: yes by any, else no by any
};
struct Joined {
  Told told;
  std::string_view item;  // the first of them that is open: it is asked for
  std::size_t open = 0;   // how many are
};
[[nodiscard]] Joined tell_joined(const View& view, SheetJoin join, std::initializer_list<SheetSource> sources, model::Side side,
                                 std::vector<const model::Finding*>& findings);
void add_joined(const View& view, RuleSheet& sheet, std::string_view input, std::string_view said, SheetJoin join,
                std::initializer_list<SheetSource> sources, model::Side side);
// An input that something else worked out.
void add_known(RuleSheet& sheet, std::string_view input, std::string_view said, Tri value, std::string_view state, std::string_view item, model::Side side);

// A choice, or one of several, read as an answer: yes for these, no for any other that is known.
[[nodiscard]] Said says_one_of(const model::Finding& finding, std::initializer_list<std::string_view> choices);
// Any choice but none of these.
[[nodiscard]] Said says_any_named(const model::Finding& finding);
// A pregnancy as the rules hear it: not asked of a man, nor below 12 or above 55 years (our convention); else open where nobody asked.
[[nodiscard]] Told tell_pregnancy(const View& view, std::vector<const model::Finding*>& findings);

}  // namespace limbledger::interpret
