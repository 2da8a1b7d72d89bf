#include "slump_gain.hpp"

#include "../basis/tolerance.hpp"
#include "../mix/material_figures.hpp"

namespace boardmark::core {

SlumpGain::SlumpGain(const Material& reducer, const Tables& tables)
    : points_{{0, 0}} {
    const double density_kg_m3 = product_density(reducer, tables).value;
    for (const SlumpGainPoint& point : reducer.admixture.slump_gain) {
        points_.push_back({dose_percent(point.dose, density_kg_m3), point.mm});
    }
}

std::optional<double> SlumpGain::gain_mm(double percent) const {
    for (std::size_t i = 1; i < points_.size(); ++i) {
        const auto& [low, low_mm] = points_[i - 1];
        const auto& [high, high_mm] = points_[i];
        if (!above(percent, high)) {
            return low_mm + (percent - low) / (high - low) * (high_mm - low_mm);
        }
    }
    return std::nullopt;
}

std::optional<double> SlumpGain::dose_percent_for(double mm) const {
    if (mm <= 0) {
        return 0;
    }
    for (std::size_t i = 1; i < points_.size(); ++i) {
        const auto& [low, low_mm] = points_[i - 1];
        const auto& [high, high_mm] = points_[i];
        if (!above(mm, high_mm)) {
            return low + (mm - low_mm) / (high_mm - low_mm) * (high - low);
        }
    }
    return std::nullopt;
}

} // namespace boardmark::core
