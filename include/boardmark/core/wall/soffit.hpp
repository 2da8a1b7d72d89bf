#pragma once

#include <boardmark/core/forms/stripping.hpp>

#include <optional>
#include <string>

namespace boardmark::core {

enum class SoffitKind { slab, beam };

/// A form below concrete that will carry itself once the form is gone.
struct Soffit {
    std::string part; ///< of the walls, by its name in the file
    SoffitKind kind = SoffitKind::slab;
    std::optional<double> span_m = {}; ///< clear, > 0; absent: it only stands out, or is open
    bool stands_out = false;           ///< a cantilever, for which no rule by time exists
    std::optional<double> live_load_kpa = {}; ///< absent: taken as less than the dead load
    double dead_load_kpa = 0;                 ///< of the concrete itself
    std::string opening = {};                 ///< whose head it is; empty: of the part itself

    /// Whether nobody states how it is supported.
    bool is_open() const { return !span_m && !stands_out; }
};

/// When its form and props may go, h after placing. The engineer of the structure decides.
struct SoffitAge {
    Soffit soffit;
    std::optional<double> days = {};          ///< of the rule by time; absent without a span
    std::optional<double> by_time_h = {};     ///< when so many have counted
    std::optional<double> by_strength_h = {}; ///< the strength asked, by the curve: an estimate
    std::optional<double> not_before_h = {};  ///< the same of a plain cement: sooner is too soon
    std::optional<double> needed_mpa = {};    ///< that the engineer asks

    /// The later of what is asked. Nothing where it never comes, or nobody tells it.
    std::optional<double> earliest_h() const;
};

/// Days in air above the temperature of the rule. Without a live load, and where it does not
/// exceed the dead load, the longer ones. `span_m` of the soffit is stated.
double soffit_days(const Soffit& soffit, const SoffitRules& rules);

/// The age of one soffit in the lift's history; `needed_mpa` where the engineer asks a strength.
SoffitAge soffit_age(const Soffit& soffit, const StrippedLift& lift,
                     std::optional<double> needed_mpa, const CuringRules& rules);

} // namespace boardmark::core
