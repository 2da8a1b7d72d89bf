#pragma once

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// How much one figure of a material scatters.
struct ScatterOfMaterial {
    std::string material;
    double deviation; ///< ≥ 0, one standard deviation
};

/// How much what goes into a batch scatters, as far as it is stated: one standard deviation each, ≥
/// 0, of a normal distribution around the value of the mix.
struct Scatter {
    std::optional<double> water_percent = {};     ///< of the mass weighed
    std::optional<double> binder_percent = {};    ///< of the mass of each cementitious material
    std::optional<double> aggregate_percent = {}; ///< of the mass of each aggregate
    std::optional<double> admixture_percent = {}; ///< of the mass of each admixture
    std::optional<double> air_points = {};        ///< of air in the batch
    std::optional<double> strength_mpa = {};      ///< of tests around the strength of their ratio
    std::vector<ScatterOfMaterial> moisture_points = {};        ///< of oven-dry mass
    std::vector<ScatterOfMaterial> absorption_points = {};      ///< of oven-dry mass
    std::vector<ScatterOfMaterial> relative_density = {};       ///< to water
    std::vector<ScatterOfMaterial> water_reduction_points = {}; ///< of the mixing water
};

} // namespace boardmark::core
