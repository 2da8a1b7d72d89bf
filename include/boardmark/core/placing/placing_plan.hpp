#pragma once

#include <boardmark/core/basis/phrase.hpp>
#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/placing/placing_tables.hpp>

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// A wall that is placed in one go.
struct PouredWall {
    double height_m;
    double plan_area_m2; ///< of the form, > 0
    /// Concrete between two heights, m3; absent: the plan area all the way up.
    std::function<double(double low_m, double high_m)> volume_m3 = {};
    std::optional<double> rise_m_h = {};     ///< stated rate of rise
    std::optional<double> output_m3_h = {};  ///< of crew or pump
    std::optional<double> lift_m = {};       ///< stated height of a lift
    std::optional<double> setting_h = {};    ///< from batching, at the concrete's temperature
    std::optional<double> haul_h = {};       ///< stated, from batching to arrival
    std::optional<double> round_trip_h = {}; ///< of a truck; a haul takes no more than half of it
    bool exposed = true;                     ///< architectural: lifts up to 24 in are in use
    /// Heights below the top at which lifts may end: none where one lift fills the wall; absent:
    /// anywhere, equally.
    std::optional<std::vector<double>> lines_m = {};
};

/// Lifts from bottom to top, of one height unless they end on lines.
struct LiftPlan {
    int lifts;
    double lift_m;                  ///< of the highest lift
    std::vector<double> tops_m;     ///< where each lift ends, the last at the top
    std::optional<double> rise_m_h; ///< of the slowest lift
    std::optional<double>
        between_lifts_min;        ///< the longest from a spot to the same one lift higher
    std::optional<double> pour_h; ///< all lifts together
    double longest_wait_min;      ///< within which a lift still takes the vibrator, less the haul
    std::vector<Check> checks;    ///< `lift.height`, `lift.time`
};

/// Divides a wall into equal lifts: of the height stated at most, else of 20 in (24 in and less
/// hold for exposed faces, but only where they are asked for). Where lifts end on lines, they are
/// as few and as equal as the lines allow; a gap between lines that is higher than a lift may be is
/// one lift. A lift is as old as the haul when it arrives, which setting counts from batching.
/// Each lift takes the time of its own
/// concrete at the output, or of its height at the stated rise, whichever is slower. Heights above
/// the stated rise are a matter of form pressure, not of this.
LiftPlan lift_plan(const PouredWall& wall, const LiftRules& rules);

/// What one lift of a form takes, and how long that is.
struct FilledLift {
    double volume_m3;
    double hours;
};

/// The lifts of `lift_plan`, from bottom to top; empty where neither rise nor output is known.
std::vector<FilledLift> filled_lifts(const PouredWall& wall, const LiftRules& rules);

/// A part that trucks unload into.
struct UnloadedPart {
    std::string name;
    std::vector<FilledLift> lifts; ///< from bottom to top; empty where its pace is not known
    int count = 1;                 ///< of such parts
    bool by_output = true;         ///< the crew's output is known; otherwise a planned rise alone
};

/// Lowers what holds by a planned rise alone to a `watch`: whether the crew keeps it is not known.
void watch_planned_pace(bool by_output, Check& check);

/// Concrete that comes in trucks, for one part after the other.
struct TruckedPour {
    double order_m3;
    double truck_m3; ///< load of one truck, > 0
    std::vector<UnloadedPart> parts;
    std::optional<double> round_trip_h = {}; ///< plant to plant, loading and unloading included
    std::optional<double> haul_h = {};       ///< from batching to arrival
    /// From batching until the mix file takes the last of a load to be placed.
    std::optional<double> time_to_place_h = {};
};

/// How long loads wait for one another in a part: a load at the part's slowest.
struct TruckInterval {
    std::string part;
    double hours;
};

struct TruckPlan {
    int loads;
    TruckInterval longest;     ///< in the part that takes its concrete most slowly
    TruckInterval shortest;    ///< in the one that takes it most quickly
    std::optional<int> trucks; ///< that keep the shortest; absent without a round trip
    double pour_h;             ///< the whole order, one part after the other
    std::vector<Check> checks; ///< `truck.discharge` of each part
};

/// Loads, their intervals and the trucks that keep them; a truck is back no sooner than after twice
/// the haul and its unloading, whatever round trip is stated. Discharge ends within 90 min of
/// batching (ASTM C94), or what buyer and supplier agreed on: the haul and the longest that any
/// load stands at the part. Without a stated haul the whole round trip counts in its place, which
/// no haul exceeds. Nothing where no part's pace is known.
std::optional<TruckPlan> truck_plan(const TruckedPour& pour, const LiftRules& rules);

/// "8 loads, one every 30 min (planter) to 1.2 h (wall), from 3 trucks".
Phrase told(const TruckPlan& plan);

} // namespace boardmark::core
