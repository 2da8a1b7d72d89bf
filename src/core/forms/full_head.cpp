#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "pressure_rules.hpp"

#include <cmath>

namespace boardmark::core {
namespace {

struct Reason {
    bool applies;
    Phrase phrase;
};

std::vector<Phrase> applying(const std::vector<Reason>& reasons) {
    std::vector<Phrase> phrases;
    for (const Reason& reason : reasons) {
        if (reason.applies) {
            phrases.push_back(reason.phrase);
        }
    }
    return phrases;
}

Reason exceeds(const std::optional<double>& value, double limit, Measure measure,
               const char* text) {
    return {
        value && std::isfinite(*value) && above(*value, limit),
        {text,
         {quantity("value", {value.value_or(0), measure}), quantity("limit", {limit, measure})}}};
}

std::vector<Reason> reasons_of_the_concrete(const FormCase& pour, const Tables& tables,
                                            OwnAnswers answers) {
    const bool unbounded_reducer =
        pour.high_range_reducer && !pour.slump_maximum_stated && !pour.formula_asked;
    const double slump_mm = tables.practice.formula_slump_mm.value;
    std::vector<Reason> reasons;
    if (!answers.fluid_concrete) {
        reasons.push_back(
            {pour.self_consolidating, {"self-consolidating concrete presses like a liquid", {}}});
        reasons.push_back({!pour.highest_slump_mm && !pour.slump_of_dose_open,
                           {"the highest slump permitted at placing is not stated", {}}});
        reasons.push_back(exceeds(pour.highest_slump_mm, slump_mm, Measure::slump,
                                  "slump up to {value} is permitted at placing; the formulas hold "
                                  "to {limit}"));
    }
    reasons.push_back({pour.slump_of_dose_open,
                       {"it is not known which slump the dose of the high-range reducer brings: "
                        "its 'slump_gain' must reach the dose, and of one reducer alone",
                        {}}});
    reasons.push_back({unbounded_reducer,
                       {"a high-range water reducer, and no highest slump is stated: a formula is "
                        "used only if the file asks for it",
                        {}}});
    reasons.push_back(
        {pour.redosing_on_site, {"admixture may be added again on site, to any slump", {}}});
    return reasons;
}

std::vector<Reason> reasons_of_the_placing(const FormCase& pour, const FormTables& forms) {
    return {
        {pour.pumped_from_below, {"concrete pumped from below", {}}},
        {pour.vibration.external, {"vibrators on the form", {}}},
        exceeds(pour.vibration.depth_m, forms.aci.deepest_vibration_m.value, Measure::line_length,
                "vibration {value} deep; the formulas hold to {limit}"),
        {!pour.rise_m_h, {"the rate of rise is not stated", {}}},
        exceeds(pour.rise_m_h, forms.aci.fastest_rise_m_h.value, Measure::rate_of_rise,
                "a rate of rise of {value}; the formulas hold to {limit}"),
        {!pour.temperature_c,
         {"the temperature of the concrete in the form is not stated; the air's temperature does "
          "not replace it",
          {}}},
        {pour.temperature_c && std::isfinite(*pour.temperature_c) &&
             !above(*pour.temperature_c, forms.freezing_c.value),
         {"concrete at {value} freezes: no formula holds",
          {quantity("value", {pour.temperature_c.value_or(0), Measure::temperature})}}},
    };
}

bool is_none_or_some(const std::optional<double>& value) {
    return !value || (std::isfinite(*value) && *value >= 0);
}

bool are_some(const ColumnPlan& plan) {
    return is_some(plan.long_side_m) && is_some(plan.short_side_m);
}

/// Figures that no pour has. A wall's door refuses them; a caller of the formulas alone may not.
std::vector<Reason> reasons_of_the_impossible(const FormCase& pour) {
    const bool parts = is_none_or_some(pour.slag_percent) && is_none_or_some(pour.fly_ash_percent);
    const bool plan =
        (!pour.column || are_some(*pour.column)) && (!pour.pier || are_some(pour.pier->plan));
    return {
        {std::isnan(head_kpa(pour)), {"the height or the density is no number above 0", {}}},
        {pour.rise_m_h && !is_some(*pour.rise_m_h), {"the rate of rise is no number above 0", {}}},
        {pour.temperature_c && !std::isfinite(*pour.temperature_c),
         {"the temperature of the concrete is no number", {}}},
        {!is_none_or_some(pour.highest_slump_mm), {"the highest slump is no number", {}}},
        {!is_none_or_some(pour.vibration.depth_m), {"the depth of vibration is no number", {}}},
        {pour.set_time_h && !is_some(*pour.set_time_h),
         {"the end of setting is no number above 0", {}}},
        {!parts, {"the part of slag or fly ash is no number", {}}},
        {!plan, {"a side in plan is no number above 0", {}}},
    };
}

} // namespace

std::vector<Phrase> full_head_reasons(const FormCase& pour, const Tables& tables,
                                      OwnAnswers answers) {
    auto reasons = applying(reasons_of_the_concrete(pour, tables, answers));
    for (Phrase& reason : applying(reasons_of_the_impossible(pour))) {
        reasons.push_back(std::move(reason));
    }
    for (Phrase& reason : applying(reasons_of_the_placing(pour, tables.forms))) {
        reasons.push_back(std::move(reason));
    }
    return reasons;
}

std::vector<Phrase> assumptions(const FormCase& pour, const Tables& tables) {
    const bool on_request =
        pour.high_range_reducer && !pour.slump_maximum_stated && pour.formula_asked;
    return applying({
        {!pour.vibration.depth_m,
         {"assumes internal vibration no deeper than {deepest_vibration} below the surface",
          {quantity("deepest_vibration",
                    {tables.forms->aci.deepest_vibration_m.value, Measure::line_length})}}},
        {on_request,
         {"the file asks for a formula although a high-range water reducer is in the mix and no "
          "highest slump is stated: turn away concrete above {slump}",
          {quantity("slump", {pour.highest_slump_mm.value_or(0), Measure::slump})}}},
    });
}

std::vector<Phrase> low_form_remark(const FormCase& pour, const Tables& tables) {
    const double low_m = tables.forms->low_form_m.value;
    const bool is_low = head_m(pour) > 0 && !above(head_m(pour), low_m);
    return applying({{is_low,
                      {"designing forms up to about {height} high for the full liquid head costs "
                       "little: {head} here",
                       {quantity("height", {low_m, Measure::line_length}),
                        quantity("head", {head_kpa(pour), Measure::pressure})}}}});
}

} // namespace boardmark::core
