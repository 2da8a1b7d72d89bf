// Laws of trial batches: a perfect trial is its own next one, and what a change of it does.

#include <boardmark/core/strength/expected_strength.hpp>

#include "laws/mixes.hpp"
#include "trial_support.hpp"

using namespace boardmark;
using namespace boardmark::test;
using core::Role;

namespace {

/// A mix of which a batch can be weighed, with that batch.
struct Weighed {
    core::Mix mix;
    core::Proportions designed;
    core::Batch batch;
};

void wet(std::vector<core::Share>& shares) {
    for (core::Share& share : shares) {
        share.material.edit().aggregate.moisture_percent = between(0, 6, "moisture, %");
    }
}

Weighed any_batch() {
    core::Mix mix = any_mix();
    wet(mix.coarse);
    wet(mix.fine);
    const core::Proportions designed = solved(mix);
    try {
        return {mix, designed,
                boardmark::test::made(core::batch(designed, {between(0.02, 0.5, "volume, m3"), {}},
                                                  tables_of(mix.system).water_density_kg_m3))};
    } catch (const core::Unresolved&) {
        RC_DISCARD("too wet");
    }
}

/// A trial of exactly that batch, with the density that its volume asks and every test on target.
core::Trial perfect(const Weighed& weighed) {
    core::Trial trial{
        .mix = entered(weighed.mix),
        .water = {},
        .batched = {},
        .tests = {.density = core::Reading{weighed.batch.mass_kg / weighed.batch.volume_m3},
                  .slump = {{0, weighed.designed.selection.slump_mm}},
                  .air_percent = weighed.designed.selection.air_percent},
        .intended_volume_m3 = weighed.batch.volume_m3};
    for (const core::BatchItem& item : weighed.batch.items) {
        if (item.role == Role::water) {
            trial.water.kg = core::Reading{item.kg};
            continue;
        }
        trial.batched.push_back(
            {*ingredient(weighed.designed, item.name).material, {core::Reading{item.kg}, {}}});
    }
    return trial;
}

/// The same trial with more water at the same air: it yields by that much more.
core::Trial watered(core::Trial trial, const Weighed& weighed, double water_kg) {
    const double density_kg_m3 = tables_of(weighed.mix.system).water_density_kg_m3;
    const double air = weighed.designed.selection.air_percent / 100;
    const double volume_m3 = weighed.batch.volume_m3 + water_kg / density_kg_m3 / (1 - air);
    trial.water.kg->value += water_kg;
    trial.tests.density = core::Reading{(weighed.batch.mass_kg + water_kg) / volume_m3};
    return trial;
}

} // namespace

TEST_CASE("a batch that is exactly the design yields its volume at its air") {
    holds([] {
        const Weighed weighed = any_batch();
        const Tried trial = tried(perfect(weighed));
        demand_same(trial.yield.relative_yield, 1, 1e-9, "relative yield");
        demand_same(trial.yield.found.totals.w_cm, weighed.designed.totals.w_cm, 1e-9, "w/cm");
        demand_same(trial.yield.found.totals.binder_kg_m3, weighed.designed.totals.binder_kg_m3,
                    1e-9, "cementitious material");
        RC_ASSERT(std::abs(*trial.yield.gravimetric_air_percent -
                           weighed.designed.selection.air_percent) < 1e-6);
    });
}

TEST_CASE("the next trial of a perfect trial is itself") {
    holds([] {
        const Weighed weighed = any_batch();
        // Where the mix file itself falls below its minimum, the next trial mends that.
        RC_PRE(weighed.designed.selection.binder_kg_m3 >=
               weighed.mix.requirements.minimum_binder_kg_m3.value_or(0));
        const core::NextTrial next = tried(perfect(weighed)).next();
        for (const core::Ingredient& row : weighed.designed.ingredients) {
            const std::string name{row.name};
            demand_same(ingredient(next.proportions, name).kg_m3, row.kg_m3, 1e-7, name);
        }
        for (const core::BatchItem& item : weighed.batch.items) {
            const auto same =
                std::ranges::find(next.batch.items, item.name, &core::BatchItem::name);
            RC_ASSERT(same != next.batch.items.end());
            RC_ASSERT(std::abs(same->kg - item.kg) < 1e-6 * weighed.batch.mass_kg);
        }
    });
}

TEST_CASE("water added to a trial raises its yield and lowers its strength") {
    holds([] {
        const Weighed weighed = any_batch();
        const core::Trial exact_trial = perfect(weighed);
        const Tried less = tried(exact_trial);
        const Tried more = tried(
            watered(exact_trial, weighed, between(0.001, 0.05, "water") * weighed.batch.mass_kg));
        RC_ASSERT(more.yield.relative_yield > less.yield.relative_yield);
        RC_ASSERT(more.yield.found.totals.w_cm > less.yield.found.totals.w_cm);
        RC_ASSERT(more.yield.found.totals.binder_kg_m3 < less.yield.found.totals.binder_kg_m3);
        const auto strength = [&](const Tried& trial) {
            return core::expected_strength(weighed.mix.requirements, trial.yield.found,
                                           trial.tables);
        };
        const auto before = strength(less);
        const auto after = strength(more);
        RC_ASSERT((!before || !after || after->mpa < before->mpa));
        RC_ASSERT(std::abs(*more.yield.gravimetric_air_percent - more.yield.air_percent) < 1e-6);
    });
}

TEST_CASE("the next trial keeps the ratio and fills its volume, whatever was found") {
    holds(
        [] {
            const Weighed weighed = any_batch();
            core::Trial trial = perfect(weighed);
            trial.tests.slump = {{0, between(20, 220, "slump, mm")}};
            trial.tests.air_percent = between(0.5, 9, "air, %");
            const Tried made = tried(trial);
            std::optional<core::NextTrial> next;
            try {
                next = made.next();
            } catch (const core::Unresolved&) {
                RC_DISCARD("no next mix");
            }
            const core::Totals& totals = next->proportions.totals;
            demand_at_most(totals.w_cm, weighed.designed.selection.w_cm, "w/cm");
            demand_same(totals.volume_m3.value(), 1, 1e-9, "volume");
            demand_same(next->proportions.selection.air_percent, made.yield.target.air_percent,
                        1e-12, "air");
            const bool dosed = next->lever == core::Lever::dose;
            if (dosed) {
                demand_at_most(totals.water_kg_m3, 1.015 * weighed.designed.totals.water_kg_m3,
                               "water");
            }
        },
        {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12});
}
