#include "site_water_text.hpp"

#include <boardmark/units/rounding.hpp>
#include <boardmark/units/unit.hpp>

#include "../writing/grid.hpp"
#include "../writing/quantity_format.hpp"
#include "../writing/text_sections.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::report {
namespace {

using core::Measure;

std::string limit_text(const core::SiteWater& water, const TextStyle& style) {
    const std::string ratio = shown({water.w_cm_limit, Measure::w_cm}, style.system);
    switch (water.limited_by) {
    case core::WaterLimit::exposure:
        return ratio + ", the limit of the exposure classes";
    case core::WaterLimit::strength:
        return ratio + ", at which the average strength is expected";
    case core::WaterLimit::mix:
        return ratio + ", the mix's own: no higher one is known to reach the strength";
    case core::WaterLimit::unstated:
        return ratio + ", the mix's own: an exposure class is not stated";
    case core::WaterLimit::reducer:
        return ratio + "; with a high-range reducer add no water beyond what was held back";
    case core::WaterLimit::binder:
        return ratio + "; the minimum cementitious material allows no more";
    case core::WaterLimit::slump:
        return ratio + "; the slump permitted at placing allows no more water";
    }
    return ratio;
}

/// To half an inch or a centimetre: the rule knows no better.
std::string rough_slump(double mm, core::UnitSystem system) {
    const double step_mm = system == core::UnitSystem::us ? units::unit("in").to_inside(0.5) : 10;
    return shown({units::nearest({.amount = mm, .step = step_mm}), Measure::slump}, system);
}

/// Less half of the last digit that will be printed: rounding then never gives more than there is.
double less_half_a_digit(double inside, std::string_view spelling) {
    const units::Unit& unit = units::unit(spelling);
    const double amount = unit.from_inside(inside);
    const double digit = amount < 100 ? 0.01 : amount < 1000 ? 0.1 : 1;
    return std::max(unit.to_inside(amount - digit / 2), 0.0);
}

/// The amount as it may be printed: the last digit must not break a limit.
core::WaterAmount rounded_down(const core::WaterAmount& amount, core::UnitSystem system) {
    const bool us = system == core::UnitSystem::us;
    return {.kg = less_half_a_digit(amount.kg, us ? "lb" : "kg"),
            .litres = 1000 * less_half_a_digit(amount.litres / 1000, us ? "gal" : "L")};
}

std::string amount_text(const core::WaterAmount& amount, core::UnitSystem system) {
    return shown({amount.kg, Measure::mass}, system) + " (" + water_measure(amount.litres, system) +
           ")";
}

core::WaterAmount difference(const core::WaterAmount& more, const core::WaterAmount& less) {
    return {.kg = more.kg - less.kg, .litres = more.litres - less.litres};
}

/// What may go in, told by the water held back so that no amount stands twice.
std::string share_allowed(const core::SiteWater& water, core::UnitSystem system) {
    const core::WaterAmount beyond = difference(water.may_be_added, water.held_back);
    const bool just_what_was_held = std::abs(beyond.kg) < 1e-9;
    if (water.held_back.kg <= 0) {
        return amount_text(rounded_down(water.may_be_added, system), system) + " in all";
    }
    if (just_what_was_held) {
        return "the water held back, no more";
    }
    return beyond.kg > 0 ? "the water held back and " +
                               amount_text(rounded_down(beyond, system), system) + " besides"
                         : "of the water held back, no more than " +
                               amount_text(rounded_down(water.may_be_added, system), system);
}

std::string allowed(const core::SiteWater& water, const TextStyle& style) {
    if (water.may_be_added.kg <= 0) {
        return water.held_back.kg > 0 ? "none; do not add the water held back" : "none";
    }
    std::string text = share_allowed(water, style.system) + "; w/cm is then " +
                       shown({water.w_cm_then, Measure::w_cm}, style.system);
    if (water.slump_gain_mm) {
        text += ", the slump roughly " + rough_slump(*water.slump_gain_mm, style.system) +
                " higher than without it";
    }
    return text;
}

} // namespace

std::string name_of(core::WaterLimit limit) {
    switch (limit) {
    case core::WaterLimit::exposure:
        return "exposure";
    case core::WaterLimit::strength:
        return "strength";
    case core::WaterLimit::mix:
        return "mix";
    case core::WaterLimit::unstated:
        return "unstated";
    case core::WaterLimit::reducer:
        return "reducer";
    case core::WaterLimit::binder:
        return "binder";
    case core::WaterLimit::slump:
        return "slump";
    }
    return "";
}

Flow text_of_site_water(const core::SiteWater& water, const TextStyle& style) {
    return paragraph("may be added: " + allowed(water, style), {"  ", "  "}) +
           paragraph("highest w/cm: " + limit_text(water, style), {"  ", "  "}) +
           text_of_cautions(water.advice, style);
}

} // namespace boardmark::report
