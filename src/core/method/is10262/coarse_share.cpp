#include "coarse_share.hpp"

#include <boardmark/core/method/method_tables.hpp>

#include "../../basis/interpolation.hpp"
#include "../../basis/phrases.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// Sands of one zone together; nothing where one states none or two differ.
std::optional<int> zone_of(const Mix& mix) {
    std::optional<int> zone = mix.fine.front().material->aggregate.zone;
    for (const Share& share : mix.fine) {
        if (share.material->aggregate.zone != zone) {
            return std::nullopt;
        }
    }
    return zone;
}

Unresolved no_zone(const MethodTables& method) {
    return {
        {"{method} takes the stone's share by the zone of the sand, and no single zone is stated",
         {word("method", method.name)}},
        {{"add the zone of IS 383 to the sand ('materials.*.zone: II'); its sieve of 600 um "
          "tells it",
          {}},
         {"give the sand's share of the aggregate volume ('selections.fine_share')", {}}}};
}

} // namespace

Outcome<double> indian_coarse_share(const Mix& mix, const CoarseShareEntry& entry,
                                    const MethodTables& method, Worksheet& worksheet) {
    const IndianTables& tables = *method.indian;
    const auto zone = zone_of(mix);
    if (!zone) {
        return no_zone(method);
    }
    const auto& row = *std::ranges::find(tables.coarse_share, *zone, &CoarseShareRow::zone);
    const auto at_table = value_at_size(row.share, entry.size_mm);
    if (!at_table) {
        return Unresolved{{"{source} has no share for {size} stone",
                           {word("source", row.share.source.citation),
                            quantity("size", {entry.size_mm, Measure::aggregate_size})}},
                          {{"give the sand's share of the aggregate volume "
                            "('selections.fine_share')",
                            {}}}};
    }
    const double by_ratio = tables.share_step.value * (tables.share_ratio.value - entry.w_cm) /
                            tables.share_ratio_step.value;
    const bool pumped = mix.requirements.pumped;
    const double share = (at_table->value + by_ratio) * (pumped ? tables.pumped_share.value : 1);
    worksheet.record([&] {
        const Source& source = pumped ? tables.pumped_share.source : row.share.source;
        return Step{.quantity = "coarse_share",
                    .value = share,
                    .measure = Measure::ratio,
                    .provenance = Provenance::table,
                    .reason = {pumped
                                   ? "of the aggregate volume: {table} for zone {zone} and {size} "
                                     "stone at w/cm {at}, {change} for w/cm {w_cm}, times "
                                     "{pumped} for the pump"
                                   : "of the aggregate volume: {table} for zone {zone} and {size} "
                                     "stone at w/cm {at}, {change} for w/cm {w_cm}",
                               {quantity("table", {at_table->value, Measure::ratio}),
                                quantity("zone", {double(*zone), Measure::count}),
                                quantity("size", {entry.size_mm, Measure::aggregate_size}),
                                quantity("at", {tables.share_ratio.value, Measure::w_cm}),
                                quantity("change", {by_ratio, Measure::ratio}),
                                quantity("w_cm", {entry.w_cm, Measure::w_cm}),
                                quantity("pumped", {tables.pumped_share.value, Measure::ratio})}},
                    .source = source,
                    .marks = with_confidence(at_table->marks(), source)};
    });
    return share;
}

} // namespace boardmark::core
