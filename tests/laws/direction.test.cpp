// Laws of direction: more of one thing never gives more, or less, of another.

#include "core/code/required_strength.hpp"
#include "laws/mixes.hpp"

#include <utility>

using namespace boardmark;
using namespace boardmark::test;

namespace {

/// Two numbers of a range, the lower one first.
std::pair<double, double> two_of(double low, double high, const std::string& name) {
    const double one = between(low, high, name);
    const double other = between(low, high, name);
    return std::minmax(one, other);
}

core::Mix without_selections() {
    core::Mix mix = any_mix();
    mix.selections = {};
    return mix;
}

} // namespace

TEST_CASE("more air lost on the way fills the batch with air and takes the place of sand") {
    holds([] {
        core::Mix mix = without_selections();
        mix.requirements.exposure = {one_of<std::string>({"F1", "F2", "F3"}, "class")};
        mix.requirements.air = {};
        const auto [low, high] = two_of(0, 5, "air lost");
        mix.requirements.air_loss_percent = low;
        const core::Proportions near = solved(mix);
        mix.requirements.air_loss_percent = high;
        const core::Proportions far = solved(mix);
        demand_same(far.selection.air_percent - near.selection.air_percent, high - low, 1e-9,
                    "air in the batch");
        demand_same(far.selection.air_at_placing_percent, near.selection.air_at_placing_percent,
                    1e-12, "air at placing");
        demand_at_most(kg_m3_of(far, core::Role::fine), kg_m3_of(near, core::Role::fine), "sand");
        demand_same(far.selection.water_kg_m3, near.selection.water_kg_m3, 1e-12, "water");
        demand_same(far.selection.binder_kg_m3, near.selection.binder_kg_m3, 1e-12, "binder");
    });
}

TEST_CASE("a higher ratio never needs more binder") {
    holds([] {
        core::Mix mix = without_selections();
        const auto [low, high] = two_of(0.3, 0.7, "w/cm");
        mix.selections.w_cm = low;
        const core::Proportions rich = solved(mix);
        mix.selections.w_cm = high;
        const core::Proportions lean = solved(mix);
        demand_at_most(lean.selection.binder_kg_m3, rich.selection.binder_kg_m3, "binder");
        demand_same(lean.selection.water_kg_m3, rich.selection.water_kg_m3, 1e-12, "water");
    });
}

TEST_CASE("a higher strength never allows a higher ratio") {
    holds([] {
        core::Mix mix = without_selections();
        const auto [low, high] = two_of(15, 35, "strength, MPa");
        mix.requirements.strength_mpa = low;
        const auto weak = attempt(mix);
        mix.requirements.strength_mpa = high;
        const core::Proportions strong = solved(mix); // what reaches the higher reaches the lower
        RC_ASSERT(weak.has_value());
        demand_at_most(*strong.selection.w_cm_by_strength, *weak->selection.w_cm_by_strength,
                       "w/cm by strength");
        demand_at_most(strong.selection.w_cm, weak->selection.w_cm, "w/cm");
    });
}

TEST_CASE("an own strength curve gives lower ratios for higher averages and meets its points") {
    holds([] {
        core::Mix mix = without_selections();
        auto& curve = mix.requirements.strength_curve;
        curve = {{0.36, between(44, 50, "strongest trial")},
                 {0.42, between(37, 43, "middle trial")},
                 {0.50, between(25, 36, "weakest trial")}};
        const auto [low, high] = two_of(25, 50, "average, MPa");
        mix.requirements.strength_mpa = 20;
        mix.requirements.average = core::StatedAverage{low, "trials"};
        const auto weak = attempt(mix);
        mix.requirements.average = core::StatedAverage{high, "trials"};
        const core::Proportions strong = solved(mix);
        RC_ASSERT(weak.has_value());
        const double ratio = *strong.selection.w_cm_by_strength;
        demand_at_most(ratio, *weak->selection.w_cm_by_strength, "w/cm by strength");
        demand_at_most(curve.front().w_cm, ratio, "the strongest trial");
        demand_at_most(ratio, curve.back().w_cm, "the weakest trial");
        for (const core::CurvePoint& trial : std::vector<core::CurvePoint>{curve}) {
            mix.requirements.average = core::StatedAverage{trial.strength_mpa, "trials"};
            demand_same(*solved(mix).selection.w_cm_by_strength, trial.w_cm, 1e-9, "own trial");
        }
    });
}

