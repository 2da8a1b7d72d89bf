#include "strength_column.hpp"

namespace boardmark::core {

std::vector<StrengthPoint> strength_column(const std::vector<StrengthRow>& rows,
                                           bool air_entrained) {
    std::vector<StrengthPoint> points;
    for (const StrengthRow& row : rows) {
        const auto& w_cm = air_entrained ? row.w_cm_air_entrained : row.w_cm_plain;
        if (w_cm) {
            points.push_back({row.strength_mpa, *w_cm, row.continues, &row.source});
        }
    }
    return points;
}

} // namespace boardmark::core
