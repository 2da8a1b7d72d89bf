#include "demand.hpp"

#include "../basis/interpolation.hpp"
#include "../basis/tolerance.hpp"
#include "../checks/compare.hpp"

#include <cassert>
#include <cmath>
#include <limits>

namespace boardmark::core {
namespace {

constexpr double unbounded = std::numeric_limits<double>::infinity();
constexpr double no_figure = std::numeric_limits<double>::quiet_NaN();

/// At most so much.
Demand most(Demanded quantity, double high, double precision, const ExposureClass& by,
            const Source& source) {
    return {.quantity = quantity,
            .addition = {},
            .low = -unbounded,
            .high = high,
            .low_twin = -unbounded,
            .precision = precision,
            .target = high,
            .by = &by,
            .source = &source};
}

Demand least_strength(const StatedClass& stated, UnitSystem system) {
    const ClassLimits& limits = *stated.limits;
    return {.quantity = Demanded::strength,
            .addition = {},
            .low = limits.min_strength_mpa,
            .high = unbounded,
            .low_twin = limits.min_strength_twin_mpa,
            .precision = strength_precision_mpa(system),
            .target = limits.min_strength_mpa,
            .by = stated.exposure,
            .source = &limits.source};
}

Demand total_air(const ExposureClass& exposure, const AirRules& rules, double size_mm) {
    const auto target = value_at_size(*exposure.air_percent, size_mm);
    const double percent = target ? target->value : no_figure;
    return {.quantity = Demanded::air,
            .addition = {},
            .low = percent - rules.tolerance_percent,
            .high = percent + rules.tolerance_percent,
            .low_twin = percent - rules.tolerance_percent,
            .precision = percent_precision,
            .target = percent,
            .by = &exposure,
            .source = &exposure.air_percent->source};
}

bool is_bound(double bound) {
    return std::isfinite(bound);
}

} // namespace

Demands::Demands(const StatedClasses& stated, const CodeTables& code, const DemandCase& about) {
    for (const StatedClass& one : stated) {
        const ExposureClass& exposure = *one.exposure;
        if (one.limits->max_w_cm) {
            add(most(Demanded::w_cm, *one.limits->max_w_cm, w_cm_precision, exposure,
                     one.limits->source));
        }
        add(least_strength(one, about.system));
        if (exposure.air_percent) {
            add(total_air(exposure, code.air, about.nominal_max_size_mm));
        }
        if (exposure.chloride_percent) {
            add(most(Demanded::chloride, *exposure.chloride_percent, chloride_precision_percent,
                     exposure, exposure.limits.source));
        }
        for (const Cap& cap : exposure.caps) {
            Demand demand =
                most(Demanded::addition, cap.percent, percent_precision, exposure, cap.source);
            demand.addition = cap.addition;
            add(demand);
        }
    }
}

void Demands::add(const Demand& demand) {
    assert(count_ < demands_.size());
    demands_[count_++] = demand;
}

const Demand* Demands::first(Demanded quantity) const {
    for (const Demand& demand : all()) {
        if (demand.quantity == quantity) {
            return &demand;
        }
    }
    return nullptr;
}

Limit Demand::limit() const {
    return {.low = is_bound(low) ? std::optional{low} : std::nullopt,
            .high = is_bound(high) ? std::optional{high} : std::nullopt};
}

Verdict held(const Demand& demand, double value) {
    const Verdict lower = !is_bound(demand.low) || !below(value, demand.low_twin)
                              ? Verdict::holds
                              : at_least({value, demand.low, demand.precision});
    const Verdict upper =
        is_bound(demand.high) ? at_most({value, demand.high, demand.precision}) : Verdict::holds;
    return worse(lower, upper);
}

} // namespace boardmark::core
