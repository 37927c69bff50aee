// A place where exams are done: how far help is, whom to call, what is there today, and the local protocol's text with its
// date. What is not listed is unknown, never "not there".
#pragma once

#include "core/model/ids.hpp"
#include "core/model/time.hpp"

#include <optional>
#include <vector>

namespace limbledger::model {

enum class YesNo { yes, no };
BOOST_DESCRIBE_ENUM(YesNo, yes, no)

struct Travel {
  wire::Name to;
  wire::Count<0, 20000> minutes;
  friend bool operator==(const Travel&, const Travel&) = default;
};
BOOST_DESCRIBE_STRUCT(Travel, (), (to, minutes))

struct Telephone {
  wire::Name who;
  wire::Name number;
  friend bool operator==(const Telephone&, const Telephone&) = default;
};
BOOST_DESCRIBE_STRUCT(Telephone, (), (who, number))

struct Here {
  Word what;  // film, ultrasound, laboratory, doppler, splints, crutches, dressings ...
  YesNo there{};
  friend bool operator==(const Here&, const Here&) = default;
};
BOOST_DESCRIBE_STRUCT(Here, (), (what, there))

struct Protocol {
  wire::LongText text;
  PartialDate dated;
  friend bool operator==(const Protocol&, const Protocol&) = default;
};
BOOST_DESCRIBE_STRUCT(Protocol, (), (text, dated))

// A clinician of this clinic who read the texts of a language for people (take-home sheet, kiosk), and when.
struct ReviewedLanguage {
  Word language;
  wire::Name by;
  PartialDate on;
  friend bool operator==(const ReviewedLanguage&, const ReviewedLanguage&) = default;
};
BOOST_DESCRIBE_STRUCT(ReviewedLanguage, (), (language, by, on))

struct Place {
  std::optional<PlaceId> place;
  std::optional<wire::Name> name;
  std::optional<std::vector<Travel>> travel;
  std::optional<std::vector<Telephone>> telephones;
  std::optional<std::vector<Here>> here;
  std::optional<std::vector<Protocol>> protocols;
  std::optional<std::vector<wire::Name>> endemic;
  std::optional<std::vector<ReviewedLanguage>> reviewed;
  std::optional<std::vector<EntryId>> revision;
  friend bool operator==(const Place&, const Place&) = default;
};
BOOST_DESCRIBE_STRUCT(Place, (), (place, name, travel, telephones, here, protocols, endemic, reviewed, revision))

}  // namespace limbledger::model

// One table a type for the whole program, made in core/model/types.cpp: it is costly to make in every file.
namespace limbledger::wire {
extern template const Type& type_of<model::Place>();
}  // namespace limbledger::wire
