// Laws of dividing a batch: charges, whole sacks, water kept back.

#include <boardmark/core/batch/charges.hpp>
#include <boardmark/core/batch/sacks.hpp>
#include <boardmark/core/batch/site_water.hpp>

#include "laws/mixes.hpp"
#include "made.hpp"

using namespace boardmark;
using namespace boardmark::test;
using core::Role;

namespace {

/// A batch; a case in which the aggregates bring too much water is not counted.
core::Batch batched(const core::Proportions& proportions, const core::BatchOrder& order,
                    core::UnitSystem system) {
    try {
        return boardmark::test::made(
            core::batch(proportions, order, tables_of(system).water_density_kg_m3));
    } catch (const core::Unresolved&) {
        RC_DISCARD("no batch");
    }
}

core::VesselSize any_mixer() {
    return {core::Vessel::mixer, between(0.02, 2, "mixer, m3")};
}

core::Sack sack_of_main(const core::Proportions& proportions) {
    std::string name;
    double most_kg_m3 = 0;
    for (const core::Ingredient* binder : core::of_role(proportions, Role::binder)) {
        if (binder->kg_m3 > most_kg_m3) {
            most_kg_m3 = binder->kg_m3;
            name = binder->name;
        }
    }
    return {name, one_of<double>({25, 40, 42.6376828, 50}, "sack, kg")};
}

core::HoldBack any_hold_back() {
    return {.percent = between(0, 100, "held back, %"), .kg = std::nullopt};
}

} // namespace

TEST_CASE("charges are equal, fit, make the order together and could not be fewer") {
    holds([] {
        const double volume_m3 = between(0.01, 15, "order, m3");
        const core::VesselSize mixer = any_mixer();
        const core::Charging charging = boardmark::test::made(core::charges_of(volume_m3, mixer));
        demand_same(charging.count * charging.each_m3, volume_m3, 1e-12, "order");
        demand_at_most(charging.each_m3, mixer.capacity_m3 * (1 + 1e-9), "charge");
        demand_at_most((charging.count - 1) * mixer.capacity_m3, volume_m3, "one charge less");
    });
}

TEST_CASE("the charges of a batch add up to the batch of the whole") {
    holds([] {
        const core::Mix mix = any_mix();
        const core::Proportions proportions = solved(mix);
        const double volume_m3 = between(0.05, 5, "order, m3");
        const core::Charging charging =
            boardmark::test::made(core::charges_of(volume_m3, any_mixer()));
        const core::Batch each = batched(proportions, {.volume_m3 = charging.each_m3}, mix.system);
        const core::Batch sum = core::sum_of(each, charging.count);
        const core::Batch whole = batched(proportions, {.volume_m3 = volume_m3}, mix.system);
        RC_ASSERT(sum.items.size() == whole.items.size());
        for (std::size_t i = 0; i < sum.items.size(); ++i) {
            demand_same(sum.items[i].kg, whole.items[i].kg, 1e-9, sum.items[i].name);
            demand_same(sum.items[i].litres.value_or(0), whole.items[i].litres.value_or(0), 1e-9,
                        sum.items[i].name + " in litres");
        }
        demand_same(sum.mass_kg, whole.mass_kg, 1e-9, "mass");
        demand_same(*sum.yield_m3, *whole.yield_m3, 1e-9, "yield");
        demand_same(sum.mixing_water_kg(), whole.mixing_water_kg(), 1e-9, "mixing water");
    });
}

TEST_CASE("exact weights fill the volume and rounded ones nearly do") {
    holds([] {
        const core::Mix mix = any_mix();
        const core::Proportions proportions = solved(mix);
        const double volume_m3 = between(0.2, 5, "order, m3");
        const core::Batch exact = batched(proportions, {.volume_m3 = volume_m3}, mix.system);
        demand_same(*exact.yield_m3, volume_m3, 1e-9, "yield");
        const double step_kg = between(0.01, 0.5, "step, kg");
        const core::Batch rounded =
            batched(proportions, {.volume_m3 = volume_m3, .resolution_kg = step_kg}, mix.system);
        // Half a step of each item; all are at least as dense as water and a tenth is air at most.
        const double most_m3 = double(rounded.items.size()) * step_kg / 2 / 995 / 0.8;
        demand_at_most(std::abs(*rounded.yield_m3 - volume_m3), most_m3,
                       "yield of rounded weights");
    });
}

