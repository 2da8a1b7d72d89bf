#include "check_merger.hpp"

#include <boardmark/text/utf8.hpp>

#include "text_sections.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::report {

void CheckMerger::add(const std::string& label, const std::vector<core::Check>& checks,
                      core::UnitSystem system) {
    for (const core::Check& check : checks) {
        CheckRow row = row_of(check, system);
        std::string told = row.told();
        const auto same = std::ranges::find_if(merged_, [&](const Merged& other) {
            return other.row.id == row.id && other.row.verdict == row.verdict && other.told == told;
        });
        Merged& merged = same == merged_.end()
                             ? merged_.emplace_back(Merged{std::move(row), std::move(told), {}})
                             : *same;
        merged.labels.push_back(text::printable(label));
    }
}

std::vector<CheckRow> CheckMerger::rows() const {
    std::vector<CheckRow> rows;
    for (const Merged& merged : merged_) {
        rows.push_back(merged.row);
        rows.back().told = [told = fmt::format("{}: {}", fmt::join(merged.labels, ", "),
                                               merged.told)] { return told; };
        rows.back().checks = merged.labels.size();
    }
    return rows;
}

} // namespace boardmark::report
