#pragma once

#include <boardmark/core/basis/source.hpp>
#include <boardmark/core/basis/typical_figure.hpp>
#include <boardmark/core/code/alkali_rules.hpp>
#include <boardmark/core/code/site.hpp>
#include <boardmark/core/forms/form_tables.hpp>
#include <boardmark/core/mix/grading_rules.hpp>
#include <boardmark/core/mix/kind.hpp>
#include <boardmark/core/mix/mix.hpp>
#include <boardmark/core/placing/placing_tables.hpp>
#include <boardmark/core/wall/joint_tables.hpp>
#include <boardmark/core/weather/weather_tables.hpp>

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// A row of a table that is entered by nominal maximum size. A gap in the print is NaN.
struct SizeRow {
    Source source;
    std::vector<double> sizes_mm; ///< increasing
    std::vector<double> values;   ///< one for each size
};

/// Mixing water of one slump band.
struct SlumpBand {
    double low_mm;
    double high_mm;
    SizeRow water_kg_m3;
};

/// A row of the strength table: the ratio for an average strength.
struct StrengthRow {
    double strength_mpa;
    std::optional<double> w_cm_plain;
    std::optional<double> w_cm_air_entrained;
    bool continues; ///< a row of another work that carries on where the method's table ends
    Source source;
};

/// Bulk volume of coarse aggregate by size and fineness modulus of the sand.
struct BulkVolumeTable {
    std::vector<double> fineness_moduli; ///< increasing
    std::vector<SizeRow> columns;        ///< one for each fineness modulus
    double lowest_continued;             ///< the line may be continued down to this modulus
    double highest_continued;            ///< and up to this one
};

/// Slump that the method recommends for a kind of construction, consolidated by vibration.
struct SlumpRecommendation {
    std::string construction;
    double low_mm;
    double high_mm;
    Source source;
};

/// Tables of the proportioning method in one system of units.
struct MethodTables {
    std::vector<SlumpBand> water_plain;         ///< increasing bands
    std::vector<SlumpBand> water_air_entrained; ///< increasing bands
    SizeRow entrapped_air_percent;
    double air_entrained_margin_percent; ///< air this far above the entrapped means air-entrained
    std::vector<StrengthRow> strength;   ///< increasing strength
    BulkVolumeTable bulk_volume;
    SizeRow fresh_density_plain_kg_m3;
    SizeRow fresh_density_air_entrained_kg_m3;
    std::vector<SlumpRecommendation> slump;
    std::vector<double> fineness_sieves_mm; ///< the series of the fineness modulus, increasing
    Source fineness_source;
};

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

/// Usual figures of an aggregate that has no test report yet.
struct TypicalAggregate {
    TypicalFigure relative_density; ///< SSD
    TypicalFigure absorption_percent;
    TypicalFigure dry_rodded_density_kg_m3;
    TypicalFigure fineness_modulus;
};

/// Rules of the trade that only advise.
struct PracticeTables {
    std::map<Kind, TypicalFigure> relative_density;
    /// By standard and type ("ASTM C494 F"), else by the name of the kind.
    std::map<std::string, TypicalFigure> standard_water_reduction_percent;
    TypicalAggregate aggregate;
    TypicalFigure heat_watch_kg_m3;        ///< binder above which heat deserves a look
    TypicalFigure strength_governs_margin; ///< of w/cm, from which a caution is due
    TypicalFigure lowest_w_cm; ///< below it a mix is hardly a wall's: a slip, or not placeable
    TypicalFigure lowest_sand_share_percent;
    TypicalFigure highest_sand_share_percent;
    TypicalFigure drinking_water_chloride_percent; ///< by mass of the water
    TypicalFigure slump_measures_to_mm;   ///< above it flow and segregation are tested instead
    TypicalFigure spare_strength_percent; ///< above the required average, from which it is spare
    TypicalFigure formula_slump_mm;       ///< highest slump for which form-pressure formulas hold
    TypicalFigure face_deduction_matters_percent; ///< of the concrete, from which it is deducted
    TypicalFigure most_held_back_percent; ///< of the water to batch, beyond which it is a slip
    TypicalFigure cut_course_percent;   ///< of a course, below which a cut one looks like a mistake
    TypicalFigure board_end_stagger_mm; ///< least, between board ends of neighbouring courses
    TypicalFigure tie_beside_joint_mm;  ///< least, from a contraction joint
    TypicalFigure lift_line_off_joint_mm; ///< most, at which it still hides in a board joint
};

