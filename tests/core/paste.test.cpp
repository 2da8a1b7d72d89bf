// Which of strength, exposure, minimum and selections decides the paste. The rules are the
// project's own; the table values used are ACI 211.1-91 Tables 6.3.3 and 6.3.4(a): 305 lb/yd3
// (air-entrained, 3 to 4 in, 3/4 in), w/c 0.40 at 5000 psi air-entrained.

#include <boardmark/core/basis/unresolved.hpp>

#include "base_mix.hpp"
#include "support.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using core::Governor;

namespace {

const std::string frost = "  exposure: [F2, S0, W1, C1]\n";
const std::string spray = "  exposure: [F2, S1, W1, C2]\n";
const std::string curve = "  strength_curve: {0.36: 6900 psi, 0.40: 6200 psi, 0.50: 4700 psi}\n";
const std::string average_5000 =
    "  average_strength: 5000 psi\n  average_strength_basis: \"a test\"\n";

double lb_yd3(double kg_m3) {
    return in_unit(kg_m3, "lb/yd3");
}

std::string what_stops(const BaseMix& mix) {
    try {
        solve(text(mix));
    } catch (const core::Unresolved& unresolved) {
        return unresolved.what.text;
    }
    return "nothing";
}

} // namespace

TEST_CASE("the lower of strength and exposure governs and exposure wins a tie") {
    struct Case {
        std::string requirements;
        double w_cm;
        Governor governor;
    };
    const auto [requirements, w_cm, governor] = GENERATE(values<Case>({
        {frost + average_5000, 0.40, Governor::strength}, // 0.40 by table, 0.45 by F2
        {spray + average_5000, 0.40, Governor::exposure}, // both 0.40: a tie
        {spray + average_5000 + curve, 0.40, Governor::exposure},
        {average_5000, 0.48, Governor::strength}, // no class: no entrained air, 0.48 by table
    }));
    INFO(requirements);
    const Solved solved = solve(text({.requirements = requirements}));
    CHECK_THAT(solved.proportions.selection.w_cm, WithinAbs(w_cm, 1e-9));
    CHECK(solved.proportions.selection.w_cm_governed_by == governor);
}

TEST_CASE("a curve of own trials is used before any table") {
    // ln-linear between 0.40: 6200 and 0.50: 4700 at 5000 psi:
    // 0.40 + 0.10 ln(6200/5000)/ln(6200/4700) = 0.47766 by hand.
    const Solved solved = solve(text({.requirements = average_5000 + curve}));
    CHECK_THAT(*solved.proportions.selection.w_cm_by_strength, WithinAbs(0.47766, 5e-6));
}

TEST_CASE("a curve is not stretched to a higher strength") {
    const std::string strong = "  average_strength: 7000 psi\n" + curve;
    CHECK_THAT(what_stops({.requirements = strong}), Contains("strength curve reaches"));
}

TEST_CASE("below the weakest trial its ratio is used and marked") {
    const Solved solved = solve(
        text({.requirements = "  average_strength: 4000 psi\n" + curve, .strength = "3000 psi"}));
    CHECK(*solved.proportions.selection.w_cm_by_strength == 0.50);
    CHECK(solved.step("w_cm_by_strength")->marks == core::Marks{core::Mark::continued});
}

TEST_CASE("two of three selections fix the third") {
    struct Case {
        std::string selections;
        double water_lb;
        double binder_lb;
        double w_cm;
    };
    // Table water 305 lb/yd3 less 16 % is 256.2 lb/yd3.
    const auto [selections, water_lb, binder_lb, w_cm] = GENERATE(values<Case>({
        {"{w_cm: 0.40, water: 260 lb/yd3}", 260, 650, 0.40},
        {"{w_cm: 0.40, binder: 600 lb/yd3}", 240, 600, 0.40},
        {"{water: 250 lb/yd3, binder: 625 lb/yd3}", 250, 625, 0.40},
        {"{binder: 610 lb/yd3}", 256.2, 610, 256.2 / 610},
        {"{water: 240 lb/yd3}", 240, 600, 0.40}, // w/cm by exposure
        {"{w_cm: 0.38}", 256.2, 256.2 / 0.38, 0.38},
    }));
    INFO(selections);
    const Solved solved =
        solve(text({.requirements = spray + average_5000, .selections = selections}));
    const core::Selection& selection = solved.proportions.selection;
    CHECK_THAT(lb_yd3(selection.water_kg_m3), WithinAbs(water_lb, 1e-6));
    CHECK_THAT(lb_yd3(selection.binder_kg_m3), WithinAbs(binder_lb, 1e-6));
    CHECK_THAT(selection.w_cm, WithinAbs(w_cm, 1e-9));
}

TEST_CASE("given water and fixed ratios do not enter the water table") {
    const std::string selections =
        GENERATE("{w_cm: 0.40, binder: 600 lb/yd3}", "{water: 240 lb/yd3}");
    INFO(selections);
    const Solved solved =
        solve(text({.requirements = spray + average_5000, .selections = selections}));
    CHECK_FALSE(solved.proportions.selection.table_water_kg_m3);
    CHECK_FALSE(solved.proportions.selection.water_reduction_percent);
}

