#pragma once

#include <boardmark/core/mix/mix.hpp>
#include <boardmark/core/mix/proportions.hpp>

#include <vector>

namespace boardmark::core {

struct Tables;

/// Adds the blend of a saturated surface-dry mass in all, shared out by it.
void add_blend_of_mass(const std::vector<Share>& shares, double ssd_kg_m3, const Tables& tables,
                       std::vector<Ingredient>& ingredients);

/// Adds the blend that has an oven-dry mass in all, shared out by SSD mass.
void add_blend_of_dry_mass(const std::vector<Share>& shares, double dry_kg_m3, const Tables& tables,
                           std::vector<Ingredient>& ingredients);

/// Adds the blend that fills an absolute volume, shared out by SSD mass.
void add_blend_of_volume(const std::vector<Share>& shares, double volume_m3, const Tables& tables,
                         std::vector<Ingredient>& ingredients);

} // namespace boardmark::core
