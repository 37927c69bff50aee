#include "core/service/methods/people/place.hpp"

#include "core/ledger/log/log.hpp"
#include "core/match/folded.hpp"
#include "core/service/methods/people/changes.hpp"
#include "core/service/methods/people/dates.hpp"

namespace limbledger::service {

namespace {

[[nodiscard]] ShownPlace shown(const ledger::PlaceFold& fold) {
  ShownPlace out;
  out.place = fold.place;
  if (!fold.conflicts.empty()) {
    out.conflicts = fold.conflicts;
  }
  out.entries = fold.value_heads;
  return out;
}

[[nodiscard]] std::vector<std::size_t> place_nodes(const ledger::Graph& graph, const model::PlaceId& place) {
  std::vector<std::size_t> nodes;
  for (std::size_t i = 0; i < graph.size(); ++i) {
    const auto* body = std::get_if<model::PlaceBody>(&graph.at(i).body());
    if (body != nullptr && body->place == place) {
      nodes.push_back(i);
    }
  }
  return nodes;
}

[[nodiscard]] Result<void> check_texts(const PlaceChanges& changes) {
  std::vector<wire::Fault> faults;
  const auto filled = [&](std::string_view text, const std::string& path) {
    if (match::trimmed(text).empty()) {
      faults.push_back({"value.empty", "/changes" + path, "at least one character"});
    }
  };
  const auto each = [&](const auto& list, const std::string& path, auto check) {
    if (list) {
      for (std::size_t i = 0; i < list->size(); ++i) {
        check((*list)[i], path + "/" + std::to_string(i));
      }
    }
  };
  if (changes.name) {
    filled(changes.name->text, "/name");
  }
  each(changes.travel, "/travel", [&](const model::Travel& travel, const std::string& path) { filled(travel.to.text, path + "/to"); });
  each(changes.telephones, "/telephones", [&](const model::Telephone& telephone, const std::string& path) {
    filled(telephone.who.text, path + "/who");
    filled(telephone.number.text, path + "/number");
  });
  each(changes.protocols, "/protocols", [&](const model::Protocol& protocol, const std::string& path) { filled(protocol.text.text, path + "/text"); });
  each(changes.reviewed, "/reviewed", [&](const model::ReviewedLanguage& one, const std::string& path) {
    filled(one.language.text, path + "/language");
    filled(one.by.text, path + "/by");
  });
  each(changes.endemic, "/endemic", [&](const wire::Name& name, const std::string& path) { filled(name.text, path); });
  if (!faults.empty()) {
    return wire::Refusal(std::move(faults));
  }
  return {};
}

[[nodiscard]] Result<void> check_days(Context& context, const PlaceAmendParams& params) {
  DateCheck dates(today_of(context), params.confirmed);
  const PlaceChanges& changes = params.changes;
  for (std::size_t i = 0; changes.protocols && i < changes.protocols->size(); ++i) {
    dates.dated((*changes.protocols)[i].dated, "/changes/protocols/" + std::to_string(i) + "/dated");
  }
  for (std::size_t i = 0; changes.reviewed && i < changes.reviewed->size(); ++i) {
    dates.dated((*changes.reviewed)[i].on, "/changes/reviewed/" + std::to_string(i) + "/on");
  }
  return dates.result();
}

[[nodiscard]] Result<void> check_amendment(Context& context, const PlaceAmendParams& params, const model::PlaceBody& body) {
  const auto operations = context.desk->records().clinic_operations();
  if (!operations) {
    return operations.error();
  }
  const ledger::Graph graph(*operations);
  const std::vector<std::size_t> nodes = place_nodes(graph, body.place);
  if (params.place && nodes.empty()) {
    return wire::Fault{"place.unknown", "/place", "the id of a place"};
  }
  // A new place changes nothing that anybody was shown.
  if (params.place || !params.seen.empty()) {
    if (auto seen = check_seen(params.seen, *operations); !seen) {
      return seen;
    }
  }
  if (!params.place && !params.changes.name) {
    return wire::Fault{"params.missing", "/changes/name", "the name of the new place"};
  }
  if (!changes_anything(params.changes)) {
    return wire::Fault{"value.empty", "/changes", "at least one member"};
  }
  if (auto filled = check_texts(params.changes); !filled) {
    return filled;
  }
  if (auto days = check_days(context, params); !days) {
    return days;
  }
  if (auto known = check_replaces(params.replaces, *operations); !known) {
    return known;
  }
  return values_are_named(graph, nodes, body, params.replaces, [](std::string_view) { return false; });
}

}  // namespace

Result<PlaceReadResult> place_read(Context& context, const PlaceReadParams& params) {
  const auto operations = context.desk->records().clinic_operations();
  if (!operations) {
    return operations.error();
  }
  PlaceReadResult result;
  for (const ledger::PlaceFold& fold : ledger::fold_places(*operations)) {
    if (!params.place || fold.place.place == params.place) {
      result.places.push_back(shown(fold));
    }
  }
  if (params.place && result.places.empty()) {
    return wire::Fault{"place.unknown", "/place", "the id of a place"};
  }
  result.revision = ledger::clinic_revision(ledger::Graph(*operations));
  return result;
}

Result<PlaceAmendResult> place_amend(Context& context, const PlaceAmendParams& params) {
  const ledger::Log& log = context.desk->log();
  model::PlaceBody body;
  body.place = params.place ? *params.place : model::PlaceId{log.object_for(ledger::ObjectType::place, params.request, 0).bytes};
  body.name = params.changes.name;
  body.travel = params.changes.travel;
  body.telephones = params.changes.telephones;
  body.here = params.changes.here;
  body.protocols = params.changes.protocols;
  body.endemic = params.changes.endemic;
  body.reviewed = params.changes.reviewed;
  ledger::NewOperation operation = operation_for(context, log.clinic_object(), ledger::ObjectType::clinic, "place", params.request, params.seen);
  operation.replaces = params.replaces;
  operation.body_json = wire::write(body);
  const auto written = write(context, {operation}, [&] { return check_amendment(context, params, body); });
  if (!written) {
    return written.error();
  }
  const auto places = context.desk->records().places();
  if (!places) {
    return places.error();
  }
  PlaceAmendResult result;
  for (const ledger::PlaceFold& fold : *places) {
    if (fold.place.place == body.place) {
      result.places.push_back(shown(fold));
    }
  }
  result.revision = written->revision;
  if (written->repeat) {
    result.repeat = true;
  }
  return result;
}

}  // namespace limbledger::service
