// Laws of the study of a high-range reducer.

#include <boardmark/core/study/comparison.hpp>

#include "laws/mixes.hpp"
#include "made.hpp"

using namespace boardmark;
using namespace boardmark::test;

namespace {

/// A mix with one high-range reducer that works on the water, and its study; all four made.
struct Studied {
    core::Mix mix;
    std::vector<core::ComparedMix> columns;

    const core::Totals& totals(std::size_t column) const {
        return columns[column].proportions->totals;
    }
};

void set_reduction(core::Mix& mix, double percent) {
    std::erase_if(mix.admixtures, [](const core::Dosage& dosage) {
        return dosage.material->kind == core::Kind::high_range_water_reducer;
    });
    core::Material reducer{.name = "superplasticizer",
                           .kind = core::Kind::high_range_water_reducer};
    const core::Dose dose{between(0.1, 1.5, "dose, %"), core::DoseBasis::percent};
    reducer.admixture.water_reduction = {{dose, percent}};
    mix.admixtures.push_back({reducer, dose});
}

Studied studied(double percent) {
    core::Mix mix = any_mix();
    mix.requirements.slump_before_reducer_mm = std::nullopt;
    mix.requirements.minimum_binder_kg_m3 = std::nullopt;
    set_reduction(mix, percent);
    try {
        const auto columns =
            boardmark::test::made(core::reducer_study(entered(mix), tables_of(mix.system)));
        for (const core::ComparedMix& column : columns) {
            if (!column.proportions) {
                RC_DISCARD("a column cannot be made");
            }
        }
        return {mix, columns};
    } catch (const core::Unresolved&) {
        RC_DISCARD("no mix");
    }
}

} // namespace

TEST_CASE("each use of a reducer keeps what it should and changes what it should") {
    holds([] {
        const double percent = between(1, 30, "reduction, %");
        const Studied study = studied(percent);
        const core::Totals& base = study.totals(0);
        const core::Totals& less_water = study.totals(1);
        const core::Totals& less_binder = study.totals(2);
        const core::Totals& more_flow = study.totals(3);
        const double remaining = 1 - percent / 100;
        demand_same(less_water.binder_kg_m3, base.binder_kg_m3, 1e-9, "binder of less water");
        demand_same(less_water.water_kg_m3, base.water_kg_m3 * remaining, 1e-9, "less water");
        RC_ASSERT(less_water.w_cm < base.w_cm);
        demand_same(less_binder.w_cm, base.w_cm, 1e-9, "w/cm of less binder");
        demand_same(less_binder.binder_kg_m3, base.binder_kg_m3 * remaining, 1e-9, "less binder");
        demand_same(more_flow.water_kg_m3, base.water_kg_m3, 1e-9, "water of more flow");
        demand_same(more_flow.binder_kg_m3, base.binder_kg_m3, 1e-9, "binder of more flow");
        const auto& strengths = study.columns;
        if (strengths[0].strength && strengths[1].strength) {
            RC_ASSERT(strengths[1].strength->mpa > strengths[0].strength->mpa);
        }
        RC_ASSERT((!study.columns[3].slump.mm ||
                   *study.columns[3].slump.mm > *study.columns[0].slump.mm));
    });
}

TEST_CASE("a reducer that reduces nothing buys nothing") {
    holds([] {
        const Studied study = studied(0);
        for (const std::size_t column : {1U, 2U, 3U}) {
            demand_same(study.totals(column).water_kg_m3, study.totals(0).water_kg_m3, 1e-9,
                        "water");
            demand_same(study.totals(column).binder_kg_m3, study.totals(0).binder_kg_m3, 1e-9,
                        "binder");
            RC_ASSERT(study.columns[column].slump.mm == study.columns[0].slump.mm);
        }
    });
}

TEST_CASE("the water of the mix as written is that of less binder") {
    holds([] {
        const Studied study = studied(between(1, 30, "reduction, %"));
        const bool by_ratio = !study.mix.selections.binder_kg_m3;
        RC_PRE(by_ratio);
        const core::Proportions written = boardmark::test::made(
            core::proportion(entered(study.mix), tables_of(study.mix.system)));
        demand_same(study.totals(2).water_kg_m3, written.totals.water_kg_m3, 1e-9, "water");
        demand_same(study.totals(2).binder_kg_m3, written.totals.binder_kg_m3, 1e-9, "binder");
    });
}
