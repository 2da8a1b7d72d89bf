#include "method_tables.hpp"

#include "lookup.hpp"

namespace boardmark::reference {
namespace {

using core::UnitSystem;

const EmbeddedTable& table_of(std::string_view name, UnitSystem system) {
    return table(std::string{name} + (system == UnitSystem::us ? "-us" : "-si"));
}

std::vector<core::SlumpBand> slump_bands(std::string_view group, UnitSystem system) {
    const EmbeddedTable& water = table_of("mixing-water", system);
    std::vector<core::SlumpBand> bands;
    for (const EmbeddedRow& band : water.rows) {
        if (band.group == group) {
            bands.push_back({band.from_us, band.to_us, size_row(water, band, system)});
        }
    }
    return bands;
}

std::vector<core::StrengthRow> strength_rows(UnitSystem system) {
    const EmbeddedTable& ratios = table_of("water-cement-ratio", system);
    std::vector<core::StrengthRow> rows;
    for (const EmbeddedRow& printed : ratios.rows) {
        rows.push_back({.strength_mpa = printed.from_us,
                        .w_cm_plain = present(cell(ratios, printed, "non-air-entrained")),
                        .w_cm_air_entrained = present(cell(ratios, printed, "air-entrained")),
                        .continues = printed.group.starts_with("continued"),
                        .source = source_of(printed.source)});
    }
    return rows;
}

/// The print has a row for each size; the core reads a column for each fineness modulus.
core::BulkVolumeTable bulk_volumes(UnitSystem system) {
    const EmbeddedTable& printed = table("coarse-bulk-volume");
    const EmbeddedTable& practice = table("practice");
    core::BulkVolumeTable result{
        .fineness_moduli = {},
        .columns = {},
        .lowest_continued = constant(practice, "lowest_continued_fineness", system),
        .highest_continued = constant(practice, "highest_continued_fineness", system)};
    for (std::size_t i = 0; i < printed.columns.size(); ++i) {
        result.fineness_moduli.push_back(printed.columns[i].at_us);
        core::SizeRow column{.source = source_of(printed.source), .sizes_mm = {}, .values = {}};
        for (const EmbeddedRow& size : printed.rows) {
            column.sizes_mm.push_back(system == UnitSystem::us ? size.from_us : size.from_si);
            column.values.push_back(size.cells[i]);
        }
        result.columns.push_back(std::move(column));
    }
    return result;
}

std::vector<core::SlumpRecommendation> recommended_slumps(UnitSystem system) {
    const EmbeddedTable& printed = table("recommended-slump");
    const bool us = system == UnitSystem::us;
    std::vector<core::SlumpRecommendation> rows;
    for (const EmbeddedRow& construction : printed.rows) {
        rows.push_back({std::string{construction.name},
                        cell(printed, construction, us ? "least_us" : "least_si"),
                        cell(printed, construction, us ? "most_us" : "most_si"),
                        source_of(construction.source)});
    }
    return rows;
}

} // namespace

core::MethodTables method_tables(UnitSystem system) {
    const EmbeddedTable& air = table("air-content");
    const EmbeddedTable& density = table_of("fresh-density", system);
    const EmbeddedTable& practice = table("aci211.1-91-method");
    return {
        .name = std::string{practice.source.work},
        .procedure = std::string{note(practice.rows.front(), "procedure")},
        .finds = std::string{note(practice.rows.front(), "finds")},
        .strength_of = std::string{note(practice.rows.front(), "strength_of")},
        .absolute_volume = source_of(practice.source),
        .water_plain = slump_bands("non-air-entrained", system),
        .water_air_entrained = slump_bands("air-entrained", system),
        .entrapped_air_percent = size_row(air, row(air, "entrapped"), system),
        .air_entrained_margin_percent = constant(table("practice"), "air_entrained_margin", system),
        .strength = strength_rows(system),
        .bulk_volume = bulk_volumes(system),
        .fresh_density_plain_kg_m3 = size_row(density, row(density, "non-air-entrained"), system),
        .fresh_density_air_entrained_kg_m3 =
            size_row(density, row(density, "air-entrained"), system),
        .slump = recommended_slumps(system),
        .fineness_sieves_mm = fineness_sieves_mm(),
        .fineness_source = source_of(table("fineness-modulus-sieves").source)};
}

std::vector<double> fineness_sieves_mm() {
    const EmbeddedTable& sieves = table("fineness-modulus-sieves");
    std::vector<double> openings_mm;
    for (const EmbeddedRow& sieve : sieves.rows) {
        openings_mm.push_back(cell(sieves, sieve, "opening"));
    }
    return openings_mm;
}

} // namespace boardmark::reference
