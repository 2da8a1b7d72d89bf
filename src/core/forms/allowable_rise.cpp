#include "../checks/compare.hpp"
#include "../phrases.hpp"
#include "../tolerance.hpp"
#include "form_parts.hpp"

#include <boost/math/tools/roots.hpp>

#include <cmath>

namespace boardmark::core {
namespace {

constexpr double slowest_m_h = 0.001; // a lift of 3 m in four months

double rounded_down(double value, double step) {
    return std::floor(value / step + relative_rounding) * step;
}

AllowableRise no_rise(Phrase reason) {
    return {.rise_m_h = {}, .usable_m_h = {}, .any = false, .reason = std::move(reason)};
}

/// The last rise before the pressure passes the design, where it does so between the ends.
double crossing(const auto& excess_kpa, double fastest_m_h) {
    constexpr int bits = 40;
    const auto bracket = boost::math::tools::bisect(
        excess_kpa, slowest_m_h, fastest_m_h, boost::math::tools::eps_tolerance<double>(bits));
    return bracket.first;
}

} // namespace

AllowableRise allowable_rise(const FormCase& pour, double design_kpa, const Tables& tables,
                             PressureMethod method) {
    const auto excess_kpa = [&](double rise_m_h) {
        FormCase rising = pour;
        rising.rise_m_h = rise_m_h;
        return method(rising, tables).kpa - design_kpa;
    };
    const double fastest_m_h = tables.forms.aci.fastest_rise_m_h.value;
    FormCase slowest = pour;
    slowest.rise_m_h = slowest_m_h;
    const FormPressure least = method(slowest, tables);
    const Argument design = quantity("design", {design_kpa, Measure::pressure});
    const double full_kpa =
        pour.pumped_from_below ? least.kpa : least.head_kpa; // pumping presses harder
    if (!above(full_kpa, design_kpa)) {
        AllowableRise any = no_rise({"{design} bears the full liquid head of {head}: the rate of "
                                     "rise does not matter",
                                     {design, quantity("head", {full_kpa, Measure::pressure})}});
        any.any = true;
        return any;
    }
    if (!least.valid) {
        return no_rise({"full liquid head of {head} governs at any rate, and {design} does not "
                        "bear it",
                        {quantity("head", {least.kpa, Measure::pressure}), design}});
    }
    if (above(least.kpa, design_kpa)) {
        return no_rise({"no rate is slow enough: the least pressure is {least}, {design} does not "
                        "bear it",
                        {quantity("least", {least.kpa, Measure::pressure}), design}});
    }
    const double rise_m_h =
        !above(excess_kpa(fastest_m_h), 0) ? fastest_m_h : crossing(excess_kpa, fastest_m_h);
    return {.rise_m_h = rise_m_h,
            .usable_m_h = rounded_down(rise_m_h, rise_precision_m_h(tables.system)),
            .any = false,
            .reason = {"the fastest rise at which the pressure stays within {design}", {design}}};
}

} // namespace boardmark::core
