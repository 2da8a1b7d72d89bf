#pragma once

#include <boardmark/core/basis/typical_figure.hpp>
#include <boardmark/core/mix/kind.hpp>

#include <map>
#include <string>

namespace boardmark::core {

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
    TypicalFigure mass_thickness_mm;       ///< least dimension from which a part is mass concrete
    TypicalFigure strength_governs_margin; ///< of w/cm, from which a caution is due
    TypicalFigure lowest_w_cm; ///< below it a mix is hardly a wall's: a slip, or not placeable
    TypicalFigure lightweight_relative_density; ///< SSD; at or below it an aggregate is lightweight
    TypicalFigure pigment_watch_percent;        ///< of cement, above which colour gains little
    TypicalFigure pigment_most_percent;         ///< of cement
    Source pigment_air;                         ///< that some pigments cut the air
    Source coloured_face; ///< what keeps a colour, and what greys a white cement
    TypicalFigure lowest_sand_share_percent;
    TypicalFigure highest_sand_share_percent;
    TypicalFigure drinking_water_chloride_percent; ///< by mass of the water
    TypicalFigure table_cement_percent;    ///< least portland cement in a binder of strength tables
    TypicalFigure table_air_plain_percent; ///< most air of the plain concrete of strength tables
    TypicalFigure table_air_entrained_percent; ///< the same of air-entrained concrete
    TypicalFigure chloride_free_percent;  ///< the most of an admixture that is called free of it
    TypicalFigure slump_measures_to_mm;   ///< above it flow and segregation are tested instead
    TypicalFigure spare_strength_percent; ///< above the required average, from which it is spare
    TypicalFigure
        air_of_results_percent; ///< by which a mix may hold more than its results' batches
    TypicalFigure binder_share_off_percent; ///< from which a submitted binder is another one
    /// Share of results that may fall below a code's strength.
    TypicalFigure characteristic_defective_percent;
    TypicalFigure stated_water_rounding_percent; ///< of a method's water, to which a file rounds
    TypicalFigure formula_slump_mm; ///< highest slump for which form-pressure formulas hold
    TypicalFigure face_deduction_matters_percent; ///< of the concrete, from which it is deducted
    TypicalFigure most_held_back_percent; ///< of the water to batch, beyond which it is a slip
    TypicalFigure cut_course_percent;   ///< of a course, below which a cut one looks like a mistake
    TypicalFigure board_end_stagger_mm; ///< least, between board ends of neighbouring courses
    TypicalFigure tie_beside_joint_mm;  ///< least, from a contraction joint
    TypicalFigure lift_line_off_joint_mm; ///< most, at which it still hides in a board joint
};

} // namespace boardmark::core
