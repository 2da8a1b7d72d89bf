#pragma once

#include <boardmark/core/placing/placing_plan.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// A lift between two times of the day, h from the start.
struct LiftOfDay {
    std::string part;
    int copy;   ///< which of several like parts, from 1
    int copies; ///< of the part
    int lift;   ///< from the bottom, from 1
    int lifts;  ///< of the part
    double volume_m3;
    double begins_h;
    double ends_h;
};

/// A load between two times of the day, h from the start.
struct LoadOfDay {
    int number; ///< from 1
    double volume_m3;
    std::vector<std::string> parts; ///< that it goes into, each once; empty: kept for waste
    double begins_h;                ///< its discharge, when the load before it is empty
    double ends_h;
    std::optional<double> batched_h;    ///< so that it arrives then; absent without a haul
    std::optional<double> latest_end_h; ///< of its discharge, where it was batched then
};

/// What stands behind the times of loads.
enum class HaulBy { stated, round_trip, unknown };

/// The day of placing: parts one after the other without a break, each as fast as it takes its
/// concrete; loads follow each other without a wait.
struct PlacingDay {
    std::vector<LiftOfDay> lifts = {}; ///< empty where the pace of a part is not known
    std::vector<LoadOfDay> loads = {}; ///< likewise, and where the load of a truck is not stated
    double ends_h = 0;                 ///< of the last lift
    HaulBy haul_by = HaulBy::unknown;
    bool by_output =
        true;        ///< every part's output is known; otherwise its planned rise sets the pace
    Check discharge; ///< `load.discharge`: every load of the day
};

/// The day of a pour whose load of a truck may not be known. Every load is full but the last, which
/// holds the rest of the order: what no lift takes of it is kept for waste. Without a stated haul
/// the whole round trip counts in its place, as in truck_plan().
PlacingDay placing_day(const std::vector<UnloadedPart>& parts,
                       const std::optional<TruckedPour>& trucked, const LiftRules& rules);

} // namespace boardmark::core
