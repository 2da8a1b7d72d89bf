#pragma once

#include <boardmark/core/mix/any_mix.hpp>
#include <boardmark/core/mix/proportions.hpp>
#include <boardmark/core/risk/risk.hpp>
#include <boardmark/core/risk/scatter.hpp>

#include <cstddef>
#include <vector>

namespace boardmark::core {

struct Tables;

/// One random number of a sample: the input that it belongs to and its standard deviation.
struct ScatterDimension {
    std::size_t input;
    double deviation;
};

/// The place of a figure's random number in a sample. Figures that do not scatter share the first,
/// whose deviation is 0.
using DimensionIndex = std::size_t;
constexpr DimensionIndex exact_figure = 0;

/// Which random number moves which figure of an ingredient.
struct ScatteredIngredient {
    DimensionIndex mass = exact_figure;
    DimensionIndex moisture = exact_figure;
    DimensionIndex absorption = exact_figure;
    DimensionIndex relative_density = exact_figure;
    DimensionIndex water_reduction = exact_figure;
};

/// All that scatters in the batches of one mix.
struct ScatterPlan {
    std::vector<ScatteredInput> inputs;
    std::vector<ScatterDimension> dimensions;     ///< the first stands for what is exact
    std::vector<ScatteredIngredient> ingredients; ///< in the order of the proportions
    DimensionIndex air = exact_figure;
    DimensionIndex strength = exact_figure;
};

/// Takes what the file states, else the published tolerance as 1.96 standard deviations, the test
/// record, or the usual scatter of a moisture; what remains is exact.
ScatterPlan scatter_plan(const Requirements& requirements, const Proportions& designed,
                         const Scatter& stated, const Tables& tables);

/// Whether an ingredient is a reducer whose effect on the water is known and counts for slump.
bool saves_water(const Ingredient& ingredient, const Requirements& requirements);

} // namespace boardmark::core
