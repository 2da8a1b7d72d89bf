#pragma once

#include <boardmark/core/basis/typical_figure.hpp>

#include <map>
#include <string>
#include <vector>

namespace boardmark::core {

/// Internal vibrators of a range of head diameters and the radius in which they act.
struct VibratorGroup {
    double head_from_mm;
    double head_to_mm;
    double radius_from_mm;
    double radius_to_mm;
};

/// Rules for the internal vibrator.
struct VibrationRules {
    std::vector<VibratorGroup> groups; ///< increasing, overlapping as in print
    Source group_source;
    TypicalFigure spacing_in_radii;
    TypicalFigure into_lift_below_mm;
    TypicalFigure insertion_least_s;
    TypicalFigure insertion_most_s;
    TypicalFigure off_the_face_mm; ///< of a textured form
    TypicalFigure room_for_head_mm;
};

/// Rules for lifts and trucks.
struct LiftRules {
    TypicalFigure least_mm;
    TypicalFigure most_mm;
    TypicalFigure most_architectural_mm;
    TypicalFigure discharge_h;             ///< from batching
    TypicalFigure between_lifts_h;         ///< where no setting time is stated
    TypicalFigure part_of_setting_percent; ///< within which a lift still takes the vibrator
};

/// Rules for the crew on the day of placing.
struct CrewRules {
    TypicalFigure free_fall_mm;    ///< of the concrete, at most
    TypicalFigure hose_apart_mm;   ///< between two places of the hose, at most
    TypicalFigure spare_vibrators; ///< that stand by, tried
};

/// Hyperbola of strength by age: t / (a + b t).
struct StrengthGain {
    double a_d;
    double b;
    Source source;
};

/// The Eurocode's exponent by class of cement.
struct EnStrengthGain {
    double s;
    Source source;
};

struct MaturityRules {
    TypicalFigure datum_c;
    TypicalFigure classic_datum_c;
    TypicalFigure activation_k; ///< activation energy over the gas constant
    TypicalFigure reference_c;
    TypicalFigure en_activation_k;
    TypicalFigure en_exponent;
};

/// Days before a soffit's form is struck, by its clear span.
struct SoffitRow {
    double below_m;     ///< clear span
    double slab_less_d; ///< live load below dead load
    double slab_more_d;
    double beam_less_d;
    double beam_more_d;
};

struct SoffitRules {
    std::vector<SoffitRow> rows; ///< increasing spans
    Source source;
};

/// Days for which concrete placed in the cold is protected.
struct ProtectionDays {
    double normal_d;
    double accelerated_d; ///< Type III cement or an accelerating admixture
};

struct ProtectionRules {
    ProtectionDays no_load_not_exposed;
    ProtectionDays no_load_exposed;
    ProtectionDays partial_load_exposed;
    Source source;
};

struct CuringRules {
    TypicalFigure moist_d;
    TypicalFigure moist_high_early_d;
    TypicalFigure least_c;
    std::map<std::string, TypicalFigure> by_cement_d; ///< by type, "II"
    TypicalFigure strip_after_h;                      ///< cumulative, with air above `strip_air_c`
    TypicalFigure strip_surely_after_h;               ///< such hours from which time alone tells it
    TypicalFigure strip_slag_most_percent; ///< of the cementitious material, for time alone
    TypicalFigure strip_ash_most_percent;
    TypicalFigure strip_air_c;
    TypicalFigure strip_strength_mpa;
    TypicalFigure strip_strength_in_frost_mpa;
    TypicalFigure strength_before_freezing_mpa;
    TypicalFigure strength_before_freezing_en_mpa;
    std::string en_codes_begin; ///< with what the names of the codes begin that it goes with
    SoffitRules soffits;
    ProtectionRules protection;
    MaturityRules maturity;
    std::map<std::string, StrengthGain> strength_gain;      ///< by cement and curing, "I, moist"
    std::map<std::string, EnStrengthGain> en_strength_gain; ///< by class, "N"
};

/// Placing, vibrating, curing and stripping.
struct PlacingTables {
    LiftRules lifts;
    VibrationRules vibration;
    CrewRules crew;
    CuringRules curing;
};

} // namespace boardmark::core
