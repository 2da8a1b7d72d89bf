#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../checks/compare.hpp"
#include "pressure_rules.hpp"

#include <cmath>
#include <utility>

namespace boardmark::core {
namespace {

constexpr double slowest_m_h = 0.001; // a lift of 3 m in four months

double rounded_down(double value, double step) {
    return std::floor(value / step + relative_rounding) * step;
}

AllowableRise no_rise(Phrase reason) {
    return {.rise_m_h = {}, .usable_m_h = {}, .any = false, .reason = std::move(reason)};
}

/// The last rise that is borne, between the slowest, which is, and the fastest, which is not.
double last_borne(const auto& is_borne, double fastest_m_h) {
    constexpr int halvings = 50;
    double borne_m_h = slowest_m_h;
    double too_fast_m_h = fastest_m_h;
    for (int halving = 0; halving < halvings; ++halving) {
        const double middle_m_h = (borne_m_h + too_fast_m_h) / 2;
        (is_borne(middle_m_h) ? borne_m_h : too_fast_m_h) = middle_m_h;
    }
    return borne_m_h;
}

/// Value and limit are printed with as many digits as tell them apart.
Argument design_of(const FormDemand& demand) {
    return quantity("limit", {demand.borne, demand.measure});
}

Phrase rise_reason(const FormDemand& demand, const FormPressure& pressure) {
    return {demand.measure == Measure::force
                ? "the fastest rise at which no tie carries more than {limit}, by {method}"
                : "the fastest rise at which the pressure stays within {limit}, by {method}",
            {design_of(demand), word("method", pressure.method)}};
}

/// What is no number is not borne.
bool is_borne(const FormDemand& demand, const FormPressure& pressure) {
    const double asked = demand.asked(pressure);
    return std::isfinite(asked) && !above(asked, demand.borne);
}

Phrase too_much(std::string text, const FormPressure& least, const FormDemand& demand) {
    text += demand.measure == Measure::force ? ", and ties of {limit} cannot carry it"
                                             : ", and forms for {limit} cannot carry it";
    return {std::move(text),
            {no_less_than("value", {least.kpa, Measure::pressure}), word("method", least.method),
             design_of(demand)}};
}

/// The head is borne, at any rate.
AllowableRise any_rate(const FormPressure& full, const FormDemand& demand) {
    std::string text =
        demand.measure == Measure::force ? "ties of {limit} carry " : "forms for {limit} carry ";
    if (is_pumped(full)) {
        text += "{times} times the full liquid head, at any rate of rise";
        AllowableRise open = no_rise({text + pump_is_open(), {design_of(demand)}});
        open.reason.arguments.push_back(
            quantity("times", {full.kpa / full.head_kpa, Measure::ratio}));
        open.open = true;
        return open;
    }
    AllowableRise any =
        no_rise({text + "the full liquid head at any rate of rise", {design_of(demand)}});
    any.any = true;
    return any;
}

/// The answer where the rate does not decide: the full head is borne, or nothing is.
std::optional<AllowableRise> whatever_the_rate(const FormPressure& full, const FormPressure& least,
                                               const FormDemand& demand) {
    if (is_borne(demand, full)) {
        return any_rate(full, demand);
    }
    if (!least.valid) {
        return no_rise(too_much(is_pumped(least)
                                    ? "{value} for concrete pumped from below governs at any rate"
                                    : "full liquid head of {value} governs at any rate",
                                least, demand));
    }
    if (!is_borne(demand, least)) {
        return no_rise(too_much("no rate is slow enough: the least pressure is {value} by {method}",
                                least, demand));
    }
    return std::nullopt;
}

} // namespace

AllowableRise allowable_rise(const FormCase& pour, const FormDemand& demand, const Tables& tables,
                             PressureMethod method) {
    const auto rising = [&](std::optional<double> rise_m_h) {
        FormCase one = pour;
        one.rise_m_h = rise_m_h;
        return method(one, tables);
    };
    const FormPressure least = rising(slowest_m_h);
    const auto full = rising(std::nullopt); // no formula holds without a rate
    if (!is_some(demand.borne)) {
        return no_rise({"what the form bears is no number above 0", {}});
    }
    if (!is_some(full.kpa)) {
        return no_rise({"the pour states no possible height or density", {}});
    }
    if (const auto answer = whatever_the_rate(full, least, demand)) {
        return *answer;
    }
    const auto bears = [&](double rise_m_h) { return is_borne(demand, rising(rise_m_h)); };
    const double fastest_m_h = tables.forms->aci.fastest_rise_m_h.value;
    const double rise_m_h = bears(fastest_m_h) ? fastest_m_h : last_borne(bears, fastest_m_h);
    const double step_m_h = rise_precision_m_h(tables.system);
    const double usable_m_h = rounded_down(rise_m_h, step_m_h);
    if (usable_m_h < step_m_h / 2) {
        Phrase reason = too_much("no rate is slow enough: even {step} presses too hard by {method}",
                                 least, demand);
        reason.arguments.push_back(quantity("step", {step_m_h, Measure::rate_of_rise}));
        return no_rise(std::move(reason));
    }
    return {.rise_m_h = rise_m_h,
            .usable_m_h = usable_m_h,
            .any = false,
            .reason = rise_reason(demand, least)};
}

AllowableRise allowable_rise(const FormCase& pour, double design_kpa, const Tables& tables,
                             PressureMethod method) {
    return allowable_rise(pour,
                          {.asked = [](const FormPressure& pressure) { return pressure.kpa; },
                           .borne = design_kpa,
                           .measure = Measure::pressure},
                          tables, method);
}

} // namespace boardmark::core
