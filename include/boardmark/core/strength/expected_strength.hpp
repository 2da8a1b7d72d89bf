#pragma once

#include <boardmark/core/basis/phrase.hpp>
#include <boardmark/core/basis/source.hpp>
#include <boardmark/core/basis/step.hpp>
#include <boardmark/core/mix/proportions.hpp>
#include <boardmark/core/mix/requirements.hpp>

#include <optional>
#include <vector>

namespace boardmark::core {

struct Tables;

/// The average strength that a ratio is expected to reach, an estimate until it is tested.
struct ExpectedStrength {
    double mpa;
    const Source* source; ///< of the tables, or of static storage where it is by own results
    bool interpolated = false;
    bool continued = false;       ///< by a row of another work that carries on
    bool in_place_of_own = false; ///< by the table, as the own curve or line gives no strength here

    Marks marks() const;
};

/// At the ratio of a mix: by the own curve or line where there is one, else by the table of the
/// method. The table also stands in where own data do not reach the ratio or cannot be read, unless
/// their nearest end tells more than it. Nothing where none reaches the ratio: beyond their ends
/// strength is not guessed.
std::optional<ExpectedStrength> expected_strength(const Requirements& requirements,
                                                  const Proportions& proportions,
                                                  const Tables& tables);

/// Where the ratio of a mix is higher than curve, line or table reach: their weakest strength,
/// which the mix stays below.
std::optional<ExpectedStrength> strength_bound(const Requirements& requirements,
                                               const Proportions& proportions,
                                               const Tables& tables);

/// Where the ratio of a mix is lower than curve, line or table reach: their strongest strength,
/// which the mix does not stay below as long as strength goes on rising.
std::optional<ExpectedStrength> strength_floor(const Requirements& requirements,
                                               const Proportions& proportions,
                                               const Tables& tables);

/// How the expected strength falls with w/cm, to be drawn.
struct StrengthOverRatio {
    std::vector<CurvePoint> points = {};   ///< as far as own data or the table reach
    std::optional<double> chosen_mpa = {}; ///< at the ratio of the mix
    Source source = {};
};

/// The strengths that `expected_strength` gives between the highest and the lowest ratio of use. No
/// points where it gives none.
StrengthOverRatio strength_over_ratio(const Requirements& requirements,
                                      const Proportions& proportions, const Tables& tables);

} // namespace boardmark::core
