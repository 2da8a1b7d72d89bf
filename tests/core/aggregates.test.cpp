// Coarse and fine aggregate, their blends and their states.

#include <boardmark/core/basis/unresolved.hpp>
#include <boardmark/core/mix/fineness_modulus.hpp>

#include "base_mix.hpp"
#include "support.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;

namespace {

const std::string average = "  average_strength: 5000 psi\n";

std::string blend(const std::string& key = "") {
    std::string yaml = text({.requirements = average});
    yaml.replace(
        yaml.find("  sand:"), 2,
        "  pea: {kind: coarse aggregate, nominal_max_size: 3/8 in, relative_density: 2.60, "
        "absorption: 2.0 %, dry_rodded_density: 90 lb/ft3}\n  ");
    yaml.replace(yaml.find("coarse: {stone: 100 %}"), 22, "coarse: {stone: 60 %, pea: 40 %}" + key);
    return yaml;
}

} // namespace

TEST_CASE("a coarse blend is shared by SSD mass and keeps its dry-rodded mass") {
    const Solved solved = solve(blend());
    const auto& stone = solved.ingredient("stone");
    const auto& pea = solved.ingredient("pea");
    CHECK_THAT(stone.kg_m3 / (stone.kg_m3 + pea.kg_m3), WithinAbs(0.6, 1e-12));
    // Mean of the blend: 0.6 × 100 + 0.4 × 90 = 96 lb/ft3; table 0.62 for 3/4 in, 2.8.
    const double dry_kg_m3 = 0.62 * inside(96, "lb/ft3");
    CHECK_THAT(*stone.dry_kg_m3 + *pea.dry_kg_m3, WithinAbs(dry_kg_m3, 1e-9));
    CHECK(solved.step("dry_rodded_density")->marks == core::Marks{core::Mark::estimate});
}

TEST_CASE("a density measured on the blend replaces the mean") {
    const Solved solved = solve(blend("\n  coarse_dry_rodded_density: 105 lb/ft3"));
    const double dry_kg_m3 = 0.62 * inside(105, "lb/ft3");
    CHECK_THAT(*solved.ingredient("stone").dry_kg_m3 + *solved.ingredient("pea").dry_kg_m3,
               WithinAbs(dry_kg_m3, 1e-9));
    CHECK(solved.step("dry_rodded_density")->marks.empty());
}

TEST_CASE("the largest size of a blend governs") {
    CHECK(solve(blend()).proportions.selection.nominal_max_size_mm == Approx(19.05));
}

TEST_CASE("an oven-dry relative density is carried to SSD") {
    std::string yaml = text({.requirements = average});
    yaml.replace(yaml.find("relative_density: 2.68"), 22,
                 "relative_density: 2.60, relative_density_basis: oven-dry");
    const auto stone = solve(yaml).ingredient("stone");
    CHECK_THAT(*stone.relative_density, WithinAbs(2.60 * 1.005, 1e-12));
    // Volume of the SSD grain: dry mass over the oven-dry relative density.
    CHECK_THAT(*stone.volume_m3,
               WithinAbs(*stone.dry_kg_m3 / (2.60 * inside(62.4, "lb/ft3")), 1e-12));
}

TEST_CASE("selections replace and adjust the coarse volume") {
    struct Case {
        std::string selections;
        double coarse_volume;
    };
    const auto [selections, coarse_volume] = GENERATE(values<Case>({
        {"{}", 0.62},
        {"{coarse_volume: 0.58}", 0.58},
        {"{coarse_adjustment: -5 %}", 0.62 * 0.95},
        {"{coarse_adjustment: 10 %}", 0.62 * 1.10},
    }));
    INFO(selections);
    const Solved solved = solve(text({.requirements = average, .selections = selections}));
    CHECK_THAT(*solved.proportions.selection.coarse_volume, WithinAbs(coarse_volume, 1e-12));
    CHECK_THAT(*solved.ingredient("stone").dry_kg_m3,
               WithinAbs(coarse_volume * inside(100, "lb/ft3"), 1e-9));
}

TEST_CASE("a fine share divides the aggregate volume and needs no modulus") {
    std::string yaml = text({.requirements = average, .selections = "{fine_share: 44 %}"});
    yaml.replace(yaml.find(", fineness_modulus: 2.8"), 23, "");
    const Solved solved = solve(yaml);
    const double fine = *solved.ingredient("sand").volume_m3;
    const double coarse = *solved.ingredient("stone").volume_m3;
    CHECK_THAT(fine / (fine + coarse), WithinAbs(0.44, 1e-12));
    CHECK_THAT(*solved.proportions.totals.volume_m3, WithinAbs(1, 1e-12));
}

