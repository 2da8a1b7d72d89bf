#pragma once

#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/forms/form_pressure.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// The methods that a pour is shown by, and which of them governs: the one asked for, else the
/// highest.
struct MethodChoice {
    std::vector<FormPressure> pressures; ///< ACI first; others where their data are stated
    std::size_t governing = 0;
    bool asked = false;                        ///< the file asks for the governing one
    std::vector<PressureMethod> of_rises = {}; ///< what the allowable rise goes by
};
MethodChoice method_choice(const FormCase& pour, const std::string& asked, const Tables& tables);

/// The least of the rises that the governing methods allow.
AllowableRise least_rise(const FormCase& pour, const FormDemand& demand, const MethodChoice& choice,
                         const Tables& tables);

/// `ID.other_method` beside a check of the method asked for: a `watch` where another method shown
/// asks more than is borne. Nothing where none does.
std::optional<Check> other_method_check(const Check& check, const FormDemand& demand,
                                        const MethodChoice& choice);

/// `forms.pressure.other_method` where of the consistency class and the end of setting, which
/// DIN 18218 asks for, one alone is stated, so that nobody knows whether it presses harder, asked
/// for another or not. Nothing where it does not matter.
std::optional<Check> missing_method_check(const FormCase& pour, const MethodChoice& choice);

} // namespace boardmark::core
