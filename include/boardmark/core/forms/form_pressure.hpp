#pragma once

#include <boardmark/core/basis/phrase.hpp>
#include <boardmark/core/basis/source.hpp>
#include <boardmark/core/basis/step.hpp>
#include <boardmark/core/wall/form_case.hpp>

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace boardmark::core {

struct Tables;

/// What the greatest pressure comes from.
enum class PressureGovernor {
    formula,
    floor,       ///< the method's least pressure
    liquid_head, ///< the formula does not hold or is not to be used: `why` says the reasons
    head,        ///< the concrete is not deep enough to press as hard as formula or floor say
};

/// "formula", "floor", "liquid_head", "head".
std::string_view name_of(PressureGovernor governor);

/// A point of the envelope of pressure.
struct EnvelopePoint {
    double depth_m; ///< below the top of the concrete
    double kpa;
};

/// The greatest pressure of fresh concrete on a form by one method, with its reasons. For planning:
/// form_caution() belongs beside it wherever it is shown. A figure of the pour that is impossible,
/// a rise that is not a finite number above 0 say, is a reason for full head; without a possible
/// height and density there is no head either: `kpa` is NaN, and the checks say "not checked".
struct FormPressure {
    std::string method; ///< "ACI 347R-14", "CIRIA 108", "DIN 18218"
    double kpa = 0;
    double head_kpa = 0; ///< of the whole depth of concrete as a liquid
    std::optional<double> formula_kpa =
        {}; ///< before floor and head; absent where no formula holds
    PressureGovernor governed_by = PressureGovernor::liquid_head;
    bool valid = false;               ///< the formula may be used: no reason forced full head
    bool data_suffice = false;        ///< all that this method alone asks for is known
    std::vector<Phrase> why = {};     ///< reasons that forced full head
    std::vector<Phrase> remarks = {}; ///< what was assumed, and what to think of
    std::vector<Phrase> assumed = {}; ///< of the remarks: what a stated fact would settle
    std::optional<Phrase> assumed_density = {}; ///< likewise; the head too rests on it
    std::vector<Step> steps = {};               ///< coefficients and pressures, with their reasons
    std::vector<EnvelopePoint> envelope = {};   ///< from the top down, straight lines between
    double hydrostatic_depth_m = 0;             ///< to which the pressure grows as in a liquid
    Source source = {};                         ///< of the formula used, or of the method
    Marks marks = {};                           ///< of all steps that the pressure rests on
};

/// Lateral pressure by ACI 347R-14, as printed in the tables' system.
FormPressure aci_form_pressure(const FormCase& pour, const Tables& tables);

/// By CIRIA report 108.
FormPressure ciria_form_pressure(const FormCase& pour, const Tables& tables);

/// By DIN 18218:2010; wants the consistency class and the end of setting.
FormPressure din_form_pressure(const FormCase& pour, const Tables& tables);

/// Concrete pumped from below: the pressure is the least factor on the head. What a pump presses
/// beyond it no key states.
bool is_pumped(const FormPressure& pressure);
const char* pump_is_open(); ///< ends a sentence

/// One of the methods above.
using PressureMethod = FormPressure (*)(const FormCase& pour, const Tables& tables);

/// All of them, in that order.
std::span<const PressureMethod> pressure_methods();
std::vector<FormPressure> form_pressures(const FormCase& pour, const Tables& tables);

/// The pressure at a depth below the top of the concrete, from its envelope; nothing above the top,
/// below the bottom the greatest.
double pressure_at(const FormPressure& pressure, double depth_m);

/// How fast concrete may rise without pressing harder than a form or its ties bear.
struct AllowableRise {
    std::optional<double> rise_m_h = {};   ///< absent where `reason` says why
    std::optional<double> usable_m_h = {}; ///< the same rounded down to 0.1 ft/h or 0.05 m/h
    bool any = false;                      ///< the form bears full head: the rate does not matter
    /// What is borne hangs on what is not known: the pressure of a pump, the air of a load.
    bool open = false;
    Phrase reason;
};

/// What a pressure asks of a form or of its ties, and what they bear.
struct FormDemand {
    std::function<double(const FormPressure&)> asked; ///< never falls where the pressure grows
    double borne;                                     ///< > 0
    Measure measure; ///< of both: Measure::pressure or Measure::force
};

/// The fastest rise at which the pressure by a method asks no more than is borne. Nothing where the
/// pour forces full head that is not borne, or where no rate is slow enough: the method's least
/// pressure may be more than is borne. Nothing either where the pour's height, its density or what
/// is borne is no finite number above 0.
AllowableRise allowable_rise(const FormCase& pour, const FormDemand& demand, const Tables& tables,
                             PressureMethod method);

/// The same for the greatest pressure against what the form is designed for.
AllowableRise allowable_rise(const FormCase& pour, double design_kpa, const Tables& tables,
                             PressureMethod method = aci_form_pressure);

/// Stands beside every pressure and every tie load.
const Phrase& form_caution();

} // namespace boardmark::core
