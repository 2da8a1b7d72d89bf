#pragma once

#include <boardmark/core/forms/form_pressure.hpp>
#include <boardmark/core/forms/form_tables.hpp>

#include <string>

namespace boardmark::core {

constexpr double standard_gravity_m_s2 = 9.80665; // exact by definition

/// Weight of concrete from its density.
inline double weight_kn_m3(double density_kg_m3) {
    return density_kg_m3 * standard_gravity_m_s2 / 1000;
}

/// Depth of fresh concrete in one lift: of the pour, at most the form's height.
double head_m(const FormCase& pour);

/// Its pressure as a liquid, at the bottom.
double head_kpa(const FormCase& pour);

/// Which of the general reasons for full head a method has its own answer to.
struct OwnAnswers {
    bool fluid_concrete = false; ///< the method has classes for high slump and self-consolidation
};

/// Why a pour must be designed for the full liquid head whatever the method; empty where a formula
/// may be used.
std::vector<Phrase> full_head_reasons(const FormCase& pour, const Tables& tables,
                                      OwnAnswers answers = {});

/// What is assumed of a pour where a formula is used.
std::vector<Phrase> assumptions(const FormCase& pour, const Tables& tables);

/// Puts what a formula assumes into its result, first among the remarks.
///
/// @param cement_marks of the coefficient of the cementitious material, where the method has one
void take_assumptions(FormPressure& result, std::vector<Phrase> assumed,
                      const Marks& cement_marks = {});

/// The same of a pier that counts as a column though nobody states that it is one.
void take_pier(FormPressure& result, bool is_assumed);

/// That full head costs little on a low form; empty for a high one.
std::vector<Phrase> low_form_remark(const FormCase& pour, const Tables& tables);

/// A coefficient of the cementitious material, the highest that what is known allows.
struct CementFactor {
    double value;
    Phrase reason;
    Marks marks;
};
CementFactor cement_factor(const FormCase& pour, const CementGroups& groups, const Tables& tables);

/// A pressure of the formula with the least that the method allows.
struct FormulaPressure {
    double formula_kpa;
    double floor_kpa; ///< 0 where the method has none
    Source formula_source;
    Source floor_source;
};

/// Finishes a result whose formula holds: floor, cap of the head, envelope, marks.
void take_formula(FormPressure& result, const FormCase& pour, const FormulaPressure& formula,
                  const Tables& tables);

/// Finishes a result that its reasons (`why`) send to the full liquid head.
void take_full_head(FormPressure& result, const FormCase& pour, const Tables& tables);

/// Fills a result by the formula of one method.
using RiseFormula = void (*)(FormPressure& result, const FormCase& pour, const Tables& tables);

/// The pressure by a method that needs the rate of rise, the temperature and the slump, and has no
/// answer of its own to what rules formulas out: its formula, or the full head with the reasons.
FormPressure pressure_by_rise(std::string method, const FormCase& pour, const Tables& tables,
                              RiseFormula formula);

/// A coefficient as a step of the result.
Step form_step(std::string name, Quantity value, Phrase reason, const Source& source,
               Marks marks = {});

} // namespace boardmark::core
