#include <boardmark/report/yield_report.hpp>
#include <boardmark/units/unit.hpp>

#include "batch_sheet.hpp"
#include "csv_parts.hpp"

#include <fmt/format.h>

namespace boardmark::report {

std::string csv(const YieldResult& result, core::UnitSystem system) {
    const bool us = system == core::UnitSystem::us;
    const std::string_view mass = us ? "lb" : "kg";
    const std::string_view concentration = us ? "lb/yd3" : "kg/m3";
    const std::string_view volume = us ? "fl oz" : "L";
    std::string text =
        csv_row({"name", "role", fmt::format("found ({})", concentration),
                 fmt::format("next ({})", concentration), fmt::format("weighed ({})", mass),
                 fmt::format("weigh next ({})", mass), fmt::format("or measure next ({})", volume),
                 "remark"});
    if (!result.next) {
        return text;
    }
    const std::string told = csv_cell(remark(result.yield.found, result.checks));
    for (const SheetRow& row : batch_sheet(result)) {
        text +=
            csv_row({csv_cell(row.name), std::string{core::name_of(row.role)},
                     csv_cell_in(row.found_kg_m3, concentration),
                     csv_cell_in(row.next_kg_m3, concentration), csv_cell_in(row.weighed_kg, mass),
                     csv_cell_in(row.next_kg, mass), csv_cell_in(row.next_m3, volume), told});
    }
    return text;
}

} // namespace boardmark::report
