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
            .specimen = {},
            .low = -unbounded,
            .high = high,
            .low_twin = -unbounded,
            .precision = precision,
            .target = high,
            .by = &by,
            .source = &source};
}

/// The specimen by which a class's strength can be held against the file's: the one that both
/// state, else the class's own.
Specimen specimen_of(const ClassLimits& limits, const Requirements& requirements) {
    const bool by_cylinder = std::isfinite(limits.min_strength_mpa);
    if (by_cylinder && strength_by(Specimen::cylinder, requirements)) {
        return Specimen::cylinder;
    }
    return limits.min_cube_strength_mpa && strength_by(Specimen::cube, requirements)
               ? Specimen::cube
           : by_cylinder ? Specimen::cylinder
                         : Specimen::cube;
}

Demand least_strength(const StatedClass& stated, const DemandCase& about) {
    const ClassLimits& limits = *stated.limits;
    const Specimen specimen = specimen_of(limits, about.requirements);
    const bool cube = specimen == Specimen::cube;
    const double low_mpa =
        cube ? limits.min_cube_strength_mpa.value_or(no_figure) : limits.min_strength_mpa;
    return {.quantity = Demanded::strength,
            .addition = {},
            .specimen = specimen,
            .low = low_mpa,
            .high = unbounded,
            .low_twin = cube ? low_mpa : limits.min_strength_twin_mpa,
            .precision = strength_precision_mpa(about.system),
            .target = low_mpa,
            .by = stated.exposure,
            .source = &limits.source};
}

/// The least cement of a class, more or less of it for another stone; no figure where the table of
/// sizes does not reach.
Demand least_cement(const StatedClass& stated, const BinderRules& rules, const DemandCase& about) {
    const ClassLimits& limits = *stated.limits;
    double low_kg_m3 = *limits.min_cement_kg_m3;
    const Source* source = &limits.source;
    if (rules.cement_by_size) {
        const auto more = value_at_size(*rules.cement_by_size, about.nominal_max_size_mm);
        low_kg_m3 = more ? low_kg_m3 + more->value : no_figure;
        if (!more || more->value != 0) {
            source = &rules.cement_by_size->source;
        }
    }
    return {.quantity = Demanded::cement,
            .addition = {},
            .specimen = {},
            .low = low_kg_m3,
            .high = unbounded,
            .low_twin = low_kg_m3,
            .precision = amount_precision_kg_m3(about.system),
            .target = low_kg_m3,
            .by = stated.exposure,
            .source = source};
}

Demand total_air(const ExposureClass& exposure, const AirRules& rules, double size_mm) {
    const auto target = value_at_size(*exposure.air_percent, size_mm);
    const double percent = target ? target->value : no_figure;
    return {.quantity = Demanded::air,
            .addition = {},
            .specimen = {},
            .low = percent - rules.below_percent,
            .high = percent + rules.above_percent,
            .low_twin = percent - rules.below_percent,
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
        if (std::isfinite(one.limits->min_strength_mpa) || one.limits->min_cube_strength_mpa) {
            add(least_strength(one, about));
        }
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
        if (one.limits->min_cement_kg_m3) {
            add(least_cement(one, code.binder, about));
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

const Demand* Demands::strictest(Demanded quantity) const {
    const Demand* most = nullptr;
    const auto asks_more = [](const Demand& one, const Demand& other) {
        return !other.has_figure() ? false
               : !one.has_figure() ? true
               : is_bound(one.low) ? one.low > other.low
                                   : one.high < other.high;
    };
    for (const Demand& demand : all()) {
        if (demand.quantity == quantity && (!most || asks_more(demand, *most))) {
            most = &demand;
        }
    }
    return most;
}

Limit Demand::limit() const {
    return {.low = is_bound(low) ? OptionalNumber{low} : std::nullopt,
            .high = is_bound(high) ? OptionalNumber{high} : std::nullopt};
}

const ClassLimits& Demand::limits(bool reinforced) const {
    return !reinforced && by->plain_limits ? *by->plain_limits : by->limits;
}

Verdict held(const Demand& demand, double value) {
    const bool is_twin = is_bound(demand.low_twin) && same(value, demand.low_twin);
    const Verdict lower = !is_bound(demand.low) || is_twin
                              ? Verdict::holds
                              : at_least({value, demand.low, demand.precision});
    const Verdict upper =
        is_bound(demand.high) ? at_most({value, demand.high, demand.precision}) : Verdict::holds;
    return worse(worse(lower, upper), demand.from_memory() ? Verdict::watch : Verdict::holds);
}

} // namespace boardmark::core
