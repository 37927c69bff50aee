// The type table: one constexpr `Type` a C++ type, filled from its Boost.Describe description. Reader, writer and JSON
// Schema are plain functions over this table. This is the only file of templates; it knows nothing of medicine.
// A described member left out of the macro does not compile (the count must equal the fields Boost.PFR sees).
#pragma once

#include "core/wire/text.hpp"

#include <boost/describe.hpp>
#include <boost/mp11.hpp>
#include <boost/pfr/tuple_size.hpp>

#include <array>
#include <concepts>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <variant>
#include <vector>

namespace limbledger::wire {

enum class Kind : std::uint8_t { object, list, optional, choice, text, boolean, number, word, raw };

struct Type;
using TypeRef = const Type& (*)();

struct Field {
  std::string_view name;
  TypeRef type = nullptr;
  void* (*at)(void*) = nullptr;
  std::string_view note;
};

struct Alternative {
  std::string_view tag;
  TypeRef type = nullptr;
};

// A number is a whole count of steps; `per_unit` steps make one unit (10: tenths). Limits are in steps.
struct NumberRule {
  std::int64_t low = 0;
  std::int64_t high = 0;
  std::int32_t per_unit = 1;
  std::string_view unit;
};

struct Type {
  Kind kind{};
  std::string_view name;  // C++ name for objects, choices and words; empty for leaves
  std::string_view note;
  std::span<const Field> fields{};
  std::span<const std::string_view> words{};
  std::span<const Alternative> alternatives{};
  TypeRef inner = nullptr;
  TextRule text_rule{};
  NumberRule number_rule{};
  std::size_t items_max = 0;

