#include <boardmark/report/trial/yield_report.hpp>
#include <boardmark/report/writing/words.hpp>
#include <boardmark/units/unit.hpp>

#include "../batch/batch_sheet.hpp"
#include "../writing/csv_cells.hpp"

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
    std::string told = remark(result.yield.found, result.checks);
    if (result.next) {
        const std::string next = remark(result.next->proportions, result.next->checks);
        told += (told.empty() || next.empty() ? "" : "; ") +
                (next.empty() ? "" : "next trial: " + next);
    }
    if (result.no_next) {
        told += (told.empty() ? "" : "; ") + std::string{"no next trial: "} +
                words(result.no_next->what, system);
    }
    told = csv_cell(told);
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
