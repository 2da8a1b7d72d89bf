#include <boardmark/core/strength_gain.hpp>
#include <boardmark/core/stripping.hpp>

#include <algorithm>

namespace boardmark::core {
namespace {

/// The time at which the hours, each worth a rate at its temperature, add up to a sum.
template <class Rate>
std::optional<double> time_of_sum_h(const TemperatureHistory& history, double sum_h, Rate rate) {
    double gathered_h = 0;
    double passed_h = 0;
    for (const TemperatureStretch& stretch : history) {
        const double worth_h = rate(stretch) * stretch.hours;
        if (worth_h > 0 && gathered_h + worth_h >= sum_h) {
            return passed_h + (sum_h - gathered_h) / worth_h * stretch.hours;
        }
        gathered_h += worth_h;
        passed_h += stretch.hours;
    }
    return std::nullopt;
}

std::optional<double> by_time_h(const TemperatureHistory& air, const CuringRules& rules) {
    return time_of_sum_h(air, rules.strip_after_h.value, [&](const TemperatureStretch& stretch) {
        return stretch.temperature_c > rules.strip_air_c.value ? 1.0 : 0.0;
    });
}

std::optional<double> by_strength_h(const StrippedLift& lift, double needed_mpa,
                                    const CuringRules& rules) {
    if (!lift.strength_28d_mpa || !lift.gain || lift.concrete.empty()) {
        return std::nullopt;
    }
    const auto age_d = age_for_part_d(needed_mpa / *lift.strength_28d_mpa, *lift.gain);
    if (!age_d) {
        return std::nullopt;
    }
    constexpr double hours_in_day = 24;
    return time_of_sum_h(
        lift.concrete, hours_in_day * *age_d, [&](const TemperatureStretch& stretch) {
            return en_equivalent_age_h({{1, stretch.temperature_c}}, rules.maturity);
        });
}

} // namespace

std::optional<double> StrippingAge::earliest_h() const {
    if (by_time_h && by_strength_h) {
        return std::max(*by_time_h, *by_strength_h);
    }
    return by_time_h ? by_time_h : by_strength_h;
}

StrippingAge stripping_age(const StrippedLift& lift, const CuringRules& rules) {
    const double needed_mpa =
        (lift.frost ? rules.strip_strength_in_frost_mpa : rules.strip_strength_mpa).value;
    return {.by_time_h = by_time_h(lift.air, rules),
            .by_strength_h = by_strength_h(lift, needed_mpa, rules),
            .needed_mpa = needed_mpa};
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
