#pragma once

#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/forms/form_tables.hpp>
#include <boardmark/core/wall/form_case.hpp>
#include <boardmark/core/wall/wall.hpp>

#include <optional>

namespace boardmark::core {

/// The class that the file states, or that of the spread which it states.
std::optional<int> stated_flow_class(const WallPlacing& placing, const FlowClasses& classes);

/// The class by which the forms are loaded: the more fluid of the stated one and of what the
/// highest slump permitted tells where the two disagree.
int governing_flow_class(int stated, std::optional<double> highest_slump_mm,
                         const FlowClasses& classes);

/// `placing.flow_class`: a `watch` where the stated class is not that of the highest slump
/// permitted at placing. Nothing where the two agree, where no class is stated or no slump measures
/// it.
std::optional<Check> check_flow_class(const Wall& wall, const FormCase& pour,
                                      const FlowClasses& classes);

} // namespace boardmark::core
