#pragma once

#include <boardmark/core/basis/unit_system.hpp>
#include <boardmark/core/mix/method.hpp>
#include <boardmark/core/mix/requirements.hpp>
#include <boardmark/core/mix/shared_material.hpp>

#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace boardmark::core {

struct AggregateBlend;

/// What the charts of BRE are entered with that a study changes.
struct ChartEntry {
    double water_kg_m3;
    double w_cm;
};

/// Values that the user fixes in place of the method's own; at most two of w/cm, water and binder.
struct Selections {
    std::optional<double> w_cm;
    bool w_cm_is_methods = false;      ///< the method's own, which a study holds: the code's least
                                       ///< cement lowers it as it did
    bool w_cm_by_exposure = false;     ///< the exposure limit itself, for a first trial
    std::optional<double> water_kg_m3; ///< final mixing water
    bool water_shows_slump = false;    ///< found for the slump, by a trial batch or a study
    std::optional<double> binder_kg_m3;
    std::optional<double> air_percent;
    std::optional<double> coarse_volume;             ///< dry-rodded, per volume of concrete
    std::optional<double> coarse_adjustment_percent; ///< of the table's coarse volume, -10 to +10
    std::optional<double> fine_share_percent;        ///< of the absolute SSD aggregate volume
    std::optional<double> coarse_dry_kg_m3; ///< oven-dry amount, as a trial or a submittal has it
    std::optional<double> fresh_density_kg_m3 = {};        ///< read from the chart of BRE
    std::optional<double> fine_share_by_mass_percent = {}; ///< of the aggregate, from its chart
    std::optional<ChartEntry> read_at = {}; ///< of both readings, where a study may leave it

    /// Whether the method finds the ratio, which the code's least cement may lower.
    bool leaves_ratio_to_method() const { return w_cm_is_methods || (!w_cm && !binder_kg_m3); }
};

/// A mix to be proportioned.
struct Mix {
    std::string title;
    UnitSystem system;
    Requirements requirements;
    Method method = Method::aci_211_1;
    std::vector<Share> binder = {};
    std::vector<Share> coarse = {};
    std::vector<Share> fine = {};
    std::vector<Dosage> admixtures = {};
    std::optional<double> blend_dry_rodded_density_kg_m3 = {}; ///< measured on the coarse blend
    /// Of all aggregates, where they are blended to a target: then coarse, fine and the fine
    /// aggregate's share are those of `take_blend`.
    std::shared_ptr<const AggregateBlend> blend = {};
    Selections selections = {};
    BatchedWater batched_water = {};
    std::optional<Supply> supply = {};
};

/// An amount of one material in a submitted mix, per m3 of concrete.
struct SubmittedAmount {
    SharedMaterial material;
    std::optional<double> kg_m3 = {}; ///< aggregates SSD
    std::optional<double> m3_m3 = {}; ///< volume of product instead, where it was submitted so
    bool by_trial = false;            ///< "as needed": counts as nothing
};

/// Amounts that someone else chose.
struct SubmittedMix {
    std::string title;
    UnitSystem system;
    Requirements requirements;
    std::optional<double> water_kg_m3 = {};
    std::optional<double> water_m3_m3 = {}; ///< instead of the mass
    bool water_includes_admixtures = false;
    double air_percent;
    std::vector<SubmittedAmount> amounts;
    double nominal_max_size_mm; ///< of the largest coarse aggregate
    BatchedWater batched_water = {};
    std::optional<Supply> supply = {};
};

/// Either of the two, unchecked.
using AnyMix = std::variant<Mix, SubmittedMix>;

} // namespace boardmark::core
