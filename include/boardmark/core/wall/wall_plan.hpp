#pragma once

#include <boardmark/core/basis/outcome.hpp>
#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/forms/form_pressure.hpp>
#include <boardmark/core/forms/form_ties.hpp>
#include <boardmark/core/forms/stripping.hpp>
#include <boardmark/core/layout/wall_layout.hpp>
#include <boardmark/core/mix/proportions.hpp>
#include <boardmark/core/placing/placing_plan.hpp>
#include <boardmark/core/placing/vibration.hpp>
#include <boardmark/core/wall/added_cost.hpp>
#include <boardmark/core/wall/board_order.hpp>
#include <boardmark/core/wall/complete_wall.hpp>
#include <boardmark/core/wall/coursing.hpp>
#include <boardmark/core/wall/form_rise.hpp>
#include <boardmark/core/wall/joint_layout.hpp>
#include <boardmark/core/wall/soffit.hpp>
#include <boardmark/core/wall/wall.hpp>
#include <boardmark/core/wall/wall_quantities.hpp>
#include <boardmark/core/wall/wall_steel.hpp>
#include <boardmark/core/weather/cold_protection.hpp>
#include <boardmark/core/weather/evaporation.hpp>

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace boardmark::core {

/// What the fresh concrete does to the forms of one run or planter, and what holds it.
struct FormForces {
    std::string wall;
    double height_m;
    FormRise rise;                             ///< that the pressures hold for
    double density_kg_m3 = 0;                  ///< of the fresh concrete that presses
    std::optional<double> concrete_c;          ///< in the form, likewise; absent: not known
    std::optional<double> slump_mm;            ///< the highest permitted, likewise
    std::vector<FormPressure> pressures;       ///< by each method, ACI first
    std::size_t governing = 0;                 ///< of them: what checks, ties and rises go by
    bool method_asked = false;                 ///< by the file; otherwise the highest governs
    TieLayout ties = {};                       ///< empty without ties
    std::vector<TieRowLoad> tie_rows;          ///< by the governing method; empty without ties
    std::vector<Phrase> tie_remarks = {};      ///< what the ties' places ask to be told
    std::optional<AllowableRise> rise_by_form; ///< where the forms' own pressure is stated
    std::optional<AllowableRise> rise_by_ties; ///< where the ties' load is stated
};

/// The rise, the concrete's temperature and the slump that the pressures on forms hold for. Forms
/// of which the same is true share a sentence that begins with all their names.
std::vector<Phrase> pressures_hold_for(std::span<const FormForces> all);

/// How fast concrete may rise by the forms and by their ties, shared likewise.
std::vector<Phrase> highest_rises(std::span<const FormForces> all);

/// The pressure that checks, tie loads and allowable rises go by: the highest shown, unless the
/// file asks for a method.
const FormPressure& governing_pressure(const FormForces& forces);

/// The load of the hardest loaded tie of a form. Nothing without ties.
std::optional<double> hardest_tie_kn(const FormForces& forces);

/// Joints, steel and lifts of one run, or of the four walls of a planter.
struct RunPlan {
    std::string wall;
    bool round_a_planter = false; ///< stations run round its outside from a corner, a length first
    JointLayout joints;
    LeastSteel least_steel;
    std::optional<double> vertical_mm2_m = {}; ///< of the bars that are stated
    std::optional<double> horizontal_mm2_m = {};
    LiftPlan lifts;
    std::optional<VibrationPlan> vibration = {}; ///< where a head is stated that a table knows
};

/// What follows the placing of every run alike.
struct AfterPlacing {
    TypicalFigure curing_d;              ///< least moist curing
    StrippingAge strip = {};             ///< one age for all faces; empty where no rule applies
    std::vector<Phrase> strip_open = {}; ///< why a rule of stripping was not applied
    std::vector<SoffitAge> soffits = {}; ///< of runs, then benches
    std::optional<ColdPlan> cold = {};   ///< where the air is cold at placing or forecast
};

/// A wall file worked through with the concrete of its mix file.
struct WallPlan {
    Proportions proportions;
    std::vector<Check> mix_checks;
    WallQuantities quantities;
    WallCoursing coursing;
    BoardOrder boards;
    std::vector<FormForces> forces;              ///< runs, then planters
    std::vector<RunPlan> runs;                   ///< runs, then planters
    std::optional<Evaporation> evaporation = {}; ///< where concrete, air, wind, humidity are stated
    std::optional<TruckPlan> trucks = {};
    Limit placed_c = {}; ///< of the concrete at placing, by its thinnest section
    AfterPlacing after;
    std::optional<AddedCost> added_cost = {}; ///< where the file states prices and boards
    WallLayout layout = {};                   ///< what is drawn
    std::vector<Check> checks;                ///< of the walls
    std::vector<Phrase> cautions;             ///< the one about formwork first
};

/// The pour of a form of a height and a rate of rise, absent where it is not known, as wall and mix
/// file describe it. The basis is the highest slump
/// permitted at placing: the window's upper end, else the slump and its tolerance, else what the
/// dose brings, whichever is most; nothing where it is not known what that brings.
FormCase form_case(const Wall& wall, const Proportions& proportions, double height_m,
                   std::optional<double> rise_m_h, const Tables& tables);

/// Curing by the mix's cement, the age from which forms of faces may be stripped, the soffits, the
/// plan for the cold. The rules by time count the temperature held while the wall is protected,
/// then the coldest air that is stated; the rule by strength takes the specified strength, the
/// slowest class of cement and concrete no warmer than air or placing, and is an age only where
/// portland cement alone binds and no admixture delays setting: for any other concrete it tells
/// when it is too soon. Adds `stripping.age`, `stripping.soffit`, `cold.protection`.
AfterPlacing after_placing(const Wall& wall, const Proportions& proportions, const Tables& tables,
                           std::vector<Check>& checks);

/// Works a wall file through: quantities, boards, forces on the forms, joints, steel, placing.
///
/// Unresolved where the mix has no proportions
Outcome<WallPlan> plan_wall(const CompleteWall& wall, const Tables& tables);

} // namespace boardmark::core
