#pragma once

#include <boardmark/core/batch/batch.hpp>
#include <boardmark/core/mix/proportions.hpp>

#include <optional>

namespace boardmark::core {

struct Tables;

/// How much of a batch's water stays back for the site.
struct HoldBack {
    std::optional<double> percent;                   ///< of the water to batch, 0–100
    std::optional<double> kg;                        ///< instead of a share
    std::optional<double> resolution_kg = {};        ///< of the scale
    std::optional<double> minimum_binder_kg_m3 = {}; ///< that the concrete must keep
};

/// What keeps more water out.
enum class WaterLimit {
    exposure, ///< the lowest limit of the stated exposure classes
    strength, ///< the ratio at which the average strength is expected
    mix,      ///< neither is known: the ratio of the mix itself
    reducer,  ///< the mix holds a high-range reducer: no water beyond what was held back
    binder,   ///< the least cementitious material: more water thins it
};

struct WaterAmount {
    double kg;
    double litres;
};

/// The water of a batch, split between mixer and site.
struct SiteWater {
    WaterAmount at_mixer;
    WaterAmount held_back;
    double w_cm_limit;
    WaterLimit limited_by;
    WaterAmount may_be_added; ///< on site, the held-back water included; never negative
    double may_be_added_kg_m3;
    double w_cm_then;                    ///< when all of that has been added
    std::optional<double> slump_gain_mm; ///< roughly, of all of that; absent with a high-range
                                         ///< reducer, which is what adjusts the flow then
    std::vector<Phrase> advice;
};

/// Splits the water of a batch and finds the most that may be added on site before the lowest limit
/// of w/cm or the least cementitious material breaks; with a high-range reducer never more than was
/// held back.
///
/// Unresolved where all of the water or more is held back.
Outcome<SiteWater> site_water(const Proportions& proportions, const Batch& batch,
                              const HoldBack& asked, const Tables& tables);

} // namespace boardmark::core