/// How the next trial corrects what this one showed.
struct TrialAdjustments {
    double water_kg_m3_per_mm;        ///< of slump
    double water_kg_m3_per_air_point; ///< more air, less water at the same slump
    Source source;
    TypicalFigure slump_reading_mm;  ///< the step to which slump is reported
    TypicalFigure dose_step_percent; ///< of the dose, where no slump gain is known
};

/// How far what is weighed may be from what was to be weighed, percent.
struct BatchingTolerances {
    TypicalFigure binder_percent;
    TypicalFigure small_batch_over_percent; ///< binder of a small batch, over only
    TypicalFigure aggregate_percent;
    TypicalFigure water_percent;
    TypicalFigure admixture_percent;
};

/// Tolerance of slumps up to a nominal one.
struct SlumpTolerance {
    double up_to_mm;
    TypicalFigure within_mm;
};

/// Least measure of the density test up to a nominal maximum size.
struct DensityMeasure {
    double size_mm;
    TypicalFigure least_m3;
};

/// What a trial batch is held against and corrected by.
struct TrialTables {
    TrialAdjustments adjustments;
    BatchingTolerances batching;
    std::vector<SlumpTolerance> slump;       ///< increasing
    std::vector<DensityMeasure> measures;    ///< increasing sizes
    TypicalFigure measure_shortfall_percent; ///< that a measure may hold less than nominal
    TypicalFigure density_difference_kg_m3;  ///< within which two operators agree
    TypicalFigure air_gap_watch_percent;     ///< between gravimetric and metered air
    TypicalFigure air_gap_most_percent;      ///< beyond which a figure of the trial is wrong
    TypicalFigure yield_off_most_percent;    ///< likewise, of the relative yield
};

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
    double continuous_factor; ///< on that deviation
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
    TypicalFigure aci_range_percent;  ///< of the mean, within a test of cylinders
};

/// Slag cement's heat up to a share of the cementitious material.
struct SlagHeat {
    double up_to_percent;
    double factor;
};

/// Heat of hydration as a part of portland cement's.
struct HeatTables {
    TypicalFigure rise_k_of_100_kg_m3;    ///< of portland cement, in a thick section
    std::map<std::string, double> factor; ///< by kind, fly ash with its class: "fly ash F"
    std::vector<SlagHeat> slag;           ///< increasing shares
};

/// When a control chart speaks.
struct ControlChartRules {
    TypicalFigure limit_in_deviations; ///< from the mean to a control limit
    TypicalFigure run_length;          ///< values in a row on one side of the mean
    TypicalFigure firm_count;          ///< values from which the limits are firm
};

/// Most fines up to a size of stone, kg/m3: linear between two amounts of cement.
struct MostFines {
    double up_to_mm;
    double cement_low_kg_m3;
    double at_low_kg_m3;
    double cement_high_kg_m3;
    double at_high_kg_m3;
    double raised_by_kg_m3; ///< at most, for cement above the second amount and for pozzolans
    Source source;
};

/// What a board-marked face is advised to have.
struct FinishTables {
    TypicalFigure least_paste_percent;
    TypicalFigure least_mortar_percent;
    TypicalFigure largest_size_mm;
    TypicalFigure w_cm_change;   ///< that shows in colour
    Source constancy_source;     ///< of one plant and unchanged materials
    TypicalFigure bleeding_w_cm; ///< above it a sign of bleeding
    TypicalFigure bleeding_signs;
    TypicalFigure redosings; ///< of a reducer on site, at most
    TypicalFigure redose_revolutions;
    SizeRow least_fines_kg_m3;
    double least_fines_below_mm; ///< the sieve below which they count
    double most_fines_below_mm;
    double most_fines_strength_mpa;             ///< up to which a maximum is published
    std::vector<MostFines> most_fines_freezing; ///< increasing sizes
    std::vector<MostFines> most_fines_other;
};

/// A size of reinforcing bar as the trade names it.
struct BarSize {
    std::string name; ///< "No. 4", "16 mm"
    double diameter_mm;
    double area_mm2; ///< as printed, else of the circle
    Source source;
};

/// Every published number that a calculation uses, in one system of units.
struct Tables {
    UnitSystem system;
    double water_density_kg_m3; ///< as the handbooks of that system print it
    MethodTables method;
    CodeTables code;
    PracticeTables practice;
    TrialTables trial;
    StrengthTables strength;
    HeatTables heat;
    ControlChartRules control_chart;
    FormTables forms;
    WeatherTables weather;
    PlacingTables placing;
    JointTables joints;
    FinishTables finish;
    GradingRules grading;
    AlkaliRules alkali;
    std::vector<BarSize> bars; ///< of either system, each system's increasing

    /// The class of that name. Asserts that the code has it: the reader refuses other names.
    const ExposureClass& exposure_class(const std::string& name) const;
};

} // namespace boardmark::core