TEST_CASE("usual aggregate figures make an estimate") {
    std::string yaml = text({.requirements = average});
    yaml.replace(yaml.find(", relative_density: 2.64, absorption: 0.7 %, fineness_modulus: 2.8"),
                 66, ", typical: yes");
    const Solved solved = solve(yaml);
    CHECK(solved.proportions.estimate);
    CHECK_THAT(solved.proportions.worksheet.cautions.front().text, Contains("must not be batched"));
    CHECK(solved.step("absorption")->marks == core::Marks{core::Mark::typical});
}

TEST_CASE(
    "a stone without a dry-rodded density has the usual one, if its figures are to be usual") {
    // 100 lb/ft3 or 1600 kg/m3: usual figure, common practice, no source.
    const auto without = [](const std::string& base, const char* density, const char* stated) {
        std::string yaml = base;
        REQUIRE(yaml.find(density) != std::string::npos);
        return yaml.replace(yaml.find(density), std::string{density}.size(), stated);
    };
    const std::string plain = text({.requirements = average});
    const Solved alone = solve(without(plain, "dry_rodded_density: 100 lb/ft3", "typical: yes"));
    CHECK_THAT(*alone.ingredient("stone").dry_kg_m3, WithinAbs(0.62 * inside(100, "lb/ft3"), 1e-9));
    CHECK(alone.step("dry_rodded_density")->marks == core::Marks{core::Mark::typical});
    // 0.6 x 100 + 0.4 x 90 = 96 lb/ft3 again, and 0.6 x 100 + 0.4 x 100.
    for (const auto& [density, mean] : {std::pair{"dry_rodded_density: 100 lb/ft3", 96.},
                                        std::pair{"dry_rodded_density: 90 lb/ft3", 100.}}) {
        const Solved mixed = solve(without(blend(), density, "typical: yes"));
        CHECK_THAT(*mixed.ingredient("stone").dry_kg_m3 + *mixed.ingredient("pea").dry_kg_m3,
                   WithinAbs(0.62 * inside(mean, "lb/ft3"), 1e-9));
        CHECK(mixed.step("dry_rodded_density")->marks == core::Marks{core::Mark::estimate});
    }
}

TEST_CASE("the bulk volume beyond the moduli and the sizes of its table") {
    // ACI 211.1-91 table 6.3.6: 3/4 in stone has 0.66 at 2.40 and 0.60 at 3.00, a line between
    // them; continued to 2.3 and 3.1 (common practice, no source).
    struct Row {
        const char* modulus;
        std::optional<double> coarse_volume;
    };
    for (const Row& row :
         {Row{"2.2", std::nullopt}, Row{"2.3", 0.67}, Row{"2.4", 0.66}, Row{"2.5", 0.65},
          Row{"3.0", 0.60}, Row{"3.1", 0.59}, Row{"3.2", std::nullopt}}) {
        INFO(row.modulus);
        const auto mix = read(text({.requirements = average, .modulus = row.modulus}),
                              input::Purpose::proportion);
        const auto found = core::proportions_of(mix, reference::tables_for(mix));
        REQUIRE(bool(found) == row.coarse_volume.has_value());
        if (found) {
            CHECK_THAT(*found->selection.coarse_volume, WithinAbs(*row.coarse_volume, 1e-9));
        } else {
            CHECK_THAT(found.why().what.text, Contains("covers fineness moduli"));
        }
    }
}

TEST_CASE("a sieve missing from the series gives no modulus") {
    const std::vector<double> series{0.15, 0.3, 0.6, 1.18, 2.36, 4.75, 9.5, 19};
    // CRD-C 104-80 fine aggregate example: retained 0, 4, 21, 46, 74, 89, 95 from 3/8 in to No.
    // 100.
    std::vector<core::SievePassing> sieves{{9.525, 100}, {4.75, 96}, {2.36, 79}, {1.18, 54},
                                           {0.6, 26},    {0.3, 11},  {0.15, 5}};
    CHECK_THAT(*core::fineness_modulus(sieves, series), WithinAbs(3.29, 1e-9));
    sieves.erase(sieves.begin() + 3);
    CHECK_FALSE(core::fineness_modulus(sieves, series));
    CHECK_FALSE(core::fineness_modulus({}, series));
}

TEST_CASE("no room for sand names the sum and the largest part") {
    try {
        solve(text({.requirements = average,
                    .selections = "{water: 380 kg/m3, w_cm: 0.45, coarse_volume: 0.9}"}));
        FAIL("a mix followed");
    } catch (const core::Unresolved& unresolved) {
        CHECK_THAT(unresolved.what.text, Contains("leave no room for {what}"));
        CHECK_FALSE(unresolved.ways_out.empty());
    }
}
