#include "mixing_water.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../basis/interpolation.hpp"
#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"

namespace boardmark::core {
namespace {

/// Slump is measured to 1/4 in (6 mm): what lies this near a band's limit is in the band.
constexpr double band_tolerance_mm = 3; // common practice, no source

/// The bands at or beside a slump, and how far it lies from the first to the second.
struct BandPosition {
    const SlumpBand* lower;
    const SlumpBand* upper;
    double fraction;
};

Unresolved slump_too_low(const SlumpBand& first, double slump_mm) {
    return {{"{source} begins at {least} slump; this mix is to have {slump}",
             {word("source", first.water_kg_m3.source.citation),
              quantity("least", {first.low_mm, Measure::slump}),
              quantity("slump", {slump_mm, Measure::slump})}},
            {{"ask for a slump inside the table", {}},
             {"give the water found by trial as 'selections.water'", {}}}};
}

Unresolved slump_too_high(const SlumpBand& last, double slump_mm) {
    return {{"{source} ends at {most} slump; this mix is to have {slump}, at which water alone "
             "would make it segregate",
             {word("source", last.water_kg_m3.source.citation),
              quantity("most", {last.high_mm, Measure::slump}),
              quantity("slump", {slump_mm, Measure::slump})}},
            {{"state the slump before the high-range water reducer goes in "
              "('requirements.slump_before_reducer'); the reducer brings the flow",
              {}},
             {"give the water found by trial as 'selections.water'", {}}}};
}

Outcome<BandPosition> locate_slump(const std::vector<SlumpBand>& bands, double slump_mm) {
    if (below(slump_mm, bands.front().low_mm - band_tolerance_mm)) {
        return slump_too_low(bands.front(), slump_mm);
    }
    for (std::size_t i = 0; i < bands.size(); ++i) {
        if (!above(slump_mm, bands[i].high_mm + band_tolerance_mm)) {
            if (!below(slump_mm, bands[i].low_mm - band_tolerance_mm)) {
                return BandPosition{&bands[i], &bands[i], 0};
            }
            const double gap_mm = bands[i].low_mm - bands[i - 1].high_mm;
            return BandPosition{&bands[i - 1], &bands[i],
                                (slump_mm - bands[i - 1].high_mm) / gap_mm};
        }
    }
    return slump_too_high(bands.back(), slump_mm);
}

Outcome<TableValue> value_in_band(const SlumpBand& band, const WaterEntry& entry) {
    const auto value = value_at_size(band.water_kg_m3, entry.size_mm);
    if (!value) {
        return Unresolved{{"{source} has no water for {size} stone at {slump} slump",
                           {word("source", band.water_kg_m3.source.citation),
                            quantity("size", {entry.size_mm, Measure::aggregate_size}),
                            quantity("slump", {entry.slump_mm, Measure::slump})}},
                          {{"choose a slump and a size that the table covers", {}},
                           {"give the water found by trial as 'selections.water'", {}}}};
    }
    return *value;
}

} // namespace

Outcome<double> table_water_kg_m3(const WaterEntry& entry, const Tables& tables,
                                  Worksheet& worksheet) {
    const auto& bands =
        entry.air_entrained ? tables.method.water_air_entrained : tables.method.water_plain;
    const auto position = locate_slump(bands, entry.slump_mm);
    if (!position) {
        return position.why();
    }
    const auto lower = value_in_band(*position->lower, entry);
    const auto upper =
        position->upper == position->lower ? lower : value_in_band(*position->upper, entry);
    if (!lower || !upper) {
        return lower ? upper.why() : lower.why();
    }
    const double water_kg_m3 = lower->value + position->fraction * (upper->value - lower->value);

    const bool interpolated = lower->interpolated || upper->interpolated || position->fraction != 0;
    const Source& source = position->lower->water_kg_m3.source;
    worksheet.record([&] {
        return Step{
            .quantity = step_ids::water,
            .value = water_kg_m3,
            .measure = Measure::concentration,
            .provenance = Provenance::table,
            .reason = {"{column} concrete, {slump} slump, {size} stone",
                       {word("column", entry.air_entrained ? "air-entrained" : "non-air-entrained"),
                        quantity("slump", {entry.slump_mm, Measure::slump}),
                        quantity("size", {entry.size_mm, Measure::aggregate_size})}},
            .source = source,
            .marks = with_confidence(interpolated ? Marks{Mark::interpolated} : Marks{}, source)};
    });
    return water_kg_m3;
}

} // namespace boardmark::core