TEST_CASE("a minimum raises the binder at constant water even against a given ratio") {
    const std::string minimum = "  minimum_binder: 700 lb/yd3\n";
    const std::string selections = GENERATE("{}", "{w_cm: 0.40}", "{w_cm: 0.44}");
    INFO(selections);
    const Solved solved =
        solve(text({.requirements = spray + average_5000 + minimum, .selections = selections}));
    const core::Selection& selection = solved.proportions.selection;
    CHECK_THAT(lb_yd3(selection.water_kg_m3), WithinAbs(256.2, 1e-6));
    CHECK_THAT(lb_yd3(selection.binder_kg_m3), WithinAbs(700, 1e-6));
    CHECK(selection.w_cm_governed_by == Governor::minimum_binder);
    CHECK(solved.check("binder.minimum")->verdict == core::Verdict::holds);
}

TEST_CASE("a given binder below the minimum stays and fails") {
    const Solved solved =
        solve(text({.requirements = spray + average_5000 + "  minimum_binder: 700 lb/yd3\n",
                    .selections = "{binder: 650 lb/yd3}"}));
    CHECK_THAT(lb_yd3(solved.proportions.selection.binder_kg_m3), WithinAbs(650, 1e-6));
    CHECK(solved.proportions.selection.w_cm_governed_by == Governor::given);
    CHECK(solved.check("binder.minimum")->verdict == core::Verdict::fails);
}

TEST_CASE("a given ratio is used even where it breaks a limit or no table reaches") {
    SECTION("a limit that it breaks fails its check") {
        const Solved solved =
            solve(text({.requirements = spray + average_5000, .selections = "{w_cm: 0.46}"}));
        CHECK(solved.proportions.selection.w_cm == 0.46);
        CHECK(solved.check("w_cm.exposure")->verdict == core::Verdict::fails);
        CHECK(solved.check("w_cm.exposure")->requirement == "C2");
        CHECK(solved.check("w_cm.strength")->verdict == core::Verdict::watch);
    }
    SECTION("a table that does not reach the average is read at the ratio used") {
        const Solved solved = solve(text({.requirements = spray + "  average_strength: 9000 psi\n",
                                          .selections = "{w_cm: 0.40}"}));
        CHECK_FALSE(solved.proportions.selection.w_cm_by_strength);
        CHECK(solved.check("w_cm.strength")->verdict == core::Verdict::watch);
        CHECK(solved.check("strength.average")->verdict == core::Verdict::watch);
    }
}

TEST_CASE("by exposure takes the limit and leaves the strength to the trial") {
    const Solved solved = solve(text({.requirements = spray, .selections = "{w_cm: by exposure}"}));
    CHECK(solved.proportions.selection.w_cm == 0.40);
    CHECK(solved.proportions.selection.w_cm_governed_by == Governor::exposure);
    CHECK(solved.check("w_cm.strength")->verdict == core::Verdict::not_checked);
}

TEST_CASE("by exposure needs a class that limits the ratio") {
    CHECK_THAT(what_stops({.requirements = "  exposure: [F0, S0, W0, C0]\n",
                           .selections = "{w_cm: by exposure}"}),
               Contains("no stated exposure class limits w/cm"));
}

TEST_CASE("an age below 28 days needs an own curve and a later age is called conservative") {
    const std::string early = "  strength_age: 7 d\n" + average_5000;
    CHECK_THAT(what_stops({.requirements = early}), Contains("holds for 28 d"));
    CHECK(what_stops({.requirements = early + curve}) == "nothing");

    const Solved late = solve(text({.requirements = "  strength_age: 56 d\n" + average_5000}));
    CHECK_THAT(late.step("w_cm_by_strength")->reason.text, Contains("conservative"));
}

TEST_CASE("a rich mix is told with both binders and what helps in order") {
    struct Case {
        std::string requirements;
        std::string dose;
        bool told;
    };
    const auto [requirements, dose, told] = GENERATE(values<Case>({
        {spray + average_5000, "8 fl oz/cwt", false}, // 640 lb/yd3, exposure governs
        {spray + average_5000, "4 fl oz/cwt", true},  // 702 lb/yd3
        {frost + average_5000, "8 fl oz/cwt", true},  // strength governs by 0.05
        // Strength governs by 0.03 and no more: 4625 psi gives 0.42 by the table.
        {frost + "  average_strength: 4625 psi\n", "8 fl oz/cwt", false},
    }));
    INFO(requirements << dose);
    const Solved solved =
        solve(text({.requirements = requirements, .dose = dose, .strength = "4500 psi"}));
    const auto& cautions = solved.proportions.worksheet.cautions;
    const bool found = std::ranges::any_of(cautions, [](const core::Phrase& caution) {
        return caution.text.find("What helps, in this order: field records") != std::string::npos;
    });
    CHECK(found == told);
}
