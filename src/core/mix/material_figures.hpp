#pragma once

#include <boardmark/core/basis/source.hpp>
#include <boardmark/core/basis/step.hpp>
#include <boardmark/core/mix/material.hpp>
#include <boardmark/core/mix/mix.hpp>

#include <optional>

namespace boardmark::core {

struct Tables;

/// A figure of a material, and whether a usual one stands in for a missing one.
struct Figure {
    double value;
    const Source* typical_source = nullptr; ///< set where the figure is a usual one

    bool is_typical() const { return typical_source != nullptr; }
};

/// Relative density: of an aggregate at SSD. Nothing where none is stated and none is usual.
std::optional<Figure> relative_density(const Material& material, const Tables& tables);

/// Density of an admixture as delivered, kg/m3.
Figure product_density(const Material& admixture, const Tables& tables);

/// Part of an admixture's mass that is liquid, 0–1: all of it where no solids are stated.
double liquid_fraction(const Material& admixture);

/// A dose as percent of the mass of cementitious material.
double dose_percent(const Dose& dose, double product_density_kg_m3);

/// A dose in percent of mass as mL of the product per 100 kg of cementitious material.
double ml_100kg(double percent, double product_density_kg_m3);

/// Absorption of an aggregate, percent of oven-dry mass. Nothing where none is stated and none is
/// usual: the reader has seen to it that this happens in submitted mixes only.
std::optional<Figure> absorption(const Material& aggregate, const Tables& tables);

/// Whether a binder is a supplementary material, or a blended cement that holds one.
bool is_or_holds_pozzolan_or_slag(const Material& binder);

/// Records every usual figure that stands in for a missing one.
void record_typical_figures(const std::vector<const Material*>& materials, const Tables& tables,
                            Worksheet& worksheet);

} // namespace boardmark::core