  std::int64_t (*get)(const void*) = nullptr;  // boolean, number, word
  void (*set)(void*, std::int64_t) = nullptr;
  std::string (*to_text)(const void*) = nullptr;  // text, raw
  TextProblem (*from_text)(void*, std::string_view) = nullptr;
  bool (*has)(const void*) = nullptr;  // optional
  void* (*emplace)(void*) = nullptr;
  std::size_t (*size)(const void*) = nullptr;  // list
  void* (*grow)(void*) = nullptr;
  void* (*element)(void*, std::size_t) = nullptr;
  std::size_t (*index)(const void*) = nullptr;  // choice
  void* (*hold)(void*, std::size_t) = nullptr;
  void* (*held)(void*) = nullptr;
};

// Remarks on members, found by argument lookup: `constexpr auto notes(const NewFinding*) { return std::array{Note{"item", "..."}}; }`
struct Note {
  std::string_view member;
  std::string_view text;
};

// A list with its own limit of items: `static constexpr std::size_t items_max` in a struct derived from nothing; plain vectors take this.
inline constexpr std::size_t items_max_default = 10000;

// A number type says its rule: `static constexpr NumberRule wire_rule` and has one member `steps`.
template <class T>
concept NumberLeaf = requires(T t) {
  { T::wire_rule } -> std::convertible_to<NumberRule>;
  { t.steps } -> std::convertible_to<std::int64_t>;
};

template <class T>
concept TextLeaf = requires(const T t, T& out) {
  { T::wire_rule } -> std::convertible_to<TextRule>;
  { t.to_text() } -> std::convertible_to<std::string>;
  { T::from_text(std::string_view{}, out) } -> std::convertible_to<TextProblem>;
};

// An alternative of a choice names its tag: `static constexpr std::string_view kind = "angle";`.
template <class T>
concept Tagged = requires { { T::kind } -> std::convertible_to<std::string_view>; };

template <class T>
[[nodiscard]] const Type& type_of();

namespace detail {

template <class T>
struct IsVector : std::false_type {};
template <class T>
struct IsVector<std::vector<T>> : std::true_type {};
template <class T>
struct IsOptional : std::false_type {};
template <class T>
struct IsOptional<std::optional<T>> : std::true_type {};
template <class T>
struct IsVariant : std::false_type {};
template <class... T>
struct IsVariant<std::variant<T...>> : std::true_type {};

template <class T>
using Members = boost::describe::describe_members<T, boost::describe::mod_public>;

// The last part of a pretty function name: a portable way to a type's own name at compile time.
template <class T>
[[nodiscard]] constexpr std::string_view type_name() {
  std::string_view text = __PRETTY_FUNCTION__;
  const auto equals = text.find("T = ");
  text.remove_prefix(equals + 4);
  const auto end = text.find_first_of(";]");
  text = text.substr(0, end);
  const auto colons = text.rfind("::");
  return colons == std::string_view::npos ? text : text.substr(colons + 2);
}

template <class T>
[[nodiscard]] constexpr std::string_view note_of([[maybe_unused]] std::string_view member) {
  if constexpr (requires { notes(static_cast<const T*>(nullptr)); }) {
    for (const Note& note : notes(static_cast<const T*>(nullptr))) {
      if (note.member == member) {
        return note.text;
      }
    }
  }
  return {};
}

template <class T, class D>
void* member_at(void* object) {
  return &(static_cast<T*>(object)->*D::pointer);
}

template <class T, class M>
[[nodiscard]] constexpr T class_of(M T::*);
template <class T, class M>
[[nodiscard]] constexpr M member_of(M T::*);

// JSON names are the C++ names; one that would be a keyword carries a trailing underscore here ("signed_" is "signed").
[[nodiscard]] constexpr std::string_view json_name(std::string_view name) {
  return name.ends_with('_') ? name.substr(0, name.size() - 1) : name;
}

template <class T, class... D>
[[nodiscard]] constexpr auto make_fields(boost::mp11::mp_list<D...>) {
  return std::array<Field, sizeof...(D)>{
      Field{json_name(D::name), &type_of<decltype(member_of(D::pointer))>, &member_at<T, D>, note_of<T>(json_name(D::name))}...};
}

template <class E, class... D>
[[nodiscard]] constexpr auto make_words(boost::mp11::mp_list<D...>) {
  return std::array<std::string_view, sizeof...(D)>{json_name(D::name)...};
}

template <class T, std::size_t... I>
[[nodiscard]] constexpr auto make_alternatives(std::index_sequence<I...>) {
  return std::array<Alternative, sizeof...(I)>{
      Alternative{std::variant_alternative_t<I, T>::kind, &type_of<std::variant_alternative_t<I, T>>}...};
}

template <class T, std::size_t... I>
void* hold_alternative(void* choice, std::size_t index, std::index_sequence<I...>) {
  void* held = nullptr;
  ((I == index ? static_cast<void>(held = &static_cast<T*>(choice)->template emplace<I>()) : static_cast<void>(0)), ...);
  return held;
}

template <class T>
struct Holder;

template <class T>
  requires boost::describe::has_describe_members<T>::value
struct Holder<T> {
  static_assert(boost::mp11::mp_size<Members<T>>::value == boost::pfr::tuple_size_v<T>, "a member is missing from the description");
  static constexpr auto fields = make_fields<T>(boost::mp11::mp_rename<Members<T>, boost::mp11::mp_list>{});
  static constexpr Type make() {
    Type type;
    type.kind = Kind::object;
    type.name = type_name<T>();
    type.note = note_of<T>("");
    type.fields = fields;
    return type;
  }
};

template <class T>
  requires(std::is_enum_v<T> && boost::describe::has_describe_enumerators<T>::value)
struct Holder<T> {
  static constexpr auto words = make_words<T>(boost::mp11::mp_rename<boost::describe::describe_enumerators<T>, boost::mp11::mp_list>{});
  static constexpr Type make() {
    Type type;
    type.kind = Kind::word;
    type.name = type_name<T>();
    type.note = note_of<T>("");
    type.words = words;
    type.get = [](const void* p) { return static_cast<std::int64_t>(*static_cast<const T*>(p)); };
    type.set = [](void* p, std::int64_t v) { *static_cast<T*>(p) = static_cast<T>(v); };
    return type;
  }
};

template <TextLeaf T>
struct Holder<T> {
  static constexpr Type make() {
    Type type;
    type.kind = Kind::text;
    type.text_rule = T::wire_rule;
    type.to_text = [](const void* p) { return static_cast<const T*>(p)->to_text(); };
    type.from_text = [](void* p, std::string_view text) -> TextProblem { return T::from_text(text, *static_cast<T*>(p)); };
    return type;
  }
};

template <NumberLeaf T>
struct Holder<T> {
  static constexpr Type make() {
    Type type;
    type.kind = Kind::number;
    type.number_rule = T::wire_rule;
    type.get = [](const void* p) { return static_cast<std::int64_t>(static_cast<const T*>(p)->steps); };
    type.set = [](void* p, std::int64_t v) { static_cast<T*>(p)->steps = static_cast<decltype(T::steps)>(v); };
    return type;
  }
};

template <>
struct Holder<bool> {
  static constexpr Type make() {
    Type type;
    type.kind = Kind::boolean;
    type.get = [](const void* p) { return static_cast<std::int64_t>(*static_cast<const bool*>(p)); };
    type.set = [](void* p, std::int64_t v) { *static_cast<bool*>(p) = v != 0; };
    return type;
  }
};

template <>
struct Holder<Raw> {
  static constexpr Type make() {
    Type type;
    type.kind = Kind::raw;
    type.to_text = [](const void* p) { return static_cast<const Raw*>(p)->json; };
    type.from_text = [](void* p, std::string_view text) -> TextProblem {
      static_cast<Raw*>(p)->json = std::string(text);
      return {};
    };
    return type;
  }
};

template <class T>
  requires IsOptional<T>::value
struct Holder<T> {
  static constexpr Type make() {
    Type type;
    type.kind = Kind::optional;
    type.inner = &type_of<typename T::value_type>;
    type.has = [](const void* p) { return static_cast<const T*>(p)->has_value(); };
    type.emplace = [](void* p) -> void* { return &static_cast<T*>(p)->emplace(); };
    type.held = [](void* p) -> void* { return &**static_cast<T*>(p); };
    return type;
  }
};

template <class T>
  requires IsVector<T>::value
struct Holder<T> {
  static constexpr Type make() {
    Type type;
    type.kind = Kind::list;
    type.inner = &type_of<typename T::value_type>;
    type.items_max = items_max_default;
    type.size = [](const void* p) { return static_cast<const T*>(p)->size(); };
    type.grow = [](void* p) -> void* { return &static_cast<T*>(p)->emplace_back(); };
    type.element = [](void* p, std::size_t i) -> void* { return &(*static_cast<T*>(p))[i]; };
    return type;
  }
};

template <class T>
  requires IsVariant<T>::value
struct Holder<T> {
  static constexpr std::size_t count = std::variant_size_v<T>;
  static constexpr auto alternatives = make_alternatives<T>(std::make_index_sequence<count>{});
  static constexpr Type make() {
    Type type;
    type.kind = Kind::choice;
    type.alternatives = alternatives;
    type.index = [](const void* p) { return static_cast<const T*>(p)->index(); };
    type.hold = [](void* p, std::size_t i) { return hold_alternative<T>(p, i, std::make_index_sequence<count>{}); };
    type.held = [](void* p) -> void* {
      return std::visit([](auto& held) -> void* { return &held; }, *static_cast<T*>(p));
    };
    return type;
  }
};

template <class T>
inline constexpr Type type_value = Holder<T>::make();

}  // namespace detail

template <class T>
const Type& type_of() {
  return detail::type_value<T>;
}

// A whole count without a unit, within limits: Count<0, 1000>.
template <std::int64_t Low, std::int64_t High>
struct Count {
  std::int64_t steps = Low > 0 ? Low : 0;
  static constexpr NumberRule wire_rule{Low, High, 1, ""};
  friend bool operator==(const Count&, const Count&) = default;
};

}  // namespace limbledger::wire
