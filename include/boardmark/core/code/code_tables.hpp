#pragma once

#include <boardmark/core/basis/size_row.hpp>
#include <boardmark/core/basis/source.hpp>
#include <boardmark/core/code/site.hpp>

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// Limits of one exposure class for one kind of member or binder.
struct ClassLimits {
    std::optional<double> max_w_cm;
    double min_strength_mpa;      ///< as printed in the file's system
    double min_strength_twin_mpa; ///< as printed in the other system
    Source source;
};

/// One exposure class of a code.
struct ExposureClass {
    std::string name;    ///< "F2"
    std::string meaning; ///< in one plain line
    ClassLimits limits;
    std::optional<ClassLimits> plain_limits;      ///< where plain concrete has others
    std::optional<ClassLimits> pozzolanic_limits; ///< where a pozzolan or slag opens another option
    std::optional<double> chloride_percent; ///< water-soluble, by mass of cementitious material
    bool bars_calcium_chloride = false;
    bool asks_reactivity_evidence = false;    ///< that the aggregate does not swell with alkali
    std::vector<std::string> sulfate_cements; ///< designations that the class accepts
    std::string other_editions;               ///< what another edition says; may be empty

    char category() const { return name.front(); }
};

/// Air that the code demands by class and size.
struct AirRules {
    std::map<std::string, SizeRow> by_class; ///< percent
    double tolerance_percent;
    double reduction_percent; ///< permitted for stronger concrete
    double reduction_above_strength_mpa;
    double reduction_above_strength_twin_mpa; ///< as the other system prints it
    std::string reduction_in_other_editions;
};

/// Caps on supplementary materials under deicers, percent of all cementitious material by mass.
struct Cap {
    double percent;
    Source source;
};

struct SupplementaryCaps {
    std::string class_name; ///< the class they apply to
    Cap fly_ash;            ///< with natural pozzolans
    Cap slag_cement;
    Cap silica_fume;
    Cap total;
    Cap ash_and_fume;
};

/// Cement for sulfate and sea water where the designation alone does not decide.
struct SeawaterCement {
    std::string class_name;
    double max_c3a_percent;
    double max_w_cm;
    Source source;
};

/// The standard deviation's factor for a number of tests.
struct DeviationFactor {
    double tests;
    double factor;
};

/// Rules for the required average strength.
struct AverageStrengthRules {
    std::vector<DeviationFactor> factors; ///< increasing tests; the first is the least that counts
    double average_of_three_factor;
    double single_test_factor;
    double single_test_allowance_mpa; ///< up to the step
    double single_test_fraction;      ///< of the specified strength, above the step
    double step_mpa;
    double no_record_low_step_mpa;
    double no_record_low_margin_mpa;
    double no_record_middle_margin_mpa;
    double no_record_high_factor;
    double no_record_high_margin_mpa;
    double oldest_record_d;
    double record_strength_distance_mpa;
    Source with_records;
    Source without_records;
    Source without_records_above_step;
};

/// Largest aggregate against what it must pass, as fractions of the dimension.
struct SizeRules {
    double of_form;
    double of_slab;
    double of_bar_spacing;
    double of_cover;
    Source source;
    Source cover_source;
};

/// Exposure classes and other requirements of one code in one system of units.
struct CodeTables {
    std::string name; ///< "ACI 318-19"
    std::vector<ExposureClass> classes;
    SiteRules site;
    AirRules air;
    SupplementaryCaps supplementary;
    SeawaterCement seawater;
    AverageStrengthRules average_strength;
    SizeRules size;
};

} // namespace boardmark::core
