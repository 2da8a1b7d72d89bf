#pragma once

#include <boardmark/core/basis/typical_figure.hpp>
#include <boardmark/core/placing/placing_tables.hpp>
#include <boardmark/core/strength/maturity.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// One lift between placing and stripping.
struct StrippedLift {
    TemperatureHistory air = {};                 ///< from the end of placing on
    TemperatureHistory concrete = {};            ///< of the concrete in its form, likewise
    std::optional<double> strength_28d_mpa = {}; ///< mean, moist at 20 °C
    std::optional<EnStrengthGain> gain = {};     ///< of its cement, or of a cement no slower
    bool gain_is_its_own = true;      ///< otherwise the curve only tells before when it is too soon
    std::optional<double> set_h = {}; ///< end of setting
    bool frost = false;               ///< expected before it is protected again
};

/// When a lift may be stripped at the earliest, h after placing. A rule whose data are missing or
/// whose histories end too early gives nothing.
struct StrippingAge {
    std::optional<double> by_time_h = {}; ///< 12 h in air above 50 °F, cumulative (ACI 347)
    std::optional<double> by_strength_h =
        {};                ///< that the face is not damaged (2 MPa, 5 MPa in frost)
    double needed_mpa = 0; ///< the strength that the second rule asks
    std::optional<double> surely_by_time_h = {}; ///< 24 such hours, the upper end of the rule
    std::optional<double> not_before_h = 0; ///< set, and the strength of a plain cement; nothing
                                            ///< where the concrete is not known well enough
    double without_time_h = 0; ///< least age where strength alone tells it, not the rule by time

    /// The later of the rules: none may be broken. Where the air is too cold for the rule by time,
    /// the strength alone tells it, but not before the upper end of that rule. Nothing where
    /// neither could be applied, or where nothing tells when it is too soon.
    std::optional<double> earliest_h() const;
};

/// Earliest age of one lift. Only vertical faces: never soffits. The engineer's own figure governs.
StrippingAge stripping_age(const StrippedLift& lift, const CuringRules& rules);

/// Hours of a history that count for the rules by time, up to an age.
double counted_hours(const TemperatureHistory& air, double age_h, const CuringRules& rules);

/// The age at which so many hours have counted. Nothing where they never do.
std::optional<double> age_of_counted_h(const TemperatureHistory& air, double counted_h,
                                       const CuringRules& rules);

/// The age at which concrete of that history reaches a part of its strength at 28 d, h. Nothing
/// where it never does. Part > 0.
std::optional<double> age_of_part_h(const TemperatureHistory& concrete, double part,
                                    const EnStrengthGain& gain, const CuringRules& rules);

/// The one age at which every lift is stripped so that all get one colour: that of the slowest. A
/// lift without an age makes it nothing.
std::optional<double> uniform_stripping_age_h(const std::vector<StrippingAge>& lifts);

/// Least days of moist curing above 50 °F: the code's, or longer where the type of cement asks it
/// ("I" to "V"; unknown types count by the code alone).
TypicalFigure curing_time_d(const std::string& cement_type, bool high_early,
                            const CuringRules& rules);

} // namespace boardmark::core
