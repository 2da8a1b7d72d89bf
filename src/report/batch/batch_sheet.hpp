#pragma once

#include <boardmark/report/trial/yield_report.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::report {

/// A row of the batch sheet: a material in this trial and in the next one.
struct SheetRow {
    std::string name;
    core::Role role;
    double weighed_kg;
    std::optional<double> next_kg;    ///< absent where there is no next trial
    std::optional<double> weighed_m3; ///< liquids only
    std::optional<double> next_m3;
    double found_kg_m3; ///< aggregates SSD, water all mixing water
    std::optional<double> next_kg_m3;
};

/// The sheet of this trial beside that of the next one.
std::vector<SheetRow> batch_sheet(const YieldResult& result);

} // namespace boardmark::report
