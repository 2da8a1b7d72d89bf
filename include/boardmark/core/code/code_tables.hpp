#pragma once

#include <boardmark/core/basis/deferred.hpp>
#include <boardmark/core/basis/size_row.hpp>
#include <boardmark/core/basis/source.hpp>
#include <boardmark/core/code/addition.hpp>
#include <boardmark/core/code/binder_rules.hpp>
#include <boardmark/core/code/chloride_rules.hpp>
#include <boardmark/core/code/site.hpp>

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace boardmark::core {

/// Limits of one exposure class for one kind of member or binder.
struct ClassLimits {
    std::optional<double> max_w_cm;
    double min_strength_mpa;      ///< by cylinders, as printed in the file's system; NaN: none
    double min_strength_twin_mpa; ///< as printed in the other system
    Source source;
    std::optional<double> min_cube_strength_mpa = {}; ///< where the code prints a cube's
    std::optional<double> min_cement_kg_m3 = {};
    std::optional<double> min_cement_with_additions_kg_m3 = {}; ///< less, where additions count
    std::string strength_name = {}; ///< as the code writes it, "C30/37"; empty: as a quantity
    std::string strength_age = {};  ///< at which the code asks it, "56 d"; empty: not said
    std::optional<double> strength_age_d = {}; ///< the same as a number
};

/// A kind of attack, of which concrete has one class.
struct ExposureCategory {
    std::string name;      ///< "F"
    std::string subject;   ///< "freezing and thawing"
    std::string step;      ///< name of the step by which a site gives its class
    bool asks_air = false; ///< whether one of its classes asks air
};

/// What a class says of chlorides from outside.
enum class Salt {
    unsaid,
    none,    ///< none come
    deicers, ///< deicing salt comes
    any,     ///< some come: of deicing salt, sea water or its spray
};

/// The most of an addition, percent of all cementitious material by mass.
struct Cap {
    Addition addition;
    double percent;
    Source source;
};

/// A class that another one asks beside it, in reinforced concrete.
struct ClassBeside {
    std::string name;
    std::string reason; ///< what the asking class means, after its name
    bool of_plain_too;  ///< asked of concrete without bars as well
};

/// One exposure class of a code.
struct ExposureClass {
    std::string name;     ///< "F2"
    std::size_t category; ///< its place in CodeTables::categories
    std::string meaning;  ///< in one plain line
    ClassLimits limits;
    std::optional<ClassLimits> plain_limits;      ///< where plain concrete has others
    std::optional<ClassLimits> pozzolanic_limits; ///< where a pozzolan or slag opens another option
    std::optional<double> chloride_percent; ///< water-soluble, by mass of cementitious material
    bool bars_calcium_chloride = false;
    std::optional<Source> reactivity_evidence; ///< asked: that the aggregate does not swell
    std::vector<std::string> sulfate_cements;  ///< designations that the class accepts
    std::string cements_where = {};            ///< of what attack alone; empty: of all in the class
    bool needs_pozzolan = false;               ///< or slag beside the cement
    std::optional<SizeRow> air_percent;        ///< total air by nominal maximum size
    std::vector<Cap> caps = {};
    std::string caps_open_with = {}; ///< class beside which it is not known whether there are caps
    std::optional<ClassBeside> beside = {};
    Salt salt = Salt::unsaid;
    bool never_freezes = false;
    std::string other_editions = {}; ///< what another edition says; may be empty
};

/// How the air that classes demand is held.
struct AirRules {
    double tolerance_percent; ///< of a load as it is tested, on both sides of its target
    Source tolerance_source;
    double scatter_percent; ///< the tolerance of delivery that real loads keep, at least that above
    double below_percent;   ///< points below a class's figure within which a mix holds
    double above_percent;   ///< points above it
    Source above_source;
    double reduction_percent; ///< permitted for stronger concrete
    double reduction_above_strength_mpa;
    double reduction_above_strength_twin_mpa; ///< as the other system prints it
    std::string reduction_in_other_editions;
    std::optional<double> none_from_cube_mpa = {}; ///< of cubes, from which no air is asked

    /// Whether the figure of a class is the least air, and not the middle of a tolerance.
    bool states_least() const { return below_percent < tolerance_percent; }
};

/// Cement for sulfate and sea water where the designation alone does not decide.
struct SeawaterCement {
    std::string class_name; ///< of sea water
    double max_c3a_percent;
    double max_w_cm;
    Source source;
};

/// The standard deviation's factor for a number of tests.
struct DeviationFactor {
    double tests;
    double factor;
};

/// The standard deviation that is taken up to a specified strength where no record tells it.
struct AssumedDeviation {
    double up_to_mpa; ///< specified strength; the last row is for all above as well
    double mpa;
    Source source;
};

/// A required average that is the specified strength and a number of deviations.
struct DeviationRules {
    double deviations;
    double least_tests; ///< of a record that counts
    double floor_mpa;   ///< least deviation of a record
    Source source;
    std::vector<AssumedDeviation> assumed; ///< increasing strengths
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
    std::optional<DeviationRules> by_deviations = {}; ///< the code's own, instead of those above
    bool borrowed = false; ///< the code's own rule is not known here: those above stand in
};

/// Largest aggregate against what it must pass, as fractions of the dimension.
struct SizeRules {
    double of_form;
    double of_slab;
    double of_bar_spacing;
    double of_cover;
    Source source;
    Source cover_source;
    bool borrowed = false; ///< the code's own rules are not known here: those of another stand in
};

/// Exposure classes and other requirements of one code in one system of units.
struct CodeTables {
    std::string name;         ///< as files write it: "ACI 318-19"
    std::string edition = {}; ///< of the work, "2019"
    std::string scope = {}; ///< why its limits may not be those of the place; empty: nothing known
    std::string strength_rule = {}; ///< how much of the tests may fall below the specified strength
    bool several_of_category = false; ///< whether a mix may have more classes of one category
    std::vector<ExposureCategory> categories; ///< in the order of the code
    std::vector<ExposureClass> classes;       ///< of one category from mildest to most severe
    Deferred<SiteRules> site;                 ///< only a mix that states its site asks for them
    AirRules air;
    BinderRules binder = {};
    ChlorideRules chloride = {};
    std::optional<SeawaterCement> seawater;
    AverageStrengthRules average_strength;
    SizeRules size;
    bool of_user = false; ///< from a file of the user's, whatever its name

    /// The class of that name, or nullptr.
    /// @param from  one of the classes, where the search begins: names mostly stand in the code's
    /// order
    const ExposureClass* find_class(std::string_view name,
                                    const ExposureClass* from = nullptr) const;
};

} // namespace boardmark::core
