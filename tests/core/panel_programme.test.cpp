// Room, batches and order of casting, by hand from the figures of a small wall.

#include <boardmark/core/panels/panel_programme.hpp>

#include "core/panels/panel_case.hpp"
#include "support.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

using namespace boardmark;
using namespace boardmark::core;
using Catch::Matchers::WithinAbs;

namespace {

PanelWishes wishes_of(std::vector<PanelFactor> factors) {
    return {.factors = std::move(factors)};
}

/// Two mixes and two agents, all four combinations, one repeat.
const PanelWishes four{
    .factors = {{"mix", {"a.yaml", "b.yaml"}}, {"release_agent", {"oil", "wax"}}},
    .number = 4,
    .repeats = 1,
    .mixer_m3 = 0.5};

PanelDesign design_of(const PanelWishes& wishes, int panels) {
    PanelAsk ask{.levels = {}};
    for (const PanelFactor& factor : wishes.factors) {
        ask.levels.push_back(static_cast<int>(factor.levels.size()));
    }
    return best_design(ask, panels, {});
}

} // namespace

TEST_CASE("panels of one mix share batches as far as the mixer holds, repeats have their own",
          "[panels]") {
    auto panels = numbered_panels(design_of(four, 4), four.repeats);
    REQUIRE(panels.size() == 5);
    CHECK(panels.back().repeat);
    CHECK(panels.back().levels == panels.front().levels);
    const auto batches = cast_in_batches(four, 0.2, panels); // two panels fill 0.4 of 0.5 m3
    REQUIRE(batches.size() == 3);
    CHECK(batches[0].mix == 0);
    CHECK(batches[1].mix == 1);
    CHECK(batches[2].panels == std::vector<int>{5});
    CHECK_THAT(*batches[0].mixed_m3, WithinAbs(0.4, 1e-12));
    const auto single = cast_in_batches(four, 0.3, panels); // one panel a batch
    CHECK(single.size() == 5);
    const auto unknown = cast_in_batches(four, std::nullopt, panels);
    CHECK(unknown.size() == 3);
    CHECK_FALSE(unknown[0].panels_m3);
}

TEST_CASE("every panel is cast once, in one batch of its own mix", "[panels]") {
    auto panels = numbered_panels(design_of(four, 4), four.repeats);
    const auto batches = cast_in_batches(four, 0.2, panels);
    std::set<int> cast;
    std::set<int> places;
    for (const PanelBatch& batch : batches) {
        for (const int number : batch.panels) {
            CHECK(cast.insert(number).second);
            const SamplePanel& panel = panels[static_cast<std::size_t>(number - 1)];
            CHECK(panel.batch == batch.number);
            CHECK(static_cast<std::size_t>(panel.levels[0]) == batch.mix);
            CHECK(places.insert(panel.place).second);
        }
    }
    CHECK(cast.size() == panels.size());
    CHECK(*places.begin() == 1);
    CHECK(*places.rbegin() == static_cast<int>(panels.size()));
}

TEST_CASE("the allowance comes on top of the panels", "[panels]") {
    PanelWishes wishes = wishes_of({{"species", {"fir", "spruce"}}});
    wishes.allowance_percent = 15;
    auto panels = numbered_panels(design_of(wishes, 2), 0);
    const auto batches = cast_in_batches(wishes, 0.2, panels);
    REQUIRE(batches.size() == 1);
    CHECK_THAT(*batches[0].panels_m3, WithinAbs(0.4, 1e-12));
    CHECK_THAT(*batches[0].mixed_m3, WithinAbs(0.46, 1e-12));
}
