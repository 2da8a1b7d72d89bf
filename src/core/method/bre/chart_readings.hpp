#pragma once

#include <boardmark/core/basis/outcome.hpp>
#include <boardmark/core/basis/step.hpp>
#include <boardmark/core/mix/mix.hpp>
#include <boardmark/core/mix/proportions.hpp>

namespace boardmark::core {

struct MethodTables;
struct Paste;

/// What the chart of strength is entered with.
struct StrengthChartEntry {
    double target_mpa;
};

/// Why no ratio follows: it is read from the method's chart, and nothing stands in for the reading.
Unresolved no_ratio_reading(const Mix& mix, const StrengthChartEntry& entry,
                            const MethodTables& method);

/// What the charts of density and of the fines are entered with.
struct DensityChartEntry {
    double water_kg_m3;
    double w_cm;
    double size_mm;
    double slump_mm;
    double relative_density; ///< of all aggregate, saturated surface-dry
    double entrained_air_percent;
};

/// Mass of all aggregate and the sand's share of it, by the user's readings.
struct AggregateReadings {
    double fresh_density_kg_m3; ///< less what entrained air takes
    double fine_share_percent;  ///< by mass
};

/// Notes the paste for which the user read both charts, before a study changes it; what was noted
/// before stays. Whatever the method: the others have no readings.
void note_entry(Selections& selections, const Selection& written);

/// The readings that the user gives, recorded. Unresolved where one is missing, or was noted to be
/// of another paste: it names the chart, what it is entered with, and the key.
Outcome<AggregateReadings> aggregate_readings(const Mix& mix, const DensityChartEntry& entry,
                                              const MethodTables& method, Worksheet& worksheet);

} // namespace boardmark::core
