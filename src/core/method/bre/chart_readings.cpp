#include "chart_readings.hpp"

#include <boardmark/core/method/method_tables.hpp>

#include "../../basis/phrases.hpp"
#include "../../basis/tolerance.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// Strength at the ratio where the chart's curves start: by cement, stone and age.
const StartStrength* start_of(const Mix& mix, const BritishTables& tables) {
    const auto& cement = mix.binder.front().material->binder.strength_class;
    const auto& surface = mix.coarse.front().material->aggregate.surface;
    const auto found = std::ranges::find_if(tables.start, [&](const StartStrength& row) {
        return cement && same(row.cement_class, *cement) && row.coarse == surface &&
               same(row.age_d, mix.requirements.strength_age_d);
    });
    return found == tables.start.end() ? nullptr : &*found;
}

Step reading_step(const char* name, Quantity value, const char* chart) {
    return {.quantity = name,
            .value = value.value,
            .measure = value.measure,
            .provenance = Provenance::given,
            .reason = {"read by the user from {chart} and given under 'selections'",
                       {word("chart", chart)}},
            .marks = {Mark::given}};
}

/// A reading is of what its chart was entered with; nothing scales it to another.
Unresolved read_for_another(Unresolved why, const char* text, Quantity read_at) {
    why.what.text += text;
    why.what.arguments.push_back(quantity("read_at", read_at));
    why.ways_out.push_back(
        {"a mix file of its own for each of these mixes, with its readings", {}});
    return why;
}

Unresolved no_density_reading(const DensityChartEntry& entry) {
    return {{"the fresh density is a reading of the British method's chart of wet density (Figure "
             "5), entered with free water {water} and a relative density of {density}; no formula "
             "stands in for it",
             {quantity("water", {entry.water_kg_m3, Measure::concentration}),
              quantity("density", {entry.relative_density, Measure::relative_density})}},
            {{"read it and give it, for example 'selections.fresh_density: 2400 kg/m3'", {}}}};
}

/// What passes 600 um of all sand; nothing where one is silent.
std::optional<double> passing_percent(const Mix& mix) {
    double sum_percent = 0;
    for (const Share& share : mix.fine) {
        const auto& passing = share.material->aggregate.passing_600um_percent;
        if (!passing) {
            return std::nullopt;
        }
        sum_percent += *passing * share.percent / 100;
    }
    return sum_percent;
}

Unresolved no_fines_reading(const Mix& mix, const DensityChartEntry& entry) {
    const auto passing = passing_percent(mix);
    return {{passing
                 ? "the sand's share is a reading of the British method's charts of fine "
                   "aggregate (Figure 6), entered with {size} stone, {slump} slump, w/cm {w_cm} "
                   "and {passing} passing 600 um"
                 : "the sand's share is a reading of the British method's charts of fine "
                   "aggregate (Figure 6), entered with {size} stone, {slump} slump, w/cm {w_cm} "
                   "and what passes 600 um ('materials.*.passing_600um')",
             {quantity("size", {entry.size_mm, Measure::aggregate_size}),
              quantity("slump", {entry.slump_mm, Measure::slump}),
              quantity("w_cm", {entry.w_cm, Measure::w_cm}),
              percent_of("passing", passing.value_or(0))}},
            {{"read it and give it, for example 'selections.fine_share_by_mass: 27 %'", {}}}};
}

} // namespace

Unresolved no_ratio_reading(const Mix& mix, const StrengthChartEntry& entry,
                            const MethodTables& method) {
    const StartStrength* start = start_of(mix, *method.british);
    return {{start ? "w/c by strength is a reading of the British method's chart (Figure 4): from "
                     "{start} at 0.5, to the target of {target}"
                   : "w/c by strength is a reading of the British method's chart (Figure 4) at the "
                     "target of {target}; its curve starts from the class of the cement "
                     "('materials.*.strength_class') and the stone's surface "
                     "('materials.*.surface')",
             {quantity("start", {start ? start->strength_mpa : 0, Measure::strength}),
              quantity("target", {entry.target_mpa, Measure::strength})}},
            {{"read it and give it, for example 'selections.w_cm: 0.47'", {}},
             {"a strength curve of your own trials, at the age of the strength, that reaches this "
              "average ('requirements.strength_curve')",
              {}}}};
}

void note_entry(Selections& selections, const Selection& written) {
    if (!selections.read_at) {
        selections.read_at = ChartEntry{written.water_kg_m3, written.w_cm};
    }
}

Outcome<AggregateReadings> aggregate_readings(const Mix& mix, const DensityChartEntry& entry,
                                              const MethodTables& method, Worksheet& worksheet) {
    if (!mix.selections.fresh_density_kg_m3) {
        return no_density_reading(entry);
    }
    if (!mix.selections.fine_share_by_mass_percent) {
        return no_fines_reading(mix, entry);
    }
    const auto& read_at = mix.selections.read_at;
    if (read_at && !same(read_at->water_kg_m3, entry.water_kg_m3)) {
        return read_for_another(no_density_reading(entry),
                                "; 'selections.fresh_density' was read at {read_at}",
                                {read_at->water_kg_m3, Measure::concentration});
    }
    if (read_at && !same(read_at->w_cm, entry.w_cm)) {
        return read_for_another(no_fines_reading(mix, entry),
                                "; 'selections.fine_share_by_mass' was read at {read_at}",
                                {read_at->w_cm, Measure::w_cm});
    }
    const double read_kg_m3 = *mix.selections.fresh_density_kg_m3;
    const TypicalFigure& step = method.british->air_density_step;
    const double less_kg_m3 = step.value * entry.entrained_air_percent * entry.relative_density;
    worksheet.record([&] {
        return reading_step("fresh_density", {read_kg_m3, Measure::concentration},
                            "the chart of wet density");
    });
    if (less_kg_m3 > 0) {
        worksheet.record([&] {
            return Step{
                .quantity = "fresh_density",
                .value = read_kg_m3 - less_kg_m3,
                .measure = Measure::concentration,
                .provenance = Provenance::computed,
                .reason = {"less {less} for {air} of entrained air: {step} times that times "
                           "the relative density of the aggregates together, {density}",
                           {quantity("less", {less_kg_m3, Measure::concentration}),
                            percent_of("air", entry.entrained_air_percent),
                            quantity("step", {step.value, Measure::ratio}),
                            quantity("density",
                                     {entry.relative_density, Measure::relative_density})}},
                .source = step.source,
                .marks = with_confidence({}, step.source)};
        });
    }
    const double share_percent = *mix.selections.fine_share_by_mass_percent;
    // Where a trial's stone stays, the share only weighs the relative density that air takes from.
    if (!mix.selections.coarse_dry_kg_m3 || less_kg_m3 > 0) {
        worksheet.record([&] {
            return reading_step("fine_share_by_mass", {share_percent, Measure::percent},
                                "the chart of fine aggregate");
        });
    }
    return AggregateReadings{read_kg_m3 - less_kg_m3, share_percent};
}

} // namespace boardmark::core
