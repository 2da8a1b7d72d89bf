#pragma once

#include <boardmark/core/phrase.hpp>
#include <boardmark/core/requirements.hpp>
#include <boardmark/core/step.hpp>

#include <variant>

namespace boardmark::core {

/// The ratio at which the line of own results reaches an average strength, as a step with basis,
/// number, range, fit and side; or, where it does not reach it, why. Below its weakest strength its
/// highest ratio is used.
std::variant<Step, Phrase> ratio_by_own_line(const OwnLine& own, double average_mpa);

} // namespace boardmark::core
