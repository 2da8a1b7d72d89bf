#include <boardmark/core/forms/stripping.hpp>
#include <boardmark/core/strength/strength_gain.hpp>

#include "../strength/time_of_sum.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

constexpr double hours_in_day = 24;

/// The age at which the curve reaches a strength.
std::optional<double> reached_h(const StrippedLift& lift, double needed_mpa,
                                const CuringRules& rules) {
    return age_of_part_h(lift.concrete, needed_mpa / *lift.strength_28d_mpa, *lift.gain, rules);
}

} // namespace

double counted_hours(const TemperatureHistory& air, double age_h, const CuringRules& rules) {
    double counted_h = 0;
    double begin_h = 0;
    for (const TemperatureStretch& stretch : air) {
        const double lasts_h = std::clamp(age_h - begin_h, 0.0, stretch.hours);
        counted_h += stretch.temperature_c > rules.strip_air_c.value ? lasts_h : 0;
        begin_h += stretch.hours;
    }
    return counted_h;
}

std::optional<double> age_of_counted_h(const TemperatureHistory& air, double counted_h,
                                       const CuringRules& rules) {
    return time_of_sum_h(air, counted_h, [&](const TemperatureStretch& stretch) {
        return stretch.temperature_c > rules.strip_air_c.value ? 1.0 : 0.0;
    });
}

std::optional<double> age_of_part_h(const TemperatureHistory& concrete, double part,
                                    const EnStrengthGain& gain, const CuringRules& rules) {
    const auto age_d = age_for_part_d(part, gain);
    if (!age_d) {
        return std::nullopt;
    }
    return time_of_sum_h(concrete, hours_in_day * *age_d, [&](const TemperatureStretch& stretch) {
        return en_equivalent_age_h({{1, stretch.temperature_c}}, rules.maturity);
    });
}

std::optional<double> StrippingAge::earliest_h() const {
    if (!not_before_h) {
        return std::nullopt;
    }
    if (by_strength_h) {
        const double by_rule_h = by_time_h ? std::min(*by_time_h, without_time_h) : without_time_h;
        return std::max({*by_strength_h, *not_before_h, by_rule_h});
    }
    return by_time_h ? std::optional{std::max(*by_time_h, *not_before_h)} : std::nullopt;
}

StrippingAge stripping_age(const StrippedLift& lift, const CuringRules& rules) {
    const double needed_mpa =
        (lift.frost ? rules.strip_strength_in_frost_mpa : rules.strip_strength_mpa).value;
    StrippingAge age{.by_time_h = age_of_counted_h(lift.air, rules.strip_after_h.value, rules),
                     .needed_mpa = needed_mpa,
                     .surely_by_time_h =
                         age_of_counted_h(lift.air, rules.strip_surely_after_h.value, rules),
                     .not_before_h = std::nullopt,
                     .without_time_h = rules.strip_surely_after_h.value};
    if (!lift.strength_28d_mpa || !lift.gain || lift.concrete.empty()) {
        return age;
    }
    const auto plain_h = reached_h(lift, needed_mpa, rules);
    if (plain_h) {
        age.not_before_h = std::max(*plain_h, lift.set_h.value_or(0));
    }
    if (lift.gain_is_its_own) {
        age.by_strength_h = plain_h;
    }
    return age;
}

std::optional<double> uniform_stripping_age_h(const std::vector<StrippingAge>& lifts) {
    std::optional<double> slowest_h;
    for (const StrippingAge& lift : lifts) {
        const auto earliest_h = lift.earliest_h();
        if (!earliest_h) {
            return std::nullopt;
        }
        slowest_h = std::max(slowest_h.value_or(0), *earliest_h);
    }
    return slowest_h;
}

TypicalFigure curing_time_d(const std::string& cement_type, bool high_early,
                            const CuringRules& rules) {
    const TypicalFigure& code = high_early ? rules.moist_high_early_d : rules.moist_d;
    const auto by_cement = rules.by_cement_d.find(cement_type);
    return by_cement == rules.by_cement_d.end() || by_cement->second.value <= code.value
               ? code
               : by_cement->second;
}

} // namespace boardmark::core
