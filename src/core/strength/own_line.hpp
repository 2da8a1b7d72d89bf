#pragma once

#include <boardmark/core/basis/phrase.hpp>
#include <boardmark/core/basis/step.hpp>
#include <boardmark/core/mix/requirements.hpp>

#include <variant>

namespace boardmark::core {

/// How strength changes with w/cm, with its band, as a clause.
Phrase fall_of(const StrengthLine& line);

/// A ratio by the line of own results.
struct OwnRatio {
    double w_cm;
    bool is_weakest; ///< the line's highest ratio: it is stronger there than what is required
};

/// The ratio at which the line of own results reaches an average strength; or, where it does not
/// reach it or gives none, why. Below its weakest strength its highest ratio is used.
std::variant<OwnRatio, Phrase> ratio_by_own_line(const OwnLine& own, double average_mpa);

/// That ratio with basis, number, range, fit and side.
Step own_line_step(const OwnRatio& ratio, const OwnLine& own, double average_mpa);

} // namespace boardmark::core