TEST_CASE("a higher specified strength never asks for a lower average") {
    holds([] {
        const auto& rules = tables_of(any_system()).code->average_strength;
        const auto [low, high] = two_of(10, 80, "strength, MPa");
        core::Requirements requirements{.strength_mpa = low, .slump_mm = 100};
        if (perhaps("record")) {
            requirements.records =
                core::StrengthRecords{.tests = *rc::gen::inRange(1, 60).as("tests"),
                                      .standard_deviation_mpa = between(0, 6, "standard deviation"),
                                      .strength_mpa = std::nullopt,
                                      .age_d = std::nullopt};
        }
        const double lower = core::code_average(requirements, rules).strength_mpa;
        requirements.strength_mpa = high;
        demand_at_most(lower, core::code_average(requirements, rules).strength_mpa, "average");
        demand_at_most(low, lower, "the specified strength itself");
    });
}

TEST_CASE("more tests never ask for a higher average and a wider record never for a lower one") {
    holds([] {
        const auto& rules = tables_of(any_system()).code->average_strength;
        const int few = *rc::gen::inRange(15, 60).as("tests");
        const int more = *rc::gen::inRange(0, 60).as("further tests");
        const auto [narrow, wide] = two_of(0, 8, "standard deviation, MPa");
        core::Requirements requirements{.strength_mpa = between(10, 80, "strength, MPa"),
                                        .slump_mm = 100};
        const auto average = [&](int tests, double deviation_mpa) {
            requirements.records = core::StrengthRecords{.tests = tests,
                                                         .standard_deviation_mpa = deviation_mpa,
                                                         .strength_mpa = std::nullopt,
                                                         .age_d = std::nullopt};
            return core::code_average(requirements, rules).strength_mpa;
        };
        demand_at_most(average(few + more, narrow), average(few, narrow), "more tests");
        demand_at_most(average(few, narrow), average(few, wide), "wider record");
    });
}

TEST_CASE("more reduction never needs more water") {
    holds([] {
        core::Mix mix = without_selections();
        mix.admixtures = {any_reducer("reducer", core::Kind::water_reducer)};
        const auto [low, high] = two_of(0.01, 0.6, "dose");
        mix.admixtures.front().dose->amount = low;
        const core::Proportions little = solved(mix);
        mix.admixtures.front().dose->amount = high;
        const core::Proportions much = solved(mix);
        demand_at_most(much.selection.water_kg_m3, little.selection.water_kg_m3, "water");
        demand_at_most(*little.selection.water_reduction_percent,
                       *much.selection.water_reduction_percent, "reduction");
        demand_same(*much.selection.table_water_kg_m3, *little.selection.table_water_kg_m3, 1e-12,
                    "table water");
        demand_same(much.selection.water_kg_m3,
                    *much.selection.table_water_kg_m3 *
                        (1 - *much.selection.water_reduction_percent / 100),
                    1e-12, "water");
    });
}

TEST_CASE("two reducers take off what each takes off of what the other leaves") {
    holds([] {
        core::Mix mix = without_selections();
        const core::Dosage one = any_reducer("one", core::Kind::water_reducer);
        const core::Dosage other = any_reducer("other", core::Kind::high_range_water_reducer);
        const auto left_by = [&](std::vector<core::Dosage> admixtures) {
            mix.admixtures = std::move(admixtures);
            return 1 - *solved(mix).selection.water_reduction_percent / 100;
        };
        demand_same(left_by({one, other}), left_by({one}) * left_by({other}), 1e-12,
                    "part of the water that is left");
    });
}

TEST_CASE("more slump never needs less table water") {
    holds([] {
        core::Mix mix = without_selections();
        const auto [low, high] = two_of(22, 178, "slump, mm");
        mix.requirements.slump_mm = low;
        const core::Proportions stiff = solved(mix);
        mix.requirements.slump_mm = high;
        const core::Proportions wet = solved(mix);
        demand_at_most(*stiff.selection.table_water_kg_m3, *wet.selection.table_water_kg_m3,
                       "table water");
    });
}

TEST_CASE("larger stone never needs more table water") {
    holds([] {
        core::Mix mix = without_selections();
        mix.coarse.resize(1);
        mix.coarse.front().percent = 100;
        // The column of the table stays the same: with the size the air would change.
        mix.requirements.air = {core::AirBasis::none, 0};
        const auto [small, large] = two_of(9.525, 75, "size, mm");
        mix.coarse.front().material.edit().aggregate.nominal_max_size_mm = small;
        const core::Proportions fine = solved(mix);
        mix.coarse.front().material.edit().aggregate.nominal_max_size_mm = large;
        const core::Proportions coarse = solved(mix);
        demand_at_most(*coarse.selection.table_water_kg_m3, *fine.selection.table_water_kg_m3,
                       "table water");
        demand_at_most(coarse.selection.air_percent, fine.selection.air_percent, "entrapped air");
    });
}

