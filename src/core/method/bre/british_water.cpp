#include "british_water.hpp"

#include <boardmark/core/method/method_tables.hpp>

#include "../../basis/interpolation.hpp"
#include "../../basis/phrases.hpp"
#include "../../basis/tolerance.hpp"

namespace boardmark::core {
namespace {

/// What a blend counts as: crushed where any of it is, for that needs more water. Nothing where one
/// of it is silent.
std::optional<Surface> surface_of(const std::vector<Share>& shares) {
    std::optional<Surface> surface = Surface::uncrushed;
    for (const Share& share : shares) {
        const auto& stated = share.material->aggregate.surface;
        if (!stated) {
            return std::nullopt;
        }
        surface = *stated == Surface::crushed ? stated : surface;
    }
    return surface;
}

/// The range of slump of a surface, the drier one where two touch; air-entrained concrete takes the
/// one before it. Nothing beyond the table.
const FreeWaterRow* row_of(const WaterEntry& entry, Surface surface,
                           const std::vector<FreeWaterRow>& rows) {
    const FreeWaterRow* drier = nullptr;
    for (const FreeWaterRow& row : rows) {
        if (row.surface != surface) {
            continue;
        }
        if (!above(entry.slump_mm, row.high_mm)) {
            return entry.air_entrained && drier ? drier : &row;
        }
        drier = &row;
    }
    return nullptr;
}

std::vector<Phrase> other_ways() {
    return {{"choose a slump and a size that the table covers", {}},
            {"give the water found by trial as 'selections.water'", {}}};
}

Outcome<double> water_of(const WaterEntry& entry, Surface surface, const BritishTables& tables) {
    const FreeWaterRow* row = row_of(entry, surface, tables.water);
    const auto value = row ? value_at_size(row->water_kg_m3, entry.size_mm) : std::nullopt;
    if (!value) {
        return Unresolved{{"{source} has no water for {size} stone at {slump} slump",
                           {word("source", tables.water.front().water_kg_m3.source.citation),
                            quantity("size", {entry.size_mm, Measure::aggregate_size}),
                            quantity("slump", {entry.slump_mm, Measure::slump})}},
                          other_ways()};
    }
    return value->value;
}

Step water_step(double water_kg_m3, Phrase reason, const Source& source) {
    return {.quantity = step_ids::water,
            .value = water_kg_m3,
            .measure = Measure::concentration,
            .provenance = Provenance::table,
            .reason = std::move(reason),
            .source = source,
            .marks = with_confidence({}, source)};
}

} // namespace

Outcome<double> british_water_kg_m3(const Mix& mix, const WaterEntry& entry,
                                    const MethodTables& method, Worksheet& worksheet) {
    const BritishTables& tables = *method.british;
    const auto fine = surface_of(mix.fine);
    const auto coarse = surface_of(mix.coarse);
    if (!fine || !coarse) {
        return Unresolved{{"the British method takes free water by the surface of the aggregates, "
                           "and it is not stated of each",
                           {}},
                          {{"add 'surface: crushed' or 'surface: uncrushed' to each aggregate "
                            "('materials.*.surface')",
                            {}},
                           {"give the water found by trial as 'selections.water'", {}}}};
    }
    const auto by_fine = water_of(entry, *fine, tables);
    const auto by_coarse = water_of(entry, *coarse, tables);
    if (!by_fine || !by_coarse) {
        return by_fine ? by_coarse.why() : by_fine.why();
    }
    const double share = tables.fine_water_share.value;
    const double water_kg_m3 =
        *fine == *coarse ? *by_coarse : share * *by_fine + (1 - share) * *by_coarse;
    worksheet.record([&] {
        const Source& source = row_of(entry, *coarse, tables.water)->water_kg_m3.source;
        std::string text = *fine == *coarse
                               ? "{size} {surface} stone at {slump} slump"
                               : "two thirds of {fine} by the sand's surface and one third of "
                                 "{coarse} by the stone's, {size} stone at {slump} slump";
        if (entry.air_entrained) {
            text += "; the next lower range of slump, for the entrained air";
        }
        return water_step(water_kg_m3,
                          {std::move(text),
                           {quantity("size", {entry.size_mm, Measure::aggregate_size}),
                            word("surface", *coarse == Surface::crushed ? "crushed" : "uncrushed"),
                            quantity("fine", {*by_fine, Measure::concentration}),
                            quantity("coarse", {*by_coarse, Measure::concentration}),
                            quantity("slump", {entry.slump_mm, Measure::slump})}},
                          source);
    });
    return water_kg_m3;
}

} // namespace boardmark::core
