#include "bar_sizes.hpp"

#include "lookup.hpp"

#include <numbers>

namespace boardmark::reference {

std::vector<core::BarSize> bar_sizes() {
    constexpr double mm2_in_m2 = 1e6;
    std::vector<core::BarSize> sizes;
    const EmbeddedTable& us = table("bars-us");
    for (const EmbeddedRow& line : us.rows) {
        sizes.push_back({std::string{line.name}, cell(us, line, "diameter"),
                         cell(us, line, "area") * mm2_in_m2, source_of(line.source)});
    }
    const EmbeddedTable& si = table("bars-si");
    for (const EmbeddedRow& line : si.rows) {
        const double diameter_mm = cell(si, line, "diameter");
        sizes.push_back({std::string{line.name}, diameter_mm,
                         std::numbers::pi / 4 * diameter_mm * diameter_mm, source_of(line.source)});
    }
    return sizes;
}

} // namespace boardmark::reference
