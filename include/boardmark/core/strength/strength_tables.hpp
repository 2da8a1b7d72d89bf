#pragma once

#include <boardmark/core/basis/source.hpp>
#include <boardmark/core/basis/typical_figure.hpp>
#include <boardmark/core/strength/core_rules.hpp>

#include <string>
#include <vector>

namespace boardmark::core {

/// How ACI 318 judges strength tests.
struct AciAcceptance {
    int averaged_tests;               ///< consecutive ones, whose averages are held
    double single_test_allowance_mpa; ///< below the specified strength, up to the step
    double single_test_fraction;      ///< of the specified strength, above the step
    double step_mpa;
    Source source;
    double large_diameter_mm; ///< cylinders of at least this diameter count as large
    int large_specimens;      ///< least of them in one test
    int small_specimens;
    Source specimen_source;
};

/// How EN 206 judges strength tests: margins over the characteristic strength.
struct EnConformity {
    double single_test_allowance_mpa;
    int initial_tests; ///< consecutive ones, whose averages are held at first
    double initial_margin_mpa;
    int continuous_from; ///< tests from which the record's own deviation counts
    int continuous_tests;
    double continuous_factor;         ///< on that deviation
    double continuous_most_deviation; ///< of later tests, over that one
    int identity_few_tests;
    double identity_few_margin_mpa;
    int identity_most_tests;
    double identity_more_margin_mpa;
    double range_percent; ///< of the mean, most within one test
    double cylinder_diameter_mm;
    double cylinder_height_mm;
    double cube_edge_mm;
    Source source;
};

/// A class of EN 206 with its strength by either kind of specimen.
struct StrengthClass {
    std::string name; ///< "C30/37"
    double cylinder_mpa;
    double cube_mpa;
};

/// Mean range of some specimens over their standard deviation.
struct RangeFactor {
    int specimens;
    double factor;
};

/// A word for a scatter up to a coefficient of variation.
struct ScatterRating {
    double at_most_percent;
    std::string word;
};

/// How far the specimens of one test may lie apart, percent of their mean.
struct RangeRules {
    TypicalFigure of_two;
    TypicalFigure of_three; ///< or of more
};

/// What strength records are held against and evaluated by.
struct StrengthTables {
    AciAcceptance aci;
    EnConformity en;
    std::vector<StrengthClass> classes;
    std::vector<RangeFactor> range_factors; ///< increasing specimens
    Source range_source;
    std::vector<ScatterRating> within_test; ///< increasing
    Source within_test_source;
    TypicalFigure confidence_percent; ///< of bands and limits
    TypicalFigure least_pairs;        ///< of batches, for a projection from an early age
    TypicalFigure age_tolerance_d;    ///< within which a test is one of the strength age
    RangeRules large_range;           ///< within a test of large cylinders
    RangeRules small_range;           ///< and of small ones
    CoreRules cores;
};

/// When a control chart speaks.
struct ControlChartRules {
    TypicalFigure limit_in_deviations; ///< from the mean to a control limit
    TypicalFigure run_length;          ///< values in a row on one side of the mean
    TypicalFigure firm_count;          ///< values from which the limits are firm
};

} // namespace boardmark::core
