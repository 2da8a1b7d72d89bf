#include "lift_rows.hpp"

#include "../writing/names.hpp"

#include <fmt/format.h>

namespace boardmark::report {

std::vector<LiftRow> lift_rows(const std::vector<core::LiftOfDay>& lifts) {
    std::vector<LiftRow> rows;
    for (std::size_t i = 0; i < lifts.size(); i += rows.back().size()) {
        rows.push_back(LiftRow{lifts}.subspan(i, static_cast<std::size_t>(lifts[i].lifts)));
    }
    return rows;
}

std::string name_of(const LiftRow& row) {
    const core::LiftOfDay& lift = row.front();
    const std::string name = column_name(lift.part);
    return lift.copies == 1 ? name : fmt::format("{} {} of {}", name, lift.copy, lift.copies);
}

} // namespace boardmark::report
