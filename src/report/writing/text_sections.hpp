#pragma once

#include <boardmark/core/basis/step.hpp>
#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/checks/verdict_summary.hpp>
#include <boardmark/report/mix/mix_report.hpp>

#include "flow.hpp"

#include <string>
#include <vector>

namespace boardmark::report {

/// The name of a section, set off from what stands above.
Flow section(const std::string& name);

/// The name of a section that a page folds: what only explains.
Flow folded_section(const std::string& name);

/// The same where one of the two columns of a sheet is too narrow.
Flow wide_section(const std::string& name);

/// The same of what a sheet has no room for: it stands on the screen alone.
Flow screen_section(const std::string& name);

/// What must not be done with concrete of which some requirement is not met.
constexpr const char* not_to_be_used = "DO NOT USE AS IT IS";

/// The headline of a result: what fails, is to be watched, is open. Green only where all holds.
///
/// @param scope of the checks that it leads to, where a result holds those of several mixes
Flow verdict_line(const core::VerdictSummary& summary, core::UnitSystem system,
                  const std::string& refusal = not_to_be_used, const std::string& scope = "");

/// The strength expected beside the strength required, where the checks speak of it.
Flow strength_line(const std::vector<core::Check>& checks, core::UnitSystem system);

/// The headline of one mix with its strength below.
Flow verdict_line(const std::vector<core::Check>& checks, core::UnitSystem system,
                  const std::string& refusal = not_to_be_used);

/// A check as it is told, with the source of its limit.
CheckRow row_of(core::Check check, core::UnitSystem system);

/// What fails, is to be watched or is open, with what settles it; then what holds, folded.
Flow checks_of(std::vector<CheckRow> rows, const std::string& scope = "");
Flow text_of_checks(const std::vector<core::Check>& checks, core::UnitSystem system,
                    const std::string& scope = "");

Flow text_of_cautions(const std::vector<core::Phrase>& cautions, const TextStyle& style);

/// Steps that are done one after the other, numbered.
Flow text_of_order(const std::vector<core::Phrase>& order, const TextStyle& style);

/// Every step in a line or two: its value and why.
Flow text_of_steps(const std::vector<core::Step>& steps, core::UnitSystem system);

/// Every step with its reason, its source and how well that is known, its inputs.
Flow text_of_reasons(const std::vector<core::Step>& steps, const TextStyle& style);

/// Where the limit of every check comes from, and how well that is known.
Flow text_of_limits(const std::vector<core::Check>& checks);

/// What is asked of the fresh concrete.
std::string air_text(const core::Requirements& requirements, core::UnitSystem system);
std::string slump_text(const core::Requirements& requirements, core::UnitSystem system);

/// The name of a step's quantity in words: "required average strength".
std::string quantity_name(const core::Step& step, core::UnitSystem system);

/// A value of a step, or a dash where it has none.
std::string shown_value(const core::Step& step, core::UnitSystem system);

} // namespace boardmark::report
