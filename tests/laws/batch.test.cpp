// Laws of batching: what the scale shows, whatever the volume and the weather.

#include "laws/mixes.hpp"
#include "made.hpp"

using namespace boardmark;
using namespace boardmark::test;
using core::Role;

namespace {

core::Batch batch_of(const core::Proportions& proportions, const core::BatchOrder& order,
                     core::UnitSystem system) {
    return boardmark::test::made(
        core::batch(proportions, order, tables_of(system).water_density_kg_m3));
}

/// A batch; a case in which the aggregates bring too much water is not counted.
core::Batch batched(const core::Proportions& proportions, const core::BatchOrder& order,
                    core::UnitSystem system) {
    try {
        return batch_of(proportions, order, system);
    } catch (const core::Unresolved&) {
        RC_DISCARD("too wet");
    }
}

/// All water of a batch that is free to react: added, free on the aggregates, in the admixtures.
double mixing_water_kg(const core::Batch& batch, const core::Proportions& proportions) {
    double water_kg = batch.items.front().kg;
    for (const core::BatchItem& item : batch.items) {
        water_kg += item.free_water_kg.value_or(0);
    }
    for (const core::Ingredient& row : proportions.ingredients) {
        water_kg += row.liquid_kg_m3 * batch.volume_m3;
    }
    return water_kg;
}

double binder_kg(const core::Batch& batch) {
    double sum = 0;
    for (const core::BatchItem& item : batch.items) {
        sum += item.role == Role::binder ? item.kg : 0;
    }
    return sum;
}

void set_moisture(core::Proportions& proportions, const std::string& name) {
    for (core::Ingredient& row : proportions.ingredients) {
        if (row.role == Role::coarse || row.role == Role::fine) {
            row.edit_material().aggregate.moisture_percent = between(0, 8, name);
        }
    }
}

} // namespace

TEST_CASE("a batch of twice the volume weighs twice as much of everything") {
    holds([] {
        const core::Mix mix = any_mix();
        const core::Proportions proportions = solved(mix);
        const double volume_m3 = between(0.01, 5, "volume, m3");
        const double times = between(0.1, 30, "times");
        const core::Batch one = batched(proportions, {volume_m3, {}}, mix.system);
        const core::Batch many = batched(proportions, {volume_m3 * times, {}}, mix.system);
        RC_ASSERT(one.items.size() == many.items.size());
        for (std::size_t i = 0; i < one.items.size(); ++i) {
            RC_ASSERT(one.items[i].name == many.items[i].name);
            demand_same(one.items[i].kg * times, many.items[i].kg, 1e-9, one.items[i].name);
            RC_ASSERT(one.items[i].litres.has_value() == many.items[i].litres.has_value());
            if (one.items[i].litres) {
                demand_same(*one.items[i].litres * times, *many.items[i].litres, 1e-9, "litres");
            }
        }
        demand_same(one.mass_kg * times, many.mass_kg, 1e-12, "mass of the batch");
        demand_same(one.w_cm, many.w_cm, 1e-12, "w/cm");
    });
}

TEST_CASE("a batch weighs what its volume of the mix weighs") {
    holds([] {
        const core::Mix mix = any_mix();
        const core::Proportions proportions = solved(mix);
        const double volume_m3 = between(0.01, 5, "volume, m3");
        const core::Batch batch = batched(proportions, {volume_m3, {}}, mix.system);
        demand_same(batch.mass_kg, *proportions.totals.fresh_density_kg_m3 * volume_m3, 1e-9,
                    "mass of the batch");
        demand_same(batch.w_cm, proportions.totals.w_cm, 1e-9, "w/cm");
        demand_same(batch.volume_m3, volume_m3, 1e-15, "volume");
    });
}

TEST_CASE("moisture moves water from the mixer to the aggregate and changes nothing else") {
    holds([] {
        const core::Mix mix = any_mix();
        core::Proportions proportions = solved(mix);
        const double volume_m3 = between(0.01, 5, "volume, m3");
        const core::Batch before = batched(proportions, {volume_m3, {}}, mix.system);
        set_moisture(proportions, "moisture on another day");
        const core::Batch after = batched(proportions, {volume_m3, {}}, mix.system);
        demand_same(before.mass_kg, after.mass_kg, 1e-9, "mass of the batch");
        demand_same(before.w_cm, after.w_cm, 1e-9, "w/cm");
        demand_same(binder_kg(before), binder_kg(after), 1e-12, "binder");
        demand_same(mixing_water_kg(before, proportions), mixing_water_kg(after, proportions), 1e-9,
                    "mixing water");
        demand_same(mixing_water_kg(after, proportions), proportions.totals.water_kg_m3 * volume_m3,
                    1e-9, "mixing water of the mix");
        for (std::size_t i = 0; i < after.items.size(); ++i) {
            const core::BatchItem& item = after.items[i];
            if (item.moisture_percent) {
                // Rule 9: aggregate at its moisture = dry × (1 + moisture)
                demand_same(before.items[i].kg / (1 + *before.items[i].moisture_percent / 100),
                            item.kg / (1 + *item.moisture_percent / 100), 1e-12, item.name);
            }
        }
    });
}

TEST_CASE("at the moisture of its absorption an aggregate carries no free water") {
    holds([] {
        const core::Mix mix = any_mix();
        core::Proportions proportions = solved(mix);
        for (core::Ingredient& row : proportions.ingredients) {
            if (row.role == Role::coarse || row.role == Role::fine) {
                core::AggregateFigures& figures = row.edit_material().aggregate;
                figures.moisture_percent = figures.absorption_percent;
            }
        }
        const core::Batch batch = batch_of(proportions, {1, {}}, mix.system);
        demand_same(batch.free_water_kg + 1, 1, 1e-9, "free water, and one");
        for (const core::BatchItem& item : batch.items) {
            const auto row =
                std::ranges::find(proportions.ingredients, item.name, &core::Ingredient::name);
            demand_same(item.kg, row->kg_m3, 1e-9, item.name);
        }
    });
}

TEST_CASE("a scale moves each item by half a step at most and w/cm is of the rounded weights") {
    holds([] {
        const core::Mix mix = any_mix();
        const core::Proportions proportions = solved(mix);
        const double volume_m3 = between(0.05, 5, "volume, m3");
        const double step_kg = one_of<double>({0.001, 0.01, 0.1, 0.0453592, 0.5, 1}, "step, kg");
        const core::Batch exact = batched(proportions, {volume_m3, {}}, mix.system);
        const core::Batch rounded = batched(proportions, {volume_m3, step_kg}, mix.system);
        double mass_kg = 0;
        for (std::size_t i = 0; i < exact.items.size(); ++i) {
            const core::BatchItem& item = rounded.items[i];
            demand_at_most(std::abs(item.kg - exact.items[i].kg), step_kg / 2, item.name);
            mass_kg += item.kg;
            const bool weighed = item.role != Role::admixture;
            if (weighed) {
                const double steps = item.kg / step_kg;
                demand_at_most(std::abs(steps - std::round(steps)), 1e-6,
                               item.name + " in steps of the scale");
            }
        }
        demand_same(rounded.mass_kg, mass_kg, 1e-12, "mass of the batch");
        demand_same(rounded.w_cm, mixing_water_kg(rounded, proportions) / binder_kg(rounded), 1e-9,
                    "w/cm");
    });
}
