// Whole sacks: 94 lb of cement make 4.23 ft3 of a mix with 600 lb/yd3 at w/cm 0.45.

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/batch/sacks.hpp>

#include "base_mix.hpp"
#include "support.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinAbs;

namespace {

constexpr double foot3 = 0.028316846592; // m3

Solved mix_of(const std::string& binder) {
    return solve(text({.requirements = "  average_strength: 5000 psi\n  exposure: [F2, C1]\n",
                       .binder = binder,
                       .selections = "{binder: 600 lb/yd3, w_cm: 0.45}"}),
                 input::Purpose::batch);
}

core::SackStudy studied(double ft3, const std::string& binder = "{cement: 100 %}") {
    const Solved mix = mix_of(binder);
    core::BatchOrder order{.volume_m3 = ft3 * foot3};
    order.sacks = {{"cement", inside(94, "lb")}};
    if (binder.find("slag") != std::string::npos) {
        order.sacks.push_back({"slag", inside(50, "lb")});
    }
    return boardmark::test::made(
        core::study_sacks(mix.proportions, order, mix.tables.water_density_kg_m3));
}

const core::BatchItem& item(const core::Batch& batch, const std::string& name) {
    return *std::ranges::find(batch.items, name, &core::BatchItem::name);
}

} // namespace

TEST_CASE("rounding the sacks of an order moves the ratio the other way") {
    const auto [ft3, exact, whole] = GENERATE(table<double, double, double>({
        {4.23, 1, 1},
        {8.46 * 1.2, 2.4, 2}, // the ratio rises
        {8.46 * 1.4, 2.8, 3}, // and falls
        {4.23 * 0.3, 0.3, 1}, // never none
    }));
    const core::SackStudy study = studied(ft3);
    CHECK_THAT(study.exact_sacks, WithinAbs(exact, 1e-9));
    CHECK_THAT(*item(study.rounded, "cement").sacks, WithinAbs(whole, 1e-12));
    CHECK_THAT(in_unit(item(study.rounded, "cement").kg, "lb"), WithinAbs(94 * whole, 1e-9));
    CHECK_THAT(study.rounded.w_cm, WithinAbs(0.45 * exact / whole, 1e-9));
}

TEST_CASE(
    "a batch with fewer sacks than it should have breaks the exposure limit and yields less") {
    const Solved mix = mix_of("{cement: 100 %}");
    const core::SackStudy study = studied(8.46 * 1.2);
    const auto checks = core::assess(mix.mix, mix.proportions, study.rounded, mix.tables);
    const auto found = std::ranges::find(checks, "w_cm.exposure", &core::Check::id);
    CHECK(found->verdict == core::Verdict::fails);
    // 0.4 sacks of 94 lb at 3.15 x 62.4 lb/ft3 are missing, with them 6 % of air
    CHECK_THAT((*study.rounded.yield_m3 - study.rounded.volume_m3) / foot3,
               WithinAbs(-0.4 * 94 / (3.15 * 62.4) / 0.94, 1e-6));
}

TEST_CASE("the next lower volume of whole sacks, where there is one") {
    CHECK_THAT(*studied(10).volume_below_m3 / foot3, WithinAbs(8.46, 1e-9));
    CHECK_FALSE(studied(4).volume_below_m3);
    CHECK_FALSE(studied(8.46).volume_below_m3); // whole as it stands
}

TEST_CASE("each sacked material is rounded by its own sack") {
    // 12.69 ft3: 141 lb of each, 1.5 sacks of 94 lb and 2.82 of 50 lb
    const core::SackStudy study = studied(12.69, "{cement: 50 %, slag: 50 %}");
    CHECK_THAT(*item(study.rounded, "cement").sacks, WithinAbs(2, 1e-12));
    CHECK_THAT(*item(study.rounded, "slag").sacks, WithinAbs(3, 1e-12));
    CHECK_THAT(study.rounded.w_cm, WithinAbs(0.45 * 282 / (188 + 150), 1e-9));
}

TEST_CASE("the main sack is of the material that the mix holds most of") {
    const Solved mix = mix_of("{cement: 40 %, slag: 60 %}");
    const auto sacks = core::main_first({{"cement", 42.5}, {"slag", 25}}, mix.proportions);
    CHECK(sacks.front().material == "slag");
    CHECK(sacks.back().material == "cement");
}

TEST_CASE("a sack that comes out whole is not moved by the scale") {
    const Solved mix = mix_of("{cement: 100 %}");
    core::BatchOrder order{.volume_m3 = 4.23 * foot3, .resolution_kg = inside(5, "lb")};
    order.sacks = {{"cement", inside(94, "lb")}};
    const core::Batch batch =
        boardmark::test::made(core::batch(mix.proportions, order, mix.tables.water_density_kg_m3));
    CHECK_THAT(in_unit(item(batch, "cement").kg, "lb"), WithinAbs(94, 1e-9));
    CHECK(*item(batch, "cement").sacks == 1);
}
