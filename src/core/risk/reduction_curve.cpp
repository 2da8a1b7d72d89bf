#include "reduction_curve.hpp"

#include "../method/water_reduction.hpp"
#include "../mix/material_figures.hpp"

namespace boardmark::core {

ReductionCurve::ReductionCurve(const SharedMaterial& reducer, double dose_percent,
                               const Tables& tables) {
    const AdmixtureFigures& figures = reducer->admixture;
    if (figures.standard_minimum_reduction) {
        const auto least =
            reduction_percent({reducer, Dose{dose_percent, DoseBasis::percent}}, tables);
        points_.push_back({0, least ? *least : 0});
        return;
    }
    points_.push_back({0, 0});
    const double density_kg_m3 = product_density(*reducer, tables).value;
    for (const WaterReductionPoint& point : figures.water_reduction) {
        points_.push_back({core::dose_percent(point.dose, density_kg_m3), point.percent});
    }
}

double ReductionCurve::percent_at(double dose_percent) const {
    const Point* lower = &points_.front();
    for (const Point& upper : points_) {
        if (dose_percent < upper.dose_percent) {
            const double fraction =
                (dose_percent - lower->dose_percent) / (upper.dose_percent - lower->dose_percent);
            return lower->percent + fraction * (upper.percent - lower->percent);
        }
        lower = &upper;
    }
    return lower->percent;
}

} // namespace boardmark::core
