#include "trial_tables.hpp"

#include "lookup.hpp"

namespace boardmark::reference {
namespace {

using core::UnitSystem;

/// The cell of a row that has one for each system of units.
double cell_of(const EmbeddedTable& printed, const EmbeddedRow& line, std::string name,
               UnitSystem system) {
    name += system == UnitSystem::us ? "_us" : "_si";
    return cell(printed, line, name);
}

core::TrialAdjustments adjustments(UnitSystem system) {
    const EmbeddedTable& printed = table("trial-adjustments");
    return {.water_kg_m3_per_mm = constant(printed, "water_per_slump_step", system) /
                                  constant(printed, "slump_step", system),
            .water_kg_m3_per_air_point = constant(printed, "water_per_air_point", system),
            .source = source_of(printed.source),
            .slump_reading_mm = figure(printed, "slump_reading", system),
            .dose_step_percent = figure(printed, "dose_step", system)};
}

core::BatchingTolerances batching() {
    const EmbeddedTable& printed = table("batching-tolerance");
    const auto within = [&](std::string_view name) -> core::TypicalFigure {
        const EmbeddedRow& line = row(printed, name);
        return {cell(printed, line, "within"), source_of(line.source)};
    };
    return {.binder_percent = within("binder"),
            .small_batch_over_percent = within("binder of a small batch"),
            .aggregate_percent = within("aggregate"),
            .water_percent = within("water"),
            .admixture_percent = within("admixture")};
}

core::MoistureScatter moisture_scatter() {
    const EmbeddedTable& printed = table("moisture-scatter");
    const auto deviation = [&](std::string_view name) -> core::TypicalFigure {
        const EmbeddedRow& line = row(printed, name);
        return {cell(printed, line, "deviation"), source_of(line.source)};
    };
    return {.fine_points = deviation("fine aggregate"),
            .coarse_points = deviation("coarse aggregate")};
}

/// Rows of two cells: up to where a row holds, and its figure.
template <class Row>
std::vector<Row> graded_rows(std::string_view name, std::string_view bound, std::string_view value,
                             UnitSystem system) {
    const EmbeddedTable& printed = table(name);
    std::vector<Row> rows;
    for (const EmbeddedRow& line : printed.rows) {
        rows.push_back(
            {cell_of(printed, line, std::string{bound}, system),
             {cell_of(printed, line, std::string{value}, system), source_of(line.source)}});
    }
    return rows;
}

} // namespace

core::TrialTables trial_tables(UnitSystem system) {
    const EmbeddedTable& practice = table("practice");
    return {
        .adjustments = adjustments(system),
        .batching = batching(),
        .moisture_scatter = moisture_scatter(),
        .slump = graded_rows<core::SlumpTolerance>("slump-tolerance", "up_to", "within", system),
        .measures = graded_rows<core::DensityMeasure>("density-measure", "size", "volume", system),
        .measure_shortfall_percent = figure(practice, "measure_shortfall", system),
        .density_difference_kg_m3 = figure(practice, "density_difference", system),
        .air_gap_watch_percent = figure(practice, "air_gap_watch", system),
        .air_gap_most_percent = figure(practice, "air_gap_most", system),
        .yield_off_most_percent = figure(practice, "yield_off_most", system)};
}

} // namespace boardmark::reference
