#include "wall_forces_text.hpp"

#include <boardmark/report/writing/words.hpp>

#include "../figure/pressure_figure.hpp"
#include "../writing/grid.hpp"
#include "../writing/names.hpp"
#include "../writing/quantity_format.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::report {
namespace {

std::string governor_text(const core::FormPressure& pressure) {
    switch (pressure.governed_by) {
    case core::PressureGovernor::formula:
        return "formula";
    case core::PressureGovernor::floor:
        return "least of the method";
    case core::PressureGovernor::liquid_head:
        return "full liquid head";
    case core::PressureGovernor::head:
        return "head of the concrete";
    }
    return "";
}

/// Methods whose figures nobody of this project has read again.
Flow text_of_memory(const core::FormForces& forces) {
    std::vector<std::string> methods;
    for (const core::FormPressure& pressure : forces.pressures) {
        if (std::ranges::count(pressure.marks, core::Mark::from_memory) > 0) {
            methods.push_back(pressure.method);
        }
    }
    return methods.empty() ? Flow{}
                           : paragraph(fmt::format("Some figures of {} are from memory and were "
                                                   "not read again; '--explain' says which.",
                                                   fmt::join(methods, ", ")),
                                       {"  ", "  "});
}

/// Why one method has the star.
Flow text_of_governing(const core::FormForces& forces) {
    return paragraph(forces.method_asked
                         ? "* named in the file: checks, ties and rates of rise go by it."
                         : "* the highest shown: checks, ties and rates of rise go by it.",
                     {"  ", "  "});
}

} // namespace

Flow text_of_forces(const std::vector<core::FormForces>& all, const TextStyle& style) {
    using core::Measure;
    Grid grid{{Align::left, Align::right, Align::left, Align::right, Align::left, Align::right}};
    grid.head({"", "height", "method", "pressure", "by", "tie carries"});
    std::vector<std::string> told;
    Flow reasons;
    for (const core::FormForces& forces : all) {
        for (const core::FormPressure& pressure : forces.pressures) {
            const bool first = &pressure == &forces.pressures.front();
            const bool governs = &pressure == &core::governing_pressure(forces);
            const auto tie_kn = governs ? core::hardest_tie_kn(forces) : std::nullopt;
            grid.add({first ? column_name(forces.wall) : "",
                      first ? shown({forces.height_m, Measure::line_length}, style.system) : "",
                      pressure.method + (governs ? " *" : ""),
                      shown({pressure.kpa, Measure::pressure, core::Keep::at_least}, style.system),
                      governor_text(pressure),
                      tie_kn ? shown({*tie_kn, Measure::force, core::Keep::at_least}, style.system)
                             : ""});
            for (const auto* phrases : {&pressure.why, &pressure.remarks}) {
                for (const core::Phrase& why : *phrases) {
                    if (std::ranges::count(told, why.text) == 0) {
                        told.push_back(why.text);
                        const std::string whose =
                            why.arguments.empty() ? "" : column_name(forces.wall) + ": ";
                        reasons += paragraph(whose + words(why, style.system), list_item);
                    }
                }
            }
        }
        for (const core::Phrase& remark : forces.tie_remarks) {
            reasons +=
                paragraph(column_name(forces.wall) + ": " + words(remark, style.system), list_item);
        }
    }
    Flow basis;
    for (const core::Phrase& holds : core::pressures_hold_for(all)) {
        basis += paragraph(words(holds, style.system), {"  ", "    "});
    }
    const Flow caution = paragraph(words(core::form_caution(), style.system), {"  ", "  "});
    return grid + text_of_governing(all.front()) + basis + caution + text_of_memory(all.front()) +
           reasons + pressure_figures(all, style.system);
}

Flow text_of_rise(const std::vector<core::FormForces>& all, core::UnitSystem system) {
    Flow text;
    for (const core::Phrase& highest : core::highest_rises(all)) {
        text += paragraph(words(highest, system), list_item);
    }
    return text;
}

} // namespace boardmark::report
