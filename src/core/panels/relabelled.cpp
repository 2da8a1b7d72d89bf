#include "relabelled.hpp"

#include <algorithm>

namespace boardmark::core {

std::vector<PanelRow> relabelled(std::vector<PanelRow> rows, const PanelAsk& ask) {
    for (std::size_t factor = 0; factor < ask.levels.size(); ++factor) {
        const int first = rows.front()[factor];
        for (PanelRow& row : rows) {
            int& level = row[factor];
            level = level == first ? 0 : level == 0 ? first : level;
        }
    }
    std::ranges::sort(rows);
    return rows;
}

} // namespace boardmark::core
