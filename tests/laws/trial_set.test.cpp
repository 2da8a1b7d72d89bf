// Laws of trial sets: one water, one air; what a set shows of a ratio is what the ratio alone
// gives.

#include <boardmark/core/trial/trial_set.hpp>

#include "laws/mixes.hpp"

using namespace boardmark;
using namespace boardmark::test;

namespace {

core::Mix free_mix() {
    core::Mix mix = any_mix();
    mix.selections.w_cm.reset();
    mix.selections.binder_kg_m3.reset();
    mix.requirements.minimum_binder_kg_m3.reset();
    return mix;
}

} // namespace

TEST_CASE("a mix of a set is the mix of its ratio alone") {
    holds([] {
        core::Mix mix = free_mix();
        const double low = between(0.3, 0.45, "lower w/cm");
        const double high = low + between(0.01, 0.2, "step");
        const auto set =
            core::trial_set(entered(mix), {low, high}, std::nullopt, tables_of(mix.system));
        for (const core::TrialMix& trial : set.mixes) {
            mix.selections.w_cm = trial.w_cm;
            const auto alone = attempt(mix);
            RC_ASSERT(alone.has_value() == (trial.solved() != nullptr));
            if (alone) {
                demand_same_amounts(*alone, trial.solved()->proportions, 1e-12);
            }
        }
    });
}

TEST_CASE("mixes of a set differ in binder and sand, not in water, air or stone") {
    holds([] {
        const core::Mix mix = free_mix();
        RC_PRE(!mix.selections.fine_share_percent); // it shares out what the binder leaves
        const double low = between(0.3, 0.45, "lower w/cm");
        const auto set = core::trial_set(entered(mix), {low, low + between(0.01, 0.2, "step")},
                                         std::nullopt, tables_of(mix.system));
        RC_PRE(set.mixes[0].solved() && set.mixes[1].solved());
        const core::Proportions& rich = set.mixes[0].solved()->proportions;
        const core::Proportions& lean = set.mixes[1].solved()->proportions;
        demand_same(rich.totals.water_kg_m3, lean.totals.water_kg_m3, 1e-12, "mixing water");
        demand_same(rich.selection.air_percent, lean.selection.air_percent, 1e-12, "air");
        demand_same(kg_m3_of(rich, core::Role::coarse), kg_m3_of(lean, core::Role::coarse), 1e-12,
                    "stone");
        demand_at_most(lean.totals.binder_kg_m3, rich.totals.binder_kg_m3, "binder");
        demand_at_most(kg_m3_of(rich, core::Role::fine), kg_m3_of(lean, core::Role::fine), "sand");
    });
}
