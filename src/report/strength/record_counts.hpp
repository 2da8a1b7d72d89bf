#pragma once

#include <boardmark/report/strength/record_report.hpp>

#include "../writing/flow.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace boardmark::report {

/// How many rows of a record are of one mix.
struct MixCount {
    std::string mix;   ///< may be empty
    std::string title; ///< told where mixes of that name have several; empty otherwise
    std::size_t trials = 0;
    std::size_t specimens = 0;
};

/// The mixes of a record in the order in which its rows name them. Files of several projects may
/// carry one name: their titles keep them apart.
std::vector<MixCount> counts_by_mix(const RecordSummary& summary);

/// The earliest and the latest date of rows, which are in the order of their dates.
template <class Row>
std::string span_of_dates(const std::vector<Row>& rows) {
    if (rows.empty()) {
        return "";
    }
    const std::string& first = rows.front().date;
    const std::string& last = rows.back().date;
    return first == last ? "on " + first : "from " + first + " to " + last;
}

/// The headline of what a record shows: it holds no checks, and says so.
Flow record_headline(const std::string& what_stands);

/// "outside", "run", or nothing.
std::string name_of(core::ChartSignal signal);

} // namespace boardmark::report
