#pragma once

// What the tests of published values share: results in the units and the words of a print.
//
// The tolerance of a row is half a unit of the last printed digit. Where it is wider, a comment
// says which rounding of the print in between makes it so. A cell that is only looked up must come
// back exactly; `exact` leaves room for the conversion of units and no more.

#include <boardmark/core/basis/unresolved.hpp>
#include <boardmark/core/batch/batch.hpp>

#include "support.hpp"

#include <cmath>
#include <map>
#include <numeric>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace boardmark::test {

constexpr double exact = 1e-6;

/// The published tables of a system of units, built once.
inline const core::Tables& tables_in(core::UnitSystem system) {
    static const core::Tables us = reference::tables(core::UnitSystem::us);
    static const core::Tables si = reference::tables(core::UnitSystem::si);
    return system == core::UnitSystem::us ? us : si;
}

inline const char* reporting(core::UnitSystem system) {
    return system == core::UnitSystem::us ? "us" : "si";
}

/// Why no mix follows from a calculation, or nothing where one does.
template <class Calculation>
std::optional<core::Unresolved> refusal(Calculation calculation) {
    try {
        calculation();
    } catch (const core::Unresolved& unresolved) {
        return unresolved;
    }
    return std::nullopt;
}

/// Whether one of the ways out of a refusal mentions a word.
inline bool mentions(const core::Unresolved& unresolved, const std::string& word) {
    return std::ranges::any_of(unresolved.ways_out, [&](const core::Phrase& way) {
        return way.text.find(word) != std::string::npos;
    });
}

inline bool is_marked(const core::Step& step, core::Mark mark) {
    return std::ranges::count(step.marks, mark) > 0;
}

/// A ratio with its further digits cut off instead of rounded, as several handbooks print w/c.
inline double cut_to_hundredths(double ratio) {
    return std::floor(100 * ratio + exact) / 100;
}

/// An absolute volume of 1 m3 as the print gives it: m3 of 1 m3, or ft3 of 1 yd3.
inline double volume_in(double m3_m3, const std::string& unit) {
    return unit == "ft3" ? 27 * m3_m3 : m3_m3;
}

inline double volume_of_role(const core::Proportions& proportions, core::Role role) {
    const auto rows = core::of_role(proportions, role);
    return std::accumulate(
        rows.begin(), rows.end(), 0.0,
        [](double sum, const core::Ingredient* row) { return sum + row->volume_m3.value_or(NAN); });
}

/// Values of a result that are no ingredient, by the words that the rows below use. Plain numbers
/// and percentages stand under their own name, the others in the library's units.
inline double selected(const Solved& mix, const std::string& what) {
    const core::Proportions& proportions = mix.proportions;
    const core::Selection& selection = proportions.selection;
    const double all_volume_m3 = proportions.totals.volume_m3.value_or(NAN);
    const double fine_m3 = volume_of_role(proportions, core::Role::fine);
    const double coarse_m3 = volume_of_role(proportions, core::Role::coarse);
    const core::Step* by_mass = mix.step("fine_aggregate_by_mass");
    const std::map<std::string, double> values{
        {"air", selection.air_percent},
        {"average strength", selection.required_average_strength_mpa},
        {"bulk volume", selection.coarse_volume.value_or(NAN)},
        {"fineness modulus", selection.fineness_modulus.value_or(NAN)},
        {"w/cm", proportions.totals.w_cm},
        {"w/cm by strength", selection.w_cm_by_strength.value_or(NAN)},
        {"w/cm by strength, cut", cut_to_hundredths(selection.w_cm_by_strength.value_or(NAN))},
        {"mixing water", proportions.totals.water_kg_m3},
        {"binder", proportions.totals.binder_kg_m3},
        {"density", proportions.totals.fresh_density_kg_m3.value_or(NAN)},
        {"fine aggregate by mass", by_mass ? by_mass->value.value_or(NAN) : NAN},
        {"volume of all but sand", all_volume_m3 - fine_m3},
        {"volume of aggregate", coarse_m3 + fine_m3},
        {"volume of all", all_volume_m3},
    };
    return values.at(what);
}

/// A figure of a result as the print states it: an ingredient's mass under its name ("stone"), its
/// oven-dry mass ("stone, dry"), its absolute volume ("stone, volume"), or a selected value.
inline double figure(const Solved& mix, const std::string& what, const std::string& unit) {
    const std::size_t comma = what.find(", ");
    const std::string name = what.substr(0, comma);
    const auto& rows = mix.proportions.ingredients;
    const bool is_ingredient = std::ranges::count(rows, name, &core::Ingredient::name) > 0;
    const std::string state = comma == std::string::npos ? "" : what.substr(comma + 2);
    if (is_ingredient && state == "volume") {
        return volume_in(mix.ingredient(name).volume_m3.value(), unit);
    }
    if (is_ingredient && state == "dry") {
        return in_unit(mix.ingredient(name).dry_kg_m3.value(), unit);
    }
    if (is_ingredient && name != "air") {
        return in_unit(mix.ingredient(name).kg_m3, unit);
    }
    const double value = selected(mix, what);
    const bool is_volume = what.starts_with("volume");
    return is_volume ? volume_in(value, unit) : unit.empty() ? value : in_unit(value, unit);
}

/// A mix text carried on to the batch of a volume.
inline core::Batch batch_of(const std::string& yaml, double volume_m3) {
    const Solved mix = solve(yaml, input::Purpose::batch);
    return boardmark::test::made(
        core::batch(mix.proportions, {.volume_m3 = volume_m3, .resolution_kg = std::nullopt},
                    mix.tables.water_density_kg_m3));
}

inline const core::BatchItem& item(const core::Batch& batch, const std::string& name) {
    const auto found = std::ranges::find(batch.items, name, &core::BatchItem::name);
    if (found == batch.items.end()) {
        throw std::runtime_error("the batch has no " + name);
    }
    return *found;
}

/// What a batch weighs or carries, by the words that the rows below use: an item under its name,
/// the free water on an aggregate ("free water on stone"), or on all of them ("free water").
inline double weighed(const core::Batch& batch, const std::string& what, const std::string& unit) {
    const std::string free = "free water";
    if (what == free) {
        return in_unit(batch.free_water_kg, unit);
    }
    if (what == "all") {
        return in_unit(batch.mass_kg, unit);
    }
    if (what.starts_with(free)) {
        return in_unit(item(batch, what.substr(free.size() + 4)).free_water_kg.value(), unit);
    }
    return in_unit(item(batch, what).kg, unit);
}

} // namespace boardmark::test
