#pragma once

#include <boardmark/core/basis/optional_number.hpp>
#include <boardmark/core/basis/step.hpp>
#include <boardmark/core/mix/mix.hpp>
#include <boardmark/core/weather/mixture_temperature.hpp>

#include <cstddef>
#include <memory>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace boardmark::core {

/// What decided the ratio of water to cementitious material.
enum class Governor { strength, exposure, minimum_binder, given };

/// The values from which the amounts follow. Absent where the calculation did not need or reach
/// one.
struct Selection {
    double specified_strength_mpa;
    double required_average_strength_mpa;
    double slump_mm;
    std::optional<double> slump_before_reducer_mm;
    double nominal_max_size_mm;
    double air_percent;            ///< in the batch: it fills the volume
    double air_at_placing_percent; ///< what is left of it after haul, pump and reducer
    double w_cm;
    std::optional<double> w_cm_by_strength;
    std::optional<double> w_cm_by_exposure;
    Governor w_cm_governed_by;
    std::optional<double> table_water_kg_m3;
    std::optional<double> water_reduction_percent;
    double water_kg_m3; ///< all mixing water
    double binder_kg_m3;
    std::optional<double> coarse_volume;
    std::optional<double> fineness_modulus;
    bool water_is_stated = false; ///< by the file or its w/cm and binder, not by the method
    OptionalNumber water_of_slump_kg_m3 = {}; ///< then: what the method gives, as far as it reaches
    bool air_entrained;
    bool entrainment_known = true;  ///< false where nothing tells how much air is entrapped
    bool strength_by_trial = false; ///< w/cm is the exposure limit; strength is to be proven
    double margin_mpa = 0;          ///< of the average above the specified strength
};

/// One row of the result: an ingredient in 1 m3 of concrete.
struct Ingredient {
    std::string_view name; ///< the material's, which the ingredient holds; "water", "air"
    Role role;
    double kg_m3;                                ///< aggregates SSD; admixtures the whole product
    std::optional<double> dry_kg_m3;             ///< oven-dry; absent for liquids and air
    std::optional<double> volume_m3;             ///< absolute; absent where no density is known
    std::optional<double> relative_density = {}; ///< aggregates SSD
    double liquid_kg_m3 = 0;                     ///< of an admixture: its part of the mixing water
    bool by_trial = false;                       ///< dosed as needed; counts as nothing here
    SharedMaterial material = {};                ///< absent for water and air

    /// Whether there is some of it, or will be by trial.
    bool goes_in() const { return by_trial || kg_m3 > 0; }

    /// Its material to be changed for this ingredient alone; the name goes with it.
    Material& edit_material() {
        Material& changed = material.edit();
        name = changed.name;
        return changed;
    }
};

/// Sums over the ingredients.
struct Totals {
    std::optional<double> fresh_density_kg_m3; ///< absent where an aggregate is not listed
    std::optional<double> volume_m3;           ///< likewise, and where a density is missing
    double water_kg_m3;                        ///< all mixing water
    double binder_kg_m3;
    double w_cm;
    std::optional<double> paste_percent;  ///< water, cementitious material, admixtures; no air
    std::optional<double> mortar_percent; ///< all but the coarse aggregate
};

/// Proportions of 1 m3, however they were found, with the reason for each value.
struct Proportions {
    bool submitted = false; ///< amounts that someone else chose
    bool is_load = false;   ///< concrete as it was tested: the tolerances of delivery are its own
    bool estimate = false;  ///< usual aggregate figures were used: must not be batched
    Selection selection;
    std::vector<Ingredient> ingredients; ///< water, binder, coarse, fine, admixtures, air
    Totals totals;
    Worksheet worksheet;
    std::optional<MixtureTemperature> temperature = {}; ///< where the file speaks of it
    std::string method = {};    ///< by which they were found: "ACI 211.1-91"; empty if submitted
    std::string procedure = {}; ///< of that method, "absolute volume"
    std::shared_ptr<const AggregateBlend> blend = {}; ///< of the aggregates, where they are blended
};

/// The ingredients of one role, which stand side by side, as pointers to them.
class IngredientsOfRole {
public:
    class Iterator {
    public:
        using value_type = const Ingredient*;
        using difference_type = std::ptrdiff_t;

        Iterator() = default;
        explicit Iterator(const Ingredient* at)
            : at_{at} {}
        const Ingredient* operator*() const { return at_; }
        Iterator& operator++() {
            ++at_;
            return *this;
        }
        Iterator operator++(int) { return Iterator{at_++}; }
        bool operator==(const Iterator&) const = default;

    private:
        const Ingredient* at_ = nullptr;
    };

    explicit IngredientsOfRole(std::span<const Ingredient> ingredients)
        : ingredients_{ingredients} {}

    Iterator begin() const { return Iterator{ingredients_.data()}; }
    Iterator end() const { return Iterator{ingredients_.data() + ingredients_.size()}; }
    bool empty() const { return ingredients_.empty(); }
    std::size_t size() const { return ingredients_.size(); }
    const Ingredient* front() const { return &ingredients_.front(); }

private:
    std::span<const Ingredient> ingredients_;
};

IngredientsOfRole of_role(const Proportions& proportions, Role role);

/// Sums the ingredients.
Totals total(const std::vector<Ingredient>& ingredients);

} // namespace boardmark::core
