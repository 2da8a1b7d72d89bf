#include "coarse_aggregate.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../basis/interpolation.hpp"
#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

Unresolved fineness_out_of_reach(const BulkVolumeTable& table, double fineness_modulus) {
    return {
        {"{source} covers fineness moduli from {lowest} to {highest} (continued from {from} and "
         "to {to}); the sand has {modulus}",
         {word("source", table.columns.front().source.citation),
          quantity("lowest", {table.fineness_moduli.front(), Measure::fineness_modulus}),
          quantity("highest", {table.fineness_moduli.back(), Measure::fineness_modulus}),
          quantity("from", {table.lowest_continued, Measure::fineness_modulus}),
          quantity("to", {table.highest_continued, Measure::fineness_modulus}),
          quantity("modulus", {fineness_modulus, Measure::fineness_modulus})}},
        {{"blend with another sand so that the modulus of the blend comes inside", {}},
         {"give the bulk volume found by trial as 'selections.coarse_volume'", {}}}};
}

/// The position of a modulus among the columns; beyond the ends the line is continued as far as
/// the table allows.
Outcome<Position> locate_modulus(const BulkVolumeTable& table, double fineness_modulus) {
    if (const auto inside = locate(table.fineness_moduli, fineness_modulus)) {
        return *inside;
    }
    if (below(fineness_modulus, table.lowest_continued) ||
        above(fineness_modulus, table.highest_continued)) {
        return fineness_out_of_reach(table, fineness_modulus);
    }
    const auto& moduli = table.fineness_moduli;
    const std::size_t lower = fineness_modulus < moduli.front() ? 0 : moduli.size() - 2;
    const double span = moduli[lower + 1] - moduli[lower];
    return Position{lower, lower + 1, (fineness_modulus - moduli[lower]) / span};
}

Outcome<TableValue> value_in_column(const SizeRow& column, double size_mm) {
    const auto value = value_at_size(column, size_mm);
    if (!value) {
        return Unresolved{
            {"{source} has no bulk volume for {size} stone",
             {word("source", column.source.citation),
              quantity("size", {size_mm, Measure::aggregate_size})}},
            {{"choose stone of a size that the table covers", {}},
             {"give the bulk volume found by trial as 'selections.coarse_volume'", {}}}};
    }
    return *value;
}

} // namespace

double largest_size_mm(const std::vector<Share>& coarse) {
    double largest_mm = 0;
    for (const Share& share : coarse) {
        if (share.percent > 0) {
            largest_mm =
                std::max(largest_mm, share.material->aggregate.nominal_max_size_mm.value_or(0));
        }
    }
    return largest_mm;
}

std::optional<double> dry_rodded_density_kg_m3(const Mix& mix, const Tables& tables,
                                               Worksheet& worksheet) {
    const auto record_stated = [&](double kg_m3, const char* how) {
        worksheet.record([&] {
            return Step{.quantity = "dry_rodded_density",
                        .value = kg_m3,
                        .measure = Measure::bulk_density,
                        .provenance = Provenance::given,
                        .reason = {how, {}}};
        });
    };
    if (mix.blend_dry_rodded_density_kg_m3) {
        record_stated(*mix.blend_dry_rodded_density_kg_m3, "measured on the blend");
        return mix.blend_dry_rodded_density_kg_m3;
    }
    const bool one_stated =
        mix.coarse.size() == 1 && mix.coarse.front().material->aggregate.dry_rodded_density_kg_m3;
    if (one_stated) {
        const double kg_m3 = *mix.coarse.front().material->aggregate.dry_rodded_density_kg_m3;
        record_stated(kg_m3, "from the aggregate test report");
        return kg_m3;
    }
    double mean_kg_m3 = 0;
    for (const Share& share : mix.coarse) {
        const AggregateFigures& figures = share.material->aggregate;
        if (figures.dry_rodded_density_kg_m3) {
            mean_kg_m3 += share.percent / 100 * *figures.dry_rodded_density_kg_m3;
        } else if (figures.typical) {
            const TypicalFigure& usual = tables.practice.aggregate.dry_rodded_density_kg_m3;
            mean_kg_m3 += share.percent / 100 * usual.value;
            worksheet.record([&] {
                return Step{.quantity = "dry_rodded_density",
                            .value = usual.value,
                            .measure = Measure::bulk_density,
                            .provenance = Provenance::table,
                            .reason = {"usual figure; {name} states none",
                                       {word("name", share.material->name)}},
                            .source = usual.source,
                            .marks = with_confidence({Mark::typical}, usual.source)};
            });
        } else {
            return std::nullopt;
        }
    }
    if (mix.coarse.size() > 1) {
        worksheet.record([&] {
            return Step{.quantity = "dry_rodded_density",
                        .value = mean_kg_m3,
                        .measure = Measure::bulk_density,
                        .provenance = Provenance::computed,
                        .reason = {"mean of the blend by mass; a blend packs denser: "
                                   "measure it ('mixture.coarse_dry_rodded_density')",
                                   {}},
                        .marks = {Mark::estimate}};
        });
    }
    return mean_kg_m3;
}

Outcome<double> table_bulk_volume(BulkVolumeEntry entry, const Selections& selections,
                                  const Tables& tables, Worksheet& worksheet) {
    const BulkVolumeTable& table = tables.method.bulk_volume;
    const auto position = locate_modulus(table, entry.fineness_modulus);
    if (!position) {
        return position.why();
    }
    const auto lower = value_in_column(table.columns[position->lower], entry.size_mm);
    const auto upper = value_in_column(table.columns[position->upper], entry.size_mm);
    if (!lower || !upper) {
        return lower ? upper.why() : lower.why();
    }
    const double printed = lower->value + position->fraction * (upper->value - lower->value);
    const double adjustment_percent = selections.coarse_adjustment_percent.value_or(0);

    const auto marks = [&] {
        const bool continued = position->fraction < 0 || position->fraction > 1;
        Marks found;
        if (lower->interpolated || (position->between() && !continued)) {
            found.push_back(Mark::interpolated);
        }
        if (continued) {
            found.push_back(Mark::continued);
        }
        if (adjustment_percent != 0) {
            found.push_back(Mark::given);
        }
        return found;
    };
    const Source& source = table.columns.front().source;
    worksheet.record([&] {
        return Step{
            .quantity = "coarse_volume",
            .value = printed * (1 + adjustment_percent / 100),
            .measure = Measure::bulk_volume,
            .provenance = Provenance::table,
            .reason = {adjustment_percent == 0
                           ? "dry-rodded coarse aggregate, {size} stone, sand of fineness modulus "
                             "{modulus}"
                           : "dry-rodded coarse aggregate, {size} stone, sand of fineness modulus "
                             "{modulus}: {printed}, adjusted by {adjustment}",
                       {quantity("size", {entry.size_mm, Measure::aggregate_size}),
                        quantity("modulus", {entry.fineness_modulus, Measure::fineness_modulus}),
                        quantity("printed", {printed, Measure::bulk_volume}),
                        percent_of("adjustment", adjustment_percent)}},
            .source = source,
            .marks = with_confidence(marks(), source)};
    });
    return printed * (1 + adjustment_percent / 100);
}

} // namespace boardmark::core
