#include "core/match/compare.hpp"

#include "core/match/jaro_winkler.hpp"
#include "core/wire/type.hpp"

#include <algorithm>

namespace limbledger::match {

namespace {

constexpr double near_from = 0.92;   // cut-offs of the page on matching
constexpr double close_from = 0.88;
constexpr std::size_t word_min = 3;  // a shorter word in common says nothing of two names

[[nodiscard]] Letters as_letters(const std::string& text) { return Letters(text.begin(), text.end()); }

// The words of the shorter name, each with the best word of the other that no other one took.
struct Pairing {
  double worst = 1;
  std::size_t same = 0;       // words that are near, of three letters or more
  bool rest_differs = false;  // a word without any that is close
};
[[nodiscard]] Pairing pair_words(const std::vector<Letters>& few, const std::vector<Letters>& many) {
  Pairing out;
  std::vector<bool> taken(many.size());
  for (const Letters& word : few) {
    double best = 0;
    std::size_t at = many.size();
    for (std::size_t j = 0; j < many.size(); ++j) {
      const double alike = taken[j] ? 0 : (word == many[j] ? 1 : jaro_winkler(word, many[j]));
      if (alike > best) {
        best = alike;
        at = j;
      }
    }
    if (at < many.size() && best >= close_from) {
      taken[at] = true;
    }
    out.worst = std::min(out.worst, best);
    out.same += best >= near_from && word.size() >= word_min ? 1U : 0U;
    out.rest_differs = out.rest_differs || best < close_from;
  }
  return out;
}

[[nodiscard]] NameLevel compare_name(const Looked::Name& a, const Looked::Name& b, bool& rest_differs) {
  rest_differs = false;
  if (a.sorted == b.sorted) {
    return NameLevel::same;
  }
  if (a.skeleton == b.skeleton) {
    return NameLevel::look_alike_letters;
  }
  if (a.joined == b.joined) {
    return NameLevel::near;
  }
  const bool a_is_few = a.words.size() <= b.words.size();
  const Pairing pairing = pair_words(a_is_few ? a.words : b.words, a_is_few ? b.words : a.words);
  rest_differs = pairing.rest_differs;
  if (a.words.size() == b.words.size() && pairing.worst >= near_from) {
    return NameLevel::near;
  }
  if (a.words.size() != b.words.size() && pairing.worst >= near_from && pairing.same > 0) {
    return NameLevel::part;
  }
  if (pairing.worst >= close_from || jaro_winkler(a.joined, b.joined) >= near_from) {
    return NameLevel::close;
  }
  return pairing.same > 0 ? NameLevel::shares_word : NameLevel::other;
}

[[nodiscard]] TextLevel compare_homes(const Letters& a, const Letters& b) {
  if (a.empty() || b.empty()) {
    return TextLevel::missing;
  }
  return a == b ? TextLevel::same : (jaro_winkler(a, b) >= near_from ? TextLevel::near : TextLevel::other);
}

// The best of those of one issuer. The number is text: leading zeros make another number.
[[nodiscard]] TextLevel compare_numbers(const std::vector<Looked::Number>& a, const std::vector<Looked::Number>& b) {
  TextLevel best = TextLevel::missing;
  for (const Looked::Number& one : a) {
    for (const Looked::Number& other : b) {
      if (one.issuer != other.issuer) {
        continue;
      }
      const bool slip = one.text.size() >= 5 && slips_between(as_letters(one.text), as_letters(other.text), 1) <= 1;
      const TextLevel level = one.text == other.text ? TextLevel::same : (slip ? TextLevel::near : TextLevel::other);
      best = best == TextLevel::missing ? level : std::min(best, level);
    }
  }
  return best;
}

template <class Level>
[[nodiscard]] std::string_view word_of(std::uint8_t level) {
  std::string_view word;
  boost::mp11::mp_for_each<boost::describe::describe_enumerators<Level>>([&](auto one) {
    if (static_cast<std::uint8_t>(one.value) == level) {
      word = one.name;
    }
  });
  return word;
}

}  // namespace

Looked look_at(const model::Person& person) {
  Looked out;
  for (const model::PersonName& name : person.names.value_or(std::vector<model::PersonName>{})) {
    Looked::Name one;
    one.words = folded_words(name.text.text);
    if (one.words.empty()) {
      continue;
    }
    for (const Letters& word : one.words) {
      one.joined += word;
    }
    one.sorted = folded_name(name.text.text);
    one.skeleton = look_alike_skeleton(one.sorted);
    out.names.push_back(std::move(one));
  }
  out.birth = person.birth;
  out.born = birth_days(person.birth);
  out.sex = person.sex;
  if (person.home) {
    out.home = folded_name(person.home->text);
  }
  for (const model::Identifier& one : person.identifiers.value_or(std::vector<model::Identifier>{})) {
    out.numbers.push_back({folded_name(one.issuer.text), trimmed(one.text.text)});
  }
  return out;
}

Compared compare(const Looked& a, const Looked& b) {
  Compared out;
  NameLevel name = NameLevel::missing;
  bool rest_differs = false;
  for (const Looked::Name& one : a.names) {
    for (const Looked::Name& other : b.names) {
      bool differs = false;
      const NameLevel level = compare_name(one, other, differs);
      if (name == NameLevel::missing || level < name) {
        name = level;
        rest_differs = differs;
        out.same_name = level == NameLevel::same ? one.sorted : Letters();
      }
    }
  }
  const BirthLevel birth = compare_births(a.birth, b.birth);
  const auto known = [](model::Sex sex) { return sex == model::Sex::male || sex == model::Sex::female; };
  const SexLevel sex = !known(a.sex) || !known(b.sex) ? SexLevel::missing : (a.sex == b.sex ? SexLevel::same : SexLevel::other);
  const TextLevel home = compare_homes(a.home, b.home);
  const TextLevel number = compare_numbers(a.numbers, b.numbers);
  out.pattern = {static_cast<std::uint8_t>(name), static_cast<std::uint8_t>(birth), static_cast<std::uint8_t>(sex), static_cast<std::uint8_t>(home),
                 static_cast<std::uint8_t>(number)};
  out.perhaps_twins = birth == BirthLevel::same_day && rest_differs && number != TextLevel::same;
  out.perhaps_kin = name == NameLevel::same && home == TextLevel::same && number != TextLevel::same && generation_apart(a.birth, b.birth);
  return out;
}

std::string_view level_word(Field field, std::uint8_t level) {
  switch (field) {
    case Field::name:
      return word_of<NameLevel>(level);
    case Field::birth:
      return word_of<BirthLevel>(level);
    case Field::sex:
      return word_of<SexLevel>(level);
    case Field::home:
    case Field::identifier:
      return word_of<TextLevel>(level);
  }
  return {};
}

}  // namespace limbledger::match
