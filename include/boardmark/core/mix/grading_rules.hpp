#pragma once

#include <boardmark/core/basis/source.hpp>
#include <boardmark/core/basis/typical_figure.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// How much of an aggregate may pass one sieve, percent by mass.
struct SieveLimits {
    std::string name; ///< "No. 8"
    double opening_mm;
    double low_percent;
    double high_percent;
};

/// The grading of coarse aggregate that a size number stands for.
struct SizeNumber {
    std::string number;              ///< "57"
    std::vector<SieveLimits> sieves; ///< coarsest first
    Source source;                   ///< the least sure of its sieves
};

/// A sieve on which all aggregates together are told, and how much it is advised to hold back.
struct RetainedLimits {
    std::string name; ///< "No. 8"
    double opening_mm;
    std::optional<double> low_percent = {}; ///< of the volume of all aggregate
    std::optional<double> high_percent = {};
};

/// Where a mix stands by how coarse its stone is and how much passes No. 8.
struct WorkabilityRules {
    TypicalFigure binder_kg_m3;      ///< at which the factor is what passes the fine sieve
    TypicalFigure binder_step_kg_m3; ///< more binder by this much counts as `step_points` more
    TypicalFigure step_points;
    TypicalFigure coarse_sieve_mm;
    TypicalFigure fine_sieve_mm;
    TypicalFigure low; ///< workability factor of a good mix
    TypicalFigure high;
    TypicalFigure coarseness_low; ///< coarseness factor of a well graded one
    TypicalFigure coarseness_high;
    TypicalFigure line_start; ///< of the control line, at coarseness 0
    TypicalFigure line_slope; ///< by which it falls with each point of coarseness
};

/// What all aggregates together are advised to hold back on each sieve.
struct RetainedRules {
    std::vector<RetainedLimits> sieves; ///< coarsest first
    Source source;
    TypicalFigure least_coarse_sand_percent; ///< on No. 8, 16 and 30 together
    TypicalFigure least_fine_sand_percent;   ///< on No. 30 to 200 together
    TypicalFigure most_fine_sand_percent;
    TypicalFigure usual_low_percent; ///< on each sieve, the older guideline
    TypicalFigure usual_high_percent;
};

/// What gradings are held against.
struct GradingRules {
    std::vector<SieveLimits> fine; ///< coarsest first
    Source fine_source;
    TypicalFigure most_between_percent; ///< of the limits' sieves, two that follow each other
    TypicalFigure density_exponent;     ///< of the maximum density line
    std::vector<SizeNumber> coarse;     ///< by size number
    RetainedRules retained;
    WorkabilityRules workability;
};

} // namespace boardmark::core
