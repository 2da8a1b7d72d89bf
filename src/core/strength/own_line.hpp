#pragma once

#include <boardmark/core/basis/phrase.hpp>
#include <boardmark/core/basis/step.hpp>
#include <boardmark/core/mix/requirements.hpp>

#include <variant>

namespace boardmark::core {

/// How strength changes with w/cm, with its band, as a clause.
Phrase fall_of(const StrengthLine& line);

/// The ratio at which the line of own results reaches an average strength, as a step with basis,
/// number, range, fit and side; or, where it does not reach it or gives none, why. Below its
/// weakest strength its highest ratio is used.
std::variant<Step, Phrase> ratio_by_own_line(const OwnLine& own, double average_mpa);

} // namespace boardmark::core
