#pragma once

#include <boardmark/core/batch/batch.hpp>
#include <boardmark/core/mix/proportions.hpp>
#include <boardmark/core/mix/requirements.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

struct Tables;

/// How much of a batch's water stays back for the site.
struct HoldBack {
    std::optional<double> percent;                   ///< of the water to batch, 0–100
    std::optional<double> kg;                        ///< instead of a share
    std::optional<double> resolution_kg = {};        ///< of the scale
    std::optional<double> minimum_binder_kg_m3 = {}; ///< that the concrete must keep
    std::optional<double> most_slump_gain_mm = {};   ///< up to the highest slump permitted
    std::vector<std::string> unstated_exposure = {}; ///< categories of which no class is stated
};

/// What keeps more water out.
enum class WaterLimit {
    exposure, ///< the lowest limit of the stated exposure classes
    strength, ///< the ratio at which the average strength is expected
    mix,      ///< neither is known: the ratio of the mix itself
    unstated, ///< the same, because a category of exposure has no class: it may ask less
    reducer,  ///< the mix holds a high-range reducer: no water beyond what was held back
    binder,   ///< the least cementitious material: more water thins it
    slump,    ///< the highest slump permitted at placing
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

/// From the stated slump to the highest one of the window, or of the tolerance on it.
double most_slump_gain_mm(const Requirements& requirements, const Tables& tables);

/// Splits the water of a batch and finds the most that may be added on site before the lowest limit
/// of w/cm, the least cementitious material or the highest slump breaks; with a high-range reducer
/// or an exposure that is not stated never more than was held back.
///
/// Unresolved where all of the water or more is held back.
Outcome<SiteWater> site_water(const Proportions& proportions, const Batch& batch,
                              const HoldBack& asked, const Tables& tables);

} // namespace boardmark::core
