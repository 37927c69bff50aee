#include "core/service/methods/say/catalogue.hpp"

#include "core/reference/edition.hpp"
#include "core/service/methods/say/form.hpp"
#include "core/wire/read.hpp"
#include "core/wire/write.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

using namespace limbledger;

namespace {

[[nodiscard]] Result<service::CatalogueReadResult> read_catalogue(std::string_view params) {
  const auto read = wire::read_text<service::CatalogueReadParams>(params);
  REQUIRE(read.has_value());
  service::Context context;
  context.edition = reference::built_in_edition();
  return service::catalogue_read(context, *read);
}

}  // namespace

TEST_CASE("catalogue.read without params gives every item, the scales they use, and the edition") {
  const auto all = read_catalogue("{}");
  REQUIRE(all.has_value());
  CHECK(all->items.size() == reference::built_in_edition()->items().size());
  CHECK(all->scales.size() == reference::built_in_edition()->scales().size());
  CHECK(all->edition.text == "facts.1");
  // Each can be opened and drawn; also named where only one item is asked for.
  CHECK(all->complaints.size() == reference::built_in_edition()->sequences().size());
  const auto one = read_catalogue(R"({"items":["knee.lachman"]})");
  REQUIRE(one.has_value());
  CHECK(one->complaints == all->complaints);
  for (const model::Word& complaint : all->complaints) {
    CHECK(service::find_sequence(*reference::built_in_edition(), complaint).has_value());
  }
}

TEST_CASE("a region or a list of names narrows the catalogue") {
  const auto vessel = read_catalogue(R"({"region":"vessel"})");
  REQUIRE(vessel.has_value());
  const auto& items = reference::built_in_edition()->items();
  const auto of_vessels = std::count_if(items.begin(), items.end(), [](const model::Item& item) { return item.region.text == "vessel"; });
  CHECK(vessel->items.size() == static_cast<std::size_t>(of_vessels));
  CHECK(std::all_of(vessel->items.begin(), vessel->items.end(), [](const model::Item& item) { return item.region.text == "vessel"; }));
  REQUIRE(vessel->scales.size() == 2);
  CHECK(vessel->scales[0].scale.text == "edema/ebm");
  CHECK(vessel->scales[1].scale.text == "pulse/0-3");
  const auto one = read_catalogue(R"({"items":["knee.lachman"]})");
  REQUIRE(one.has_value());
  REQUIRE(one->items.size() == 1);
  CHECK(one->scales.at(0).takes_mm == true);
  const auto scale = read_catalogue(R"({"scales":["mrc/1976"]})");
  REQUIRE(scale.has_value());
  CHECK(scale->items.empty());
  CHECK(scale->scales.size() == 1);
}

TEST_CASE("names that are not in the catalogue are refused with the nearest one") {
  const auto wrong = read_catalogue(R"({"region":"kneee","items":["knee.lachmann"],"scales":["mrc/1977"]})");
  REQUIRE(wrong.has_error());
  const wire::Refusal refusal = wrong.error();
  REQUIRE(refusal.faults.size() == 3);
  CHECK(refusal.faults[0].code == "params.unknown_word");
  CHECK(refusal.faults[0].path == "/region");
  CHECK(refusal.faults[1].code == "item.unknown");
  CHECK(refusal.faults[1].path == "/items/0");
  CHECK(refusal.faults[1].expected == "nearest: knee.lachman");
  CHECK(refusal.faults[2].path == "/scales/0");
}

TEST_CASE("an item is written as the catalogue of the contract has it") {
  const auto one = read_catalogue(R"({"items":["knee.flexion_passive"]})");
  REQUIRE(one.has_value());
  const std::string text = wire::write(one->items[0]);
  for (const char* piece : {R"({"item":"knee.flexion_passive","family":"knee.flexion","region":"knee","sides":["left","right"],"value":"angle","axis":"flexion","end":"high")",
                            R"("unit":"deg","refuse":[-30,170],"confirm":[0,165])", R"("trials_max":5,"of_trials":"mean")",
                            R"("end_feels":["tissue_approximation","capsular_firm","springy_block","spasm","empty","bone_to_bone"])",
                            R"("withheld_by":["concern.knee_fracture","concern.extensor_rupture",)", R"("short":"msg.item.knee_flexion_passive.short")"}) {
    CHECK_MESSAGE(text.find(piece) != std::string::npos, piece);
  }
}
