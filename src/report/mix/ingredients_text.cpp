#include "ingredients_text.hpp"

#include <boardmark/core/mix/vocabulary.hpp>
#include <boardmark/text/utf8.hpp>
#include <boardmark/units/unit.hpp>

#include "../writing/grid.hpp"
#include "../writing/names.hpp"
#include "../writing/quantity_format.hpp"

#include <fmt/format.h>

namespace boardmark::report {
namespace {

using core::UnitSystem;

/// What is measured by volume on site: water in gallons or litres, admixtures in fluid ounces or
/// litres.
std::string site_measure(const core::Ingredient& ingredient, UnitSystem system) {
    const bool us = system == UnitSystem::us;
    const double volume_m3 = ingredient.volume_m3.value_or(0);
    // Of 1 yd3 in the US, of 1 m3 in SI.
    const double of_batch_m3 = us ? units::unit("yd3").factor : 1;
    const auto in_unit = [&](std::string_view unit, int decimals) {
        return fixed(units::unit(unit).from_inside(volume_m3 * of_batch_m3), decimals) + " " +
               std::string{unit};
    };
    switch (ingredient.role) {
    case core::Role::water:
        return us ? in_unit("gal", 1) : in_unit("L", 0);
    case core::Role::admixture:
        if (ingredient.by_trial) {
            return "by trial";
        }
        return ingredient.material->kind == core::Kind::pigment ? ""
               : us                                             ? in_unit("fl oz", 1)
                                                                : in_unit("L", 2);
    case core::Role::air:
        return fixed(100 * volume_m3, 1) + " %";
    default:
        return "";
    }
}

} // namespace

Flow ingredients_text(const core::Proportions& proportions, UnitSystem system) {
    const bool us = system == UnitSystem::us;
    const auto& pound_per_yard = units::unit("lb/yd3");
    const auto mass = [&](double kg_m3, int decimals) {
        return fixed(us ? pound_per_yard.from_inside(kg_m3) : kg_m3, decimals);
    };
    const auto volume = [&](std::optional<double> m3) {
        return !m3 ? std::string{"-"} : us ? fixed(27 * *m3, 2) : fixed(*m3, 4);
    };
    Grid grid{{Align::left, Align::left, Align::right, Align::right, Align::right, Align::left}};
    grid.head({"", "", us ? "mass, lb" : "mass, kg", "rel. density",
               us ? "volume, ft3" : "volume, m3", ""});
    for (const core::Ingredient& ingredient : proportions.ingredients) {
        const std::string kind = ingredient.material
                                     ? std::string{core::name_of(ingredient.material->kind)}
                                 : ingredient.role == core::Role::water ? "to batch"
                                                                        : "";
        const int decimals = ingredient.role == core::Role::admixture ? 1 : 0;
        const std::string density =
            ingredient.relative_density ? fixed(*ingredient.relative_density, 2) : "";
        grid.add({column_name(std::string{ingredient.name}), kind, mass(ingredient.kg_m3, decimals),
                  density, volume(ingredient.volume_m3), site_measure(ingredient, system)});
    }
    if (proportions.totals.fresh_density_kg_m3) {
        grid.add({"total", "", mass(*proportions.totals.fresh_density_kg_m3, 0), "",
                  volume(proportions.totals.volume_m3), ""});
    }
    return grid;
}

Flow sources_text(const core::Proportions& proportions) {
    Flow flow;
    std::vector<std::string> silent;
    for (const core::Ingredient& ingredient : proportions.ingredients) {
        if (!ingredient.material) {
            continue;
        }
        const std::string name = text::printable(ingredient.material->name);
        const std::string& source = ingredient.material->source;
        if (source.empty()) {
            silent.push_back(name);
        } else {
            flow += paragraph(name + ": " + text::printable(source), list_item);
        }
    }
    if (!silent.empty()) {
        flow += paragraph(fmt::format("no 'source' is stated for {}", fmt::join(silent, ", ")),
                          list_item);
    }
    return flow;
}

} // namespace boardmark::report
