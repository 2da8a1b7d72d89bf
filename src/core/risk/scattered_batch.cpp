#include "scattered_batch.hpp"

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/strength/expected_strength.hpp>

#include "../method/air_content.hpp"

#include <algorithm>
#include <limits>

namespace boardmark::core {
namespace {

constexpr double nothing = std::numeric_limits<double>::quiet_NaN();

bool is_weighed_wet(const Ingredient& one) {
    return one.role == Role::coarse || one.role == Role::fine;
}

double item_kg(const Batch& batch, std::string_view name) {
    const auto item = std::ranges::find(batch.items, name, &BatchItem::name);
    return item == batch.items.end() ? 0 : item->kg;
}

/// A share that is off by percent; nothing is weighed in less than nothing.
double scaled(double value, double off_percent) {
    return value * std::max(1 + off_percent / 100, 0.0);
}

} // namespace

ScatteredBatch::ScatteredBatch(CompleteRequirements requirements, const Proportions& designed,
                               const Batch& batch, const ScatterPlan& plan, const Tables& tables)
    : requirements_(requirements)
    , plan_{plan}
    , tables_{tables}
    , designed_air_percent_{designed.selection.air_percent}
    , volume_is_known_{designed.totals.volume_m3.has_value()}
    , found_{designed} {
    found_.is_load = true;
    found_.worksheet = {};
    found_.worksheet.is_told = false;
    for (const Ingredient& one : found_.ingredients) {
        Planned planned{.weighed_kg = item_kg(batch, one.name),
                        .moisture_percent = 0,
                        .absorption_percent = 0,
                        .relative_density = one.relative_density,
                        .is_oven_dry = false,
                        .liquid_part = one.kg_m3 > 0 ? one.liquid_kg_m3 / one.kg_m3 : 0,
                        .reduction = {}};
        if (is_weighed_wet(one)) {
            const AggregateFigures& figures = one.material->aggregate;
            planned.moisture_percent = *figures.moisture_percent;
            planned.absorption_percent = *figures.absorption_percent;
            planned.is_oven_dry = figures.relative_density_is_oven_dry;
            if (planned.is_oven_dry && planned.relative_density) {
                *planned.relative_density /= 1 + planned.absorption_percent / 100;
            }
        }
        if (saves_water(one, requirements_)) {
            planned.reduction.emplace(one.material, 100 * one.kg_m3 / designed.totals.binder_kg_m3,
                                      tables);
        }
        planned_.push_back(std::move(planned));
    }
}

/// By how much a figure is off in this batch.
double ScatteredBatch::off(DimensionIndex dimension) const {
    return normals_[dimension] * plan_.dimensions[dimension].deviation;
}

double ScatteredBatch::weighed_kg(std::size_t ingredient) const {
    return scaled(planned_[ingredient].weighed_kg, off(plan_.ingredients[ingredient].mass));
}

void ScatteredBatch::set_mass(Ingredient& ingredient, double kg,
                              std::optional<double> relative_density) const {
    ingredient.kg_m3 = kg;
    if (relative_density) {
        ingredient.relative_density = relative_density;
        ingredient.volume_m3 = kg / (*relative_density * tables_.water_density_kg_m3);
    }
}

/// The mass as weighed is what the scale shows; what of it is water, nobody knows exactly.
void ScatteredBatch::weigh_aggregate(std::size_t ingredient) {
    const Planned& planned = planned_[ingredient];
    const ScatteredIngredient& scattered = plan_.ingredients[ingredient];
    const double moisture_percent =
        std::max(planned.moisture_percent + off(scattered.moisture), 0.0);
    const double absorption_percent =
        std::max(planned.absorption_percent + off(scattered.absorption), 0.0);
    const double wet_kg = weighed_kg(ingredient);
    const double dry_kg = wet_kg / (1 + moisture_percent / 100);
    const double saturated_kg = dry_kg * (1 + absorption_percent / 100);
    free_water_kg_ += wet_kg - saturated_kg;
    std::optional<double> relative_density = planned.relative_density;
    if (relative_density) {
        *relative_density += off(scattered.relative_density);
        *relative_density *= planned.is_oven_dry ? 1 + absorption_percent / 100 : 1;
    }
    Ingredient& aggregate = found_.ingredients[ingredient];
    set_mass(aggregate, saturated_kg, relative_density);
    aggregate.dry_kg_m3 = dry_kg;
}

void ScatteredBatch::weigh_other(std::size_t ingredient) {
    const Planned& planned = planned_[ingredient];
    Ingredient& other = found_.ingredients[ingredient];
    std::optional<double> relative_density = planned.relative_density;
    if (relative_density) {
        *relative_density += off(plan_.ingredients[ingredient].relative_density);
    }
    set_mass(other, weighed_kg(ingredient), relative_density);
    other.liquid_kg_m3 = other.kg_m3 * planned.liquid_part;
    if (other.dry_kg_m3) {
        other.dry_kg_m3 = other.kg_m3;
    }
}

/// Everything in the mixer, in kg of the batch.
void ScatteredBatch::weigh() {
    free_water_kg_ = 0;
    for (std::size_t i = 0; i < found_.ingredients.size(); ++i) {
        if (is_weighed_wet(found_.ingredients[i])) {
            weigh_aggregate(i);
        } else {
            weigh_other(i);
        }
    }
    for (Ingredient& one : found_.ingredients) {
        if (one.role == Role::water) {
            one.kg_m3 += free_water_kg_;
            one.volume_m3 = one.kg_m3 / tables_.water_density_kg_m3;
        }
    }
}

/// What the batch fills with its air. Without densities it counts as what was ordered.
double ScatteredBatch::volume_m3() const {
    if (!volume_is_known_) {
        return 1;
    }
    double without_air_m3 = 0;
    for (const Ingredient& one : found_.ingredients) {
        without_air_m3 += one.role == Role::air ? 0 : *one.volume_m3;
    }
    return without_air_m3 / (1 - air_percent_ / 100);
}

void ScatteredBatch::per_m3(double volume_m3) {
    for (Ingredient& one : found_.ingredients) {
        one.kg_m3 /= volume_m3;
        one.liquid_kg_m3 /= volume_m3;
        for (auto* amount : {&one.dry_kg_m3, &one.volume_m3}) {
            if (*amount) {
                **amount /= volume_m3;
            }
        }
        if (one.role == Role::air) {
            one.volume_m3 = air_percent_ / 100;
        }
    }
    found_.totals = total(found_.ingredients);
}

void ScatteredBatch::update_selection() {
    Selection& selection = found_.selection;
    selection.air_percent = air_percent_;
    selection.air_at_placing_percent =
        at_placing_percent(air_percent_, selection.air_entrained, requirements_);
    selection.w_cm = found_.totals.w_cm;
    selection.water_kg_m3 = found_.totals.water_kg_m3;
    selection.binder_kg_m3 = found_.totals.binder_kg_m3;
}

/// The part of the water that the same slump needs with the reducers, at the doses of this batch.
double ScatteredBatch::left_by_reducers() const {
    double left = 1;
    for (std::size_t i = 0; i < planned_.size(); ++i) {
        if (const auto& curve = planned_[i].reduction) {
            const double dose_percent =
                100 * found_.ingredients[i].kg_m3 / found_.totals.binder_kg_m3;
            constexpr double most_percent = 90; // the rest of the water stays whatever is stated
            const double percent =
                curve->percent_at(dose_percent) + off(plan_.ingredients[i].water_reduction);
            left *= 1 - std::clamp(percent, 0.0, most_percent) / 100;
        }
    }
    return left;
}

/// Beyond the ends of table and own data the strength at the nearest end is taken.
double ScatteredBatch::tested_mpa() const {
    auto strength = expected_strength(requirements_, found_, tables_);
    if (!strength) {
        strength = strength_bound(requirements_, found_, tables_);
    }
    if (!strength) {
        strength = strength_floor(requirements_, found_, tables_);
    }
    return strength ? std::max(strength->mpa + off(plan_.strength), 0.0) : nothing;
}

RiskFigures ScatteredBatch::make(std::span<const double> normals) {
    normals_ = normals;
    constexpr double most_air_percent = 50; // the concrete stays concrete whatever is stated
    air_percent_ = std::clamp(designed_air_percent_ + off(plan_.air), 0.0, most_air_percent);
    weigh();
    const double volume = volume_m3();
    per_m3(volume);
    update_selection();
    return {found_.totals.w_cm, found_.totals.water_kg_m3 / left_by_reducers(),
            volume_is_known_ ? volume : nothing, found_.selection.air_at_placing_percent,
            tested_mpa()};
}

} // namespace boardmark::core
