#include "lift_rows.hpp"

#include "../writing/names.hpp"

#include <fmt/format.h>

namespace boardmark::report {
namespace {

constexpr std::size_t rows_of_a_sheet = 8;

std::vector<LiftRow> copy_by_copy(const std::vector<core::LiftOfDay>& lifts) {
    std::vector<LiftRow> rows;
    std::size_t at = 0;
    while (at < lifts.size()) {
        const auto of_copy =
            std::span{lifts}.subspan(at, static_cast<std::size_t>(lifts[at].lifts));
        rows.push_back({of_copy, of_copy});
        at += of_copy.size();
    }
    return rows;
}

std::vector<LiftRow> part_by_part(const std::vector<LiftRow>& copies) {
    std::vector<LiftRow> rows;
    for (const LiftRow& copy : copies) {
        if (copy.first.front().copy == 1) {
            rows.push_back(copy);
        }
        rows.back().last = copy.last;
    }
    return rows;
}

} // namespace

std::vector<LiftRow> lift_rows(const std::vector<core::LiftOfDay>& lifts) {
    const auto rows = copy_by_copy(lifts);
    return rows.size() > rows_of_a_sheet ? part_by_part(rows) : rows;
}

std::string name_of_copy(const core::LiftOfDay& lift) {
    const std::string name = column_name(lift.part);
    return lift.copies == 1 ? name : fmt::format("{} {} of {}", name, lift.copy, lift.copies);
}

std::string name_of(const LiftRow& row) {
    return row.is_single() ? name_of_copy(row.first.front())
                           : fmt::format("{} 1 to {}", column_name(row.first.front().part),
                                         row.first.front().copies);
}

} // namespace boardmark::report
