#pragma once

#include <boardmark/core/mix/shared_material.hpp>

#include <vector>

namespace boardmark::core {

struct Tables;

/// What a reducer saves at a dose, without an allocation: linear between the points of its data and
/// from nothing at no dose; above the last point no more than there.
class ReductionCurve {
public:
    /// @param reducer states a reduction by dose, or that its standard's least one is to be used
    /// @param dose_percent of the mix, at which the least one is looked up
    ReductionCurve(const SharedMaterial& reducer, double dose_percent, const Tables& tables);

    /// Percent of the mixing water.
    double percent_at(double dose_percent) const;

private:
    struct Point {
        double dose_percent;
        double percent;
    };
    std::vector<Point> points_; ///< increasing; one at no dose: the same at every dose
};

} // namespace boardmark::core
