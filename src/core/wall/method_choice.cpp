#include "method_choice.hpp"

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"

#include <algorithm>
#include <limits>

namespace boardmark::core {
namespace {

/// Whether all that a method asks for beside the rate of rise is stated.
bool suits_any_rise(const FormCase& pour, const Tables& tables, PressureMethod method) {
    FormCase rising = pour;
    rising.rise_m_h = rising.rise_m_h.value_or(1);
    return method(rising, tables).data_suffice;
}

/// Orders rises by what they allow: none, some, any.
double freedom(const AllowableRise& rise) {
    return rise.any ? std::numeric_limits<double>::infinity() : rise.rise_m_h.value_or(0);
}

} // namespace

MethodChoice method_choice(const FormCase& pour, const std::string& asked, const Tables& tables) {
    MethodChoice choice;
    choice.asked = !asked.empty();
    for (const PressureMethod method : pressure_methods()) {
        FormPressure pressure = method(pour, tables);
        const bool this_one = pressure.method == asked;
        const bool first = choice.pressures.empty();
        if (this_one || (!choice.asked && (first || suits_any_rise(pour, tables, method)))) {
            choice.of_rises.push_back(method);
        }
        if (this_one || first || pressure.data_suffice) {
            choice.pressures.push_back(std::move(pressure));
        }
    }
    const auto governing = choice.asked
                               ? std::ranges::find(choice.pressures, asked, &FormPressure::method)
                               : std::ranges::max_element(choice.pressures, {}, &FormPressure::kpa);
    choice.governing = static_cast<std::size_t>(governing - choice.pressures.begin());
    return choice;
}

AllowableRise least_rise(const FormCase& pour, const FormDemand& demand, const MethodChoice& choice,
                         const Tables& tables) {
    std::vector<AllowableRise> rises;
    for (const PressureMethod method : choice.of_rises) {
        rises.push_back(allowable_rise(pour, demand, tables, method));
    }
    return *std::ranges::min_element(rises, {}, freedom);
}

std::optional<Check> other_method_check(const Check& check, const FormDemand& demand,
                                        const MethodChoice& choice) {
    if (!choice.asked) {
        return std::nullopt; // the highest governs
    }
    Check other = check;
    other.id = check.is(check_ids::forms_tie) ? check_ids::forms_tie_other_method
                                              : check_ids::forms_pressure_other_method;
    other.verdict = Verdict::watch;
    other.value.reset();
    other.message = {"", {}};
    const double governs = demand.asked(choice.pressures[choice.governing]);
    for (std::size_t number = 0; number < choice.pressures.size(); ++number) {
        const FormPressure& pressure = choice.pressures[number];
        const double asks = demand.asked(pressure);
        if (!above(asks, std::max(governs, demand.borne))) {
            continue; // the form bears it, or has failed by as much
        }
        const std::string figure = "value" + std::to_string(number);
        const std::string name = "method" + std::to_string(number);
        other.message.text += (other.value ? " and {" : "{") + figure + "} by {" + name + "}";
        other.message.arguments.push_back(quantity(figure, {asks, demand.measure}));
        other.message.arguments.push_back(word(name, pressure.method));
        if (asks > other.value.value_or(0)) {
            other.value = asks;
            other.source = pressure.source;
        }
    }
    if (!other.value) {
        return std::nullopt;
    }
    other.message.text += ", more than {limit}; the file asks for {asked}";
    other.message.arguments.push_back(quantity("limit", {demand.borne, demand.measure}));
    other.message.arguments.push_back(word("asked", choice.pressures[choice.governing].method));
    return other;
}

std::optional<Check> missing_method_check(const FormCase& pour, const MethodChoice& choice) {
    const FormPressure& governing = choice.pressures[choice.governing];
    const bool full_head = !below(governing.kpa, governing.head_kpa);
    const bool one_of_both = pour.flow_class.has_value() != pour.set_time_h.has_value();
    if (full_head || !one_of_both) {
        return std::nullopt;
    }
    Check check{
        .id = check_ids::forms_pressure_other_method,
        .verdict = Verdict::not_checked,
        .measure = Measure::pressure,
        .requirement = "design pressure",
        .message = {"'placing.{stated}' is stated, but not 'placing.{missing}' that DIN 18218 asks "
                    "for too",
                    {word("stated", pour.flow_class ? "flow_class" : "end_of_set"),
                     word("missing", pour.flow_class ? "end_of_set" : "flow_class")}}};
    check.message.text +=
        choice.asked ? ": it is not known whether it presses harder than the method asked for"
                     : "; or name in 'placing.method' the method that the form is designed by";
    return check;
}

} // namespace boardmark::core
