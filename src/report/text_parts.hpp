#pragma once

#include <boardmark/core/check.hpp>
#include <boardmark/core/step.hpp>
#include <boardmark/report/mix_report.hpp>

#include "flow.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace boardmark::report {

/// The name of a section, set off from what stands above.
Flow section(const std::string& name);

/// How a verdict is said.
struct VerdictWords {
    std::string_view refusal = "DO NOT USE AS IT IS"; ///< where a requirement is not met
    bool listed_below = true;                         ///< whether the checks follow further down
};

/// One sentence that says whether the mix may be used as far as the checks could tell.
Flow verdict_line(const std::vector<core::Check>& checks, const VerdictWords& say = {});

Flow text_of_checks(const std::vector<core::Check>& checks, const TextStyle& style);
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
