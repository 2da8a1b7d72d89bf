#pragma once

#include <boardmark/core/basis/phrase.hpp>
#include <boardmark/core/code/site.hpp>
#include <boardmark/core/mix/method.hpp>
#include <boardmark/core/mix/specimen.hpp>
#include <boardmark/core/placing/placing.hpp>
#include <boardmark/core/strength/strength_line.hpp>

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

struct CodeTables;
struct JobPapers;

/// The classes of another code that the same concrete is held against.
struct ClassesByCode {
    std::string code;
    std::vector<std::string> exposure;
    std::shared_ptr<const CodeTables> code_file = {}; ///< where the code is a file of the user's
};

/// Test records of a concrete of the same class, from which the standard deviation was computed.
struct StrengthRecords {
    int tests;                          ///< ≥ 1
    double standard_deviation_mpa;      ///< ≥ 0
    std::optional<double> strength_mpa; ///< specified strength of that concrete
    std::optional<double> age_d;        ///< age of the records
};

/// A point of the user's own trials: the strength reached at a ratio.
struct CurvePoint {
    double w_cm;
    double strength_mpa;
};

/// What the rules of acceptance say of tests of production.
struct JudgedResults {
    std::size_t tests;
    std::vector<std::string> broken;       ///< ids of the checks that fail
    std::vector<std::string> open = {};    ///< of those of acceptance that are not checked
    std::vector<std::string> watched = {}; ///< and of those that are to be watched
};

/// The line fitted through the user's own strength results, and from which side it is read.
struct OwnLine {
    StrengthLine line;
    LineSide side;
    std::string file;                         ///< that holds the results
    std::optional<JudgedResults> judged = {}; ///< absent where none is of production
    LineEvidence evidence = {};
};

/// An average strength that the user demands in place of the code's.
struct StatedAverage {
    double strength_mpa;
    std::string basis; ///< why; may be empty
};

/// The least dimensions the concrete must pass through.
struct Section {
    std::optional<double> thickness_mm;
    std::optional<double> clear_bar_spacing_mm;
    std::optional<double> clear_cover_mm;
};

/// Where the required air content comes from.
enum class AirBasis {
    exposure, ///< the code's table for the stated class; none where the class needs none
    none,
    stated,
};

struct RequiredAir {
    AirBasis basis = AirBasis::exposure;
    double percent = 0; ///< only where stated
};

/// Slumps permitted at placing.
struct SlumpWindow {
    double low_mm;
    double high_mm;
};

/// What is asked of the concrete, independent of how it is proportioned.
struct Requirements {
    std::string code = {};                  ///< "ACI 318-19"; empty where no class is asked
    std::vector<std::string> exposure = {}; ///< at most one class of each category, in most codes
    std::shared_ptr<const CodeTables> code_file = {}; ///< the code, where it is the user's own file
    std::vector<ClassesByCode> exposure_by_code = {}; ///< of further codes
    std::optional<Site> site = {};
    std::vector<std::string> exposure_by_site = {}; ///< those of `exposure` that nobody stated
    bool reinforced = true;
    double strength_mpa; ///< specified compressive strength, by `specimen`
    Specimen specimen = Specimen::cylinder;
    std::optional<double> twin_strength_mpa = {}; ///< by the other specimen, where a class pairs it
    std::string strength_class = {};              ///< that states both or either: "C30/37", "M40"
    std::string chloride_class = {};              ///< of the code, "Cl 0.40"; empty: not stated
    double strength_age_d = 28;                   ///< age at which it is specified
    std::optional<StrengthRecords> records = {};
    std::vector<CurvePoint> strength_curve = {}; ///< increasing w/cm, falling strength
    std::optional<OwnLine> strength_line = {};   ///< instead of the curve
    std::optional<StatedAverage> average = {};
    double slump_mm; ///< at placing
    std::optional<double> slump_before_reducer_mm = {};
    std::optional<SlumpWindow> slump_window = {};
    std::optional<double> time_to_place_min = {}; ///< from mixing to the last of it placed, 0–180
    RequiredAir air = {};                         ///< at placing
    double air_loss_percent = 0; ///< points of air lost between mixer and placing, 0–5
    Section section = {};
    std::optional<double> minimum_binder_kg_m3 = {};
    bool board_marked = false;
    bool pumped = false;                          ///< for the share of stone by IS 10262
    std::optional<SiteControl> site_control = {}; ///< for the deviation of IS 10262; not stated:
                                                  ///< taken as good, and told
    double defective_percent = 5; ///< of results that may fall below the strength, by BRE
    PlacingConditions placing = {};
    std::string alkali_level = {};         ///< of prevention, "V" to "ZZ"; empty: not stated
    std::string aggregate_reactivity = {}; ///< with alkali, "R0" to "R3"; empty: not stated
    std::string structure_class = {};      ///< how grave a reaction would be, "S1" to "S4"
    std::vector<Phrase> improbable = {};   ///< figures of the file that are possible, hardly true
    std::shared_ptr<const JobPapers> papers = {}; ///< of the job; none where the file has no word
};

/// Whether a curve or line of the mix's own tells its strength.
inline bool has_own_strengths(const Requirements& requirements) {
    return requirements.strength_line || !requirements.strength_curve.empty();
}

/// The specified strength by a specimen. Nothing where it is stated by the other one and no class
/// pairs the two.
inline std::optional<double> strength_by(Specimen specimen, const Requirements& requirements) {
    return requirements.specimen == specimen ? std::optional{requirements.strength_mpa}
                                             : requirements.twin_strength_mpa;
}

/// The same requirements by the other specimen, where a class pairs the two strengths. Trials,
/// records and an average of the first specimen are left behind: none is turned into the other.
/// Nothing where no class pairs them.
std::optional<Requirements> restated_by(Specimen specimen, const Requirements& requirements);

} // namespace boardmark::core
