#pragma once

#include <boardmark/core/check.hpp>
#include <boardmark/core/placing_tables.hpp>

#include <functional>
#include <optional>
#include <vector>

namespace boardmark::core {

/// A wall that is placed in one go.
struct PouredWall {
    double height_m;
    double plan_area_m2; ///< of the form, > 0
    /// Concrete between two heights, m3; absent: the plan area all the way up.
    std::function<double(double low_m, double high_m)> volume_m3 = {};
    std::optional<double> rise_m_h = {};    ///< stated rate of rise
    std::optional<double> output_m3_h = {}; ///< of crew or pump
    std::optional<double> lift_m = {};      ///< stated height of a lift
    std::optional<double> setting_h = {};   ///< until the concrete sets at its temperature
    bool exposed = true;                    ///< architectural: lifts up to 24 in are in use
};

/// Lifts of one height, from bottom to top.
struct LiftPlan {
    int lifts;
    double lift_m;
    std::optional<double> rise_m_h; ///< of the slowest lift
    std::optional<double>
        between_lifts_min;        ///< the longest from a spot to the same one lift higher
    std::optional<double> pour_h; ///< all lifts together
    double longest_wait_min;      ///< within which a lift still takes the vibrator
    std::vector<Check> checks;    ///< `lift.height`, `lift.time`
};

/// Divides a wall into equal lifts: of the height stated at most, else of 20 in (24 in and less
/// hold for exposed faces, but only where they are asked for). Each lift takes the time of its own
/// concrete at the output, or of its height at the stated rise, whichever is slower. Heights above
/// the stated rise are a matter of form pressure, not of this.
LiftPlan lift_plan(const PouredWall& wall, const LiftRules& rules);

/// Concrete that comes in trucks.
struct TruckedPour {
    double volume_m3;
    double output_m3_h;                      ///< at which it is placed, > 0
    double truck_m3;                         ///< load of one truck, > 0
    std::optional<double> round_trip_h = {}; ///< plant to plant, unloading included
    std::optional<double> haul_h = {};       ///< from batching to arrival
};

struct TruckPlan {
    int loads;
    double interval_h;         ///< between arrivals, and to unload one
    std::optional<int> trucks; ///< that keep the interval; absent without a round trip
    double pour_h;
    std::vector<Check> checks; ///< `truck.discharge`
};

/// Loads, their interval and the trucks that keep it. Discharge ends within 90 min of batching
/// (ASTM C94), or what buyer and supplier agreed on.
TruckPlan truck_plan(const TruckedPour& pour, const LiftRules& rules);

} // namespace boardmark::core