TEST_CASE("finer sand never takes less coarse aggregate") {
    holds([] {
        core::Mix mix = without_selections();
        mix.fine.resize(1);
        mix.fine.front().percent = 100;
        const auto [fine, coarse] = two_of(2.3, 3.1, "fineness modulus");
        mix.fine.front().material.edit().aggregate.fineness_modulus = fine;
        const core::Proportions with_fine = solved(mix);
        mix.fine.front().material.edit().aggregate.fineness_modulus = coarse;
        const core::Proportions with_coarse = solved(mix);
        demand_at_most(*with_coarse.selection.coarse_volume, *with_fine.selection.coarse_volume,
                       "coarse volume");
        // ACI 211.1-91 Table 6.3.6: 0.01 for each 0.1 of the modulus.
        demand_same(*with_fine.selection.coarse_volume - *with_coarse.selection.coarse_volume + 1,
                    (coarse - fine) / 10 + 1, 1e-9, "difference of the coarse volumes, and one");
    });
}

TEST_CASE("the fineness modulus of a blend is the mean of its sands by mass") {
    holds([] {
        core::Mix mix = without_selections();
        mix.selections.coarse_volume = 0.6; // the table is not asked: any modulus will do
        const core::Proportions proportions = solved(mix);
        double mean = 0;
        for (const core::Share& sand : mix.fine) {
            mean += sand.percent / 100 * *sand.material->aggregate.fineness_modulus;
        }
        demand_same(*proportions.selection.fineness_modulus, mean, 1e-12, "modulus of the blend");
    });
}

TEST_CASE("more air leaves less room for aggregate and changes nothing else of the paste") {
    holds([] {
        core::Mix mix = without_selections();
        mix.selections.w_cm = between(0.35, 0.6, "w/cm");
        mix.selections.water_kg_m3 = between(130, 190, "water");
        const auto [low, high] = two_of(0.5, 9, "air");
        mix.selections.air_percent = low;
        const core::Proportions little = solved(mix);
        mix.selections.air_percent = high;
        const core::Proportions much = solved(mix);
        demand_at_most(kg_m3_of(much, core::Role::fine), kg_m3_of(little, core::Role::fine),
                       "fine aggregate");
        demand_same(much.selection.water_kg_m3, little.selection.water_kg_m3, 1e-12, "water");
        demand_same(much.selection.binder_kg_m3, little.selection.binder_kg_m3, 1e-12, "binder");
    });
}

TEST_CASE("a higher least binder never raises w/cm and never changes the water") {
    holds([] {
        core::Mix mix = any_mix();
        mix.selections.binder_kg_m3 = std::nullopt;
        const auto [low, high] = two_of(150, 500, "least binder, kg/m3");
        mix.requirements.minimum_binder_kg_m3 = low;
        const core::Proportions less = solved(mix);
        mix.requirements.minimum_binder_kg_m3 = high;
        const core::Proportions more = solved(mix);
        demand_at_most(more.selection.w_cm, less.selection.w_cm, "w/cm");
        demand_at_most(less.selection.binder_kg_m3, more.selection.binder_kg_m3, "binder");
        demand_at_most(high, more.selection.binder_kg_m3, "least binder");
        demand_same(more.selection.water_kg_m3, less.selection.water_kg_m3, 1e-12, "water");
        const bool raised = more.selection.binder_kg_m3 > less.selection.binder_kg_m3 * (1 + 1e-6);
        const bool governs = more.selection.w_cm_governed_by == core::Governor::minimum_binder;
        RC_ASSERT((!raised || governs));
        RC_ASSERT((!governs || more.selection.binder_kg_m3 == high));
    });
}

TEST_CASE("without selections the ratio is the lower of strength and exposure or the binder's") {
    holds([] {
        core::Mix mix = without_selections();
        const core::Proportions proportions = solved(mix);
        const core::Selection& selection = proportions.selection;
        const double asked =
            std::min(*selection.w_cm_by_strength, selection.w_cm_by_exposure.value_or(1));
        demand_at_most(selection.w_cm, asked, "w/cm");
        switch (selection.w_cm_governed_by) {
        case core::Governor::strength:
            demand_same(selection.w_cm, *selection.w_cm_by_strength, 1e-12, "by strength");
            break;
        case core::Governor::exposure: // on a tie exposure governs
            demand_same(selection.w_cm, *selection.w_cm_by_exposure, 1e-12, "by exposure");
            break;
        case core::Governor::minimum_binder:
            demand_same(selection.binder_kg_m3, *mix.requirements.minimum_binder_kg_m3, 1e-12,
                        "binder");
            break;
        case core::Governor::given:
            RC_FAIL("nothing was given");
        }
    });
}
