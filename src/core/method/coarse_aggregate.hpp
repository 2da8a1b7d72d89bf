#pragma once

#include <boardmark/core/basis/outcome.hpp>
#include <boardmark/core/basis/step.hpp>
#include <boardmark/core/mix/mix.hpp>

#include <optional>
#include <vector>

namespace boardmark::core {

struct Tables;

/// The largest nominal maximum size of a blend; it governs wherever a table is entered by size.
double largest_size_mm(const std::vector<Share>& coarse);

/// Dry-rodded density of a blend: measured, else the mass-share mean (recorded as an estimate).
/// Nothing where a material states none.
std::optional<double> dry_rodded_density_kg_m3(const Mix& mix, const Tables& tables,
                                               Worksheet& worksheet);

/// Bulk volume of coarse aggregate per unit volume of concrete, by selection or by the table,
/// recorded. Unresolved where the table does not reach the size or the fineness modulus.
struct BulkVolumeEntry {
    double size_mm;
    double fineness_modulus;
};
Outcome<double> table_bulk_volume(BulkVolumeEntry entry, const Selections& selections,
                                  const Tables& tables, Worksheet& worksheet);

} // namespace boardmark::core