TEST_CASE("a batch of whole sacks keeps the ratio and makes at least the order") {
    holds([] {
        const core::Mix mix = any_mix();
        const core::Proportions proportions = solved(mix);
        const core::Sack sack = sack_of_main(proportions);
        const double volume_m3 = between(0.05, 5, "order, m3");
        const core::Charging charging = boardmark::test::made(
            core::charges_of_whole_sacks(volume_m3, std::nullopt, proportions, sack));
        demand_at_most(volume_m3, charging.each_m3 * (1 + 1e-9), "order");
        core::BatchOrder order{.volume_m3 = charging.each_m3};
        order.sacks = {sack};
        const core::Batch batch = batched(proportions, order, mix.system);
        const auto item = std::ranges::find(batch.items, sack.material, &core::BatchItem::name);
        demand_same(*item->sacks, std::round(*item->sacks), 1e-9, "whole sacks");
        demand_same(batch.w_cm, proportions.totals.w_cm, 1e-9, "w/cm");
        order.volume_m3 = volume_m3;
        const core::SackStudy study = boardmark::test::made(
            core::study_sacks(proportions, order, tables_of(mix.system).water_density_kg_m3));
        const double whole = std::max(std::round(study.exact_sacks), 1.0);
        // More binder than ordered lowers the ratio, less raises it.
        RC_ASSERT((whole > study.exact_sacks) == (study.rounded.w_cm < proportions.totals.w_cm));
    });
}

TEST_CASE("water at the mixer and water held back are the water of the batch") {
    holds([] {
        const core::Mix mix = any_mix();
        const core::Proportions proportions = solved(mix);
        const core::Batch batch = batched(proportions, {.volume_m3 = 1}, mix.system);
        const core::SiteWater water = boardmark::test::made(
            core::site_water(proportions, batch, any_hold_back(), tables_of(mix.system)));
        demand_same(water.at_mixer.kg + water.held_back.kg, batch.items.front().kg, 1e-12, "water");
        RC_ASSERT((water.at_mixer.kg >= 0 && water.held_back.kg >= 0));
    });
}

TEST_CASE("after what may be added the ratio is the limit and not more") {
    holds([] {
        const core::Mix mix = any_mix();
        const core::Proportions proportions = solved(mix);
        const core::Batch batch = batched(proportions,
                                          {.volume_m3 = between(0.05, 5, "volume, m3"),
                                           .resolution_kg = between(0.01, 0.3, "step")},
                                          mix.system);
        const core::SiteWater water = boardmark::test::made(
            core::site_water(proportions, batch, any_hold_back(), tables_of(mix.system)));
        const double all_kg = batch.mixing_water_kg() - water.held_back.kg + water.may_be_added.kg;
        const double w_cm = all_kg / batch.binder_kg;
        demand_same(water.w_cm_then, w_cm, 1e-12, "w/cm then");
        RC_ASSERT(water.may_be_added.kg >= 0);
        if (water.limited_by == core::WaterLimit::reducer) {
            demand_same(water.may_be_added.kg, water.held_back.kg, 1e-12, "held back only");
            demand_at_most(w_cm, water.w_cm_limit, "w/cm below the limit");
        } else if (water.may_be_added.kg > 0) {
            demand_same(w_cm, water.w_cm_limit, 1e-9, "w/cm at the limit");
        } else {
            demand_at_most(water.w_cm_limit, w_cm * (1 + 1e-6), "no room");
        }
    });
}
