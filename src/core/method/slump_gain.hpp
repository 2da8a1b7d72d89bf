#pragma once

#include <boardmark/core/mix/material.hpp>

#include <optional>
#include <vector>

namespace boardmark::core {

struct Tables;

/// The slump that a reducer adds at equal water, by its dose in percent of the cementitious
/// material: linear between the points of its data and from nothing at no dose.
class SlumpGain {
public:
    SlumpGain(const Material& reducer, const Tables& tables);

    bool is_known() const { return points_.size() > 1; }

    /// Nothing beyond the last point.
    std::optional<double> gain_mm(double percent) const;

    /// The least dose with that gain. Nothing where the data end below it.
    std::optional<double> dose_percent_for(double mm) const;

    /// The highest dose that the data know, percent.
    double last_percent() const { return points_.back().percent; }

private:
    struct Point {
        double percent;
        double mm;
    };
    std::vector<Point> points_; ///< the first stands at no dose
};

} // namespace boardmark::core
