#include "reading_text.hpp"

#include "../writing/blank.hpp"
#include "../writing/grid.hpp"
#include "../writing/names.hpp"
#include "../writing/quantity_format.hpp"

#include <string>

namespace boardmark::report {
namespace {

using core::Measure;
using core::UnitSystem;

void add_moistures(const core::Batch& batch, UnitSystem system, Grid& grid) {
    for (const core::BatchItem& item : batch.items) {
        if (item.moisture_percent) {
            grid.add({"moisture", blank,
                      column_name(item.name) + ", " +
                          shown({*item.moisture_percent, Measure::percent}, system) + " counted"});
        }
    }
}

std::string density_aim(const core::Proportions& proportions, UnitSystem system) {
    const auto& density = proportions.totals.fresh_density_kg_m3;
    return density ? "about " + shown({*density, Measure::fresh_density}, system) : "";
}

void add_slumps(const core::Requirements& asked, UnitSystem system, Grid& grid) {
    grid.add({"slump", blank, "aim " + shown({asked.slump_mm, Measure::slump}, system)});
    grid.add({"slump_after", blank, "0 min"});
    grid.add({"", blank, "30 min"});
    grid.add({"slump_before_reducer", blank,
              asked.slump_before_reducer_mm
                  ? "aim " + shown({*asked.slump_before_reducer_mm, Measure::slump}, system)
                  : "where one is used"});
}

} // namespace

Flow text_of_readings(const BatchResult& result, UnitSystem system) {
    Grid grid{{Align::left, Align::left, Align::left}};
    grid.add({"name", blank, "of the trial or load"});
    add_moistures(result.each, system, grid);
    grid.add({"density", blank, density_aim(result.proportions, system)});
    grid.add({"measure: full", blank, "in place of the density"});
    grid.add({"measure: empty", blank, ""});
    grid.add({"measure: volume", blank, ""});
    add_slumps(result.requirements, system, grid);
    grid.add(
        {"air", blank,
         "aim " + shown({result.proportions.selection.air_percent, Measure::percent}, system)});
    grid.add({"temperature", blank, "of the concrete"});
    grid.add({"mixed at", blank, "time"});
    grid.add({"placed at", blank, "time"});
    return grid;
}

} // namespace boardmark::report
