#include "indian_water.hpp"

#include <boardmark/core/method/method_tables.hpp>

#include "../../basis/interpolation.hpp"
#include "../../basis/phrases.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// Of several kinds of stone the one that needs most water counts. Nothing where one is silent.
std::optional<StoneShape> thirstiest_shape(const Mix& mix) {
    std::optional<StoneShape> thirstiest;
    for (const Share& share : mix.coarse) {
        const auto& shape = share.material->aggregate.shape;
        if (!shape) {
            return std::nullopt;
        }
        thirstiest = std::min(thirstiest.value_or(*shape), *shape); // angular stands first
    }
    return thirstiest;
}

} // namespace

Outcome<double> indian_water_kg_m3(const Mix& mix, const WaterEntry& entry,
                                   const MethodTables& method, Worksheet& worksheet) {
    const IndianTables& tables = *method.indian;
    const auto at_table = value_at_size(tables.water_kg_m3, entry.size_mm);
    if (!at_table) {
        return Unresolved{{"{source} has no water for {size} stone",
                           {word("source", tables.water_kg_m3.source.citation),
                            quantity("size", {entry.size_mm, Measure::aggregate_size})}},
                          {{"choose stone of a size that the table covers", {}},
                           {"give the water found by trial as 'selections.water'", {}}}};
    }
    const auto shape = thirstiest_shape(mix);
    if (!shape) {
        return Unresolved{{"{method} takes water by the shape of the stone, and it is not stated",
                           {word("method", method.name)}},
                          {{"add 'shape: angular', 'sub-angular', 'gravel' or 'rounded' to each "
                            "coarse aggregate ('materials.*.shape')",
                            {}},
                           {"give the water found by trial as 'selections.water'", {}}}};
    }
    const double above_mm = std::max(entry.slump_mm - tables.water_slump_mm.value, 0.0);
    const double more_percent =
        tables.water_step_percent.value * above_mm / tables.slump_step_mm.value;
    const TypicalFigure& less = tables.less_water_kg_m3[static_cast<std::size_t>(*shape)];
    const double water_kg_m3 = (at_table->value - less.value) * (1 + more_percent / 100);
    worksheet.record([&] {
        std::string text = "{table} for {size} angular stone at {base} slump";
        text += less.value > 0 ? ", less {less} for its shape" : "";
        text += more_percent > 0 ? ", {more} more for {slump}" : "";
        const Source& source = less.value > 0 ? less.source : tables.water_kg_m3.source;
        return Step{.quantity = step_ids::water,
                    .value = water_kg_m3,
                    .measure = Measure::concentration,
                    .provenance = Provenance::table,
                    .reason = {std::move(text),
                               {quantity("table", {at_table->value, Measure::concentration}),
                                quantity("size", {entry.size_mm, Measure::aggregate_size}),
                                quantity("base", {tables.water_slump_mm.value, Measure::slump}),
                                quantity("less", {less.value, Measure::concentration}),
                                percent_of("more", more_percent),
                                quantity("slump", {entry.slump_mm, Measure::slump})}},
                    .source = source,
                    .marks = with_confidence(at_table->marks(), source)};
    });
    return water_kg_m3;
}

} // namespace boardmark::core
