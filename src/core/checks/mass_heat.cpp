#include "mass_heat.hpp"

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/weather/heat.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"

namespace boardmark::core {
namespace {

const char* mass_text(const HeatedSection& section, double rise_k, const HeatTables& heat) {
    if (!section.placed_c) {
        return "; a part {thickness} thick is mass concrete (from {mass}): its middle may grow "
               "{rise} hotter than it is placed, an estimate, and how warm that is is not known "
               "({keys}); at most {peak_limit}, and {difference} between middle and face: a "
               "thermal control plan is the engineer's";
    }
    return above(*section.placed_c + rise_k, heat.mass_peak_c.value)
               ? "; a part {thickness} thick is mass concrete (from {mass}): its middle may reach "
                 "{peak}, {placed} as placed and {rise} more, an estimate; that is too hot, at "
                 "most {peak_limit}, and {difference} between middle and face: a thermal control "
                 "plan is the engineer's"
               : "; a part {thickness} thick is mass concrete (from {mass}): its middle may reach "
                 "{peak}, {placed} as placed and {rise} more, an estimate; at most {peak_limit}, "
                 "and {difference} between middle and face: a thermal control plan is the "
                 "engineer's";
}

void append_mass_heat(const HeatedSection& section, const Proportions& proportions,
                      const Tables& tables, Phrase& message) {
    const HeatTables& heat = tables.heat;
    const double rise_k = temperature_rise_k(proportions, tables);
    const double placed_c = section.placed_c.value_or(0);
    message.text += mass_text(section, rise_k, heat);
    for (Argument& argument : std::vector<Argument>{
             quantity("thickness", {*section.thickness_mm, Measure::length}),
             quantity("mass", {tables.practice.mass_thickness_mm.value, Measure::length}),
             quantity("rise", {rise_k, Measure::temperature_difference}),
             quantity("peak_limit", {heat.mass_peak_c.value, Measure::temperature}),
             quantity("difference",
                      {heat.mass_difference_k.value, Measure::temperature_difference})}) {
        message.arguments.push_back(std::move(argument));
    }
    if (section.placed_c) {
        message.arguments.push_back(quantity("placed", {placed_c, Measure::temperature}));
        message.arguments.push_back(
            no_less_than("peak", {placed_c + rise_k, Measure::temperature}));
    } else {
        message.arguments.push_back(word("keys", section.keys_of_placed));
    }
}

} // namespace

bool is_mass_concrete(std::optional<double> thickness_mm, const Tables& tables) {
    return thickness_mm && !below(*thickness_mm, tables.practice.mass_thickness_mm.value);
}

void tell_heat(const HeatedSection& section, const Proportions& proportions, const Tables& tables,
               Check& told) {
    const TypicalFigure& watch = tables.practice.heat_watch_kg_m3;
    told.requirement = "heat and shrinkage";
    told.source = watch.source;
    told.message = {"cementitious material {value}; above {limit} look at heat, shrinkage and cost",
                    {concentration("value", proportions.totals.binder_kg_m3),
                     concentration("limit", watch.value)}};
    if (is_mass_concrete(section.thickness_mm, tables)) {
        told.source = tables.practice.mass_thickness_mm.source;
        append_mass_heat(section, proportions, tables, told.message);
    }
}

} // namespace boardmark::core
