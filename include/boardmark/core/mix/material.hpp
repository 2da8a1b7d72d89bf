#pragma once

#include <boardmark/core/mix/kind.hpp>
#include <boardmark/core/mix/method.hpp>
#include <boardmark/core/mix/price.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// What a dose of an admixture is counted by.
enum class DoseBasis {
    volume,  ///< m3 of product per kg of cementitious material
    percent, ///< % of the mass of cementitious material, whole product
};

struct Dose {
    double amount; ///< ≥ 0, in the unit of its basis
    DoseBasis basis;
};

/// A share of another material inside a blended cement.
struct Constituent {
    Kind kind;
    double percent; ///< by mass of the cement, 0–100
};

/// What the mill certificate says of a cement or a supplementary material.
struct BinderFigures {
    std::vector<Constituent> contains;
    std::optional<double> c3a_percent;         ///< tricalcium aluminate, by mass
    std::optional<double> strength_class = {}; ///< of a cement, MPa: 42.5
};

/// The mass of an aggregate that passes a sieve.
struct SievePassing {
    double opening_mm;
    double percent; ///< 0–100, by mass
};

/// What the aggregate test report says.
struct AggregateFigures {
    bool relative_density_is_oven_dry = false;        ///< otherwise saturated surface-dry
    std::optional<double> absorption_percent;         ///< of oven-dry mass
    std::optional<double> moisture_percent;           ///< total, of oven-dry mass
    std::optional<double> nominal_max_size_mm;        ///< coarse only
    std::optional<double> dry_rodded_density_kg_m3;   ///< coarse only
    std::optional<double> fineness_modulus;           ///< fine only
    std::vector<SievePassing> sieves;                 ///< any order
    bool typical = false;                             ///< figures left out may be the usual ones
    std::optional<int> zone = {};                     ///< of sand by IS 383, 1 to 4
    std::optional<StoneShape> shape = {};             ///< of stone, for IS 10262
    std::optional<Surface> surface = {};              ///< for BRE
    std::optional<double> passing_600um_percent = {}; ///< of sand, for BRE
    std::string size_number = {}; ///< of coarse aggregate by ASTM C33, "57"; empty: not stated
};

/// A dose and the water that it saves at equal slump.
struct WaterReductionPoint {
    Dose dose;
    double percent; ///< 0–100, of the mixing water
};

/// A dose and the slump that it adds at equal water.
struct SlumpGainPoint {
    Dose dose;
    double mm; ///< ≥ 0
};

/// The slump that is left some time after mixing.
struct RetentionPoint {
    double minutes; ///< ≥ 0
    double percent; ///< of the slump at mixing, above 0 to 100
};

/// What the product data sheet says of an admixture.
struct AdmixtureFigures {
    std::optional<double> solids_percent;             ///< by mass of the product
    std::vector<WaterReductionPoint> water_reduction; ///< increasing doses of one basis
    bool standard_minimum_reduction = false;          ///< the least that its standard demands
    bool reduction_dose_assumed = false; ///< one reduction without a dose: taken at the mix's own
    std::vector<SlumpGainPoint> slump_gain; ///< increasing doses of one basis
    std::optional<Dose> maximum_dose;
    std::optional<bool> retards = {};    ///< delays setting; absent: the papers were not asked
    std::vector<RetentionPoint> retains; ///< increasing minutes, never rising percent
    std::optional<double> added_water_percent = {}; ///< of a pigment, 0–30: mixing water that its
                                                    ///< dose asks for at equal slump
};

/// One material as its papers describe it. Figures that the papers must supply are optional here;
/// the reader demands those that the calculation asked for needs.
struct Material {
    std::string name; ///< the user's own, 1–80 characters
    Kind kind;
    std::string standard = {}; ///< "ASTM C150 II"; may be empty
    std::optional<double> relative_density =
        {}; ///< to water; the basis is stated with the aggregate
    std::optional<double> chloride_percent = {}; ///< by mass of the material
    std::optional<double> alkali_percent = {};   ///< Na2O equivalent, by mass of the material
    std::optional<Price> price = {};
    std::optional<double> carbon_kg_kg = {};  ///< CO2 equivalent by mass
    std::optional<double> temperature_c = {}; ///< when it is batched; binder and aggregates
    double waste_percent = 0; ///< 0–50, bought beyond what gets into the concrete, of the latter
    std::string source = {};  ///< where the figures come from; may be empty
    BinderFigures binder = {};
    AggregateFigures aggregate = {};
    AdmixtureFigures admixture = {};
};

} // namespace boardmark::core
