#include "alkali_rules.hpp"

#include "lookup.hpp"

#include <string>
#include <utility>

namespace boardmark::reference {

using core::UnitSystem;

namespace {

/// How reactivity and the class of the structure lead to a level.
void take_prevention(core::AlkaliRules& rules) {
    const EmbeddedTable& risks = table("alkali-risk");
    const EmbeddedTable& prevention = table("alkali-prevention");
    for (const EmbeddedColumn& column : risks.columns) {
        rules.reactivities.emplace_back(column.name);
    }
    for (const EmbeddedRow& line : risks.rows) {
        rules.risks.push_back({.salted = line.name == "alkali in service",
                               .by_reactivity = {line.cells.begin(), line.cells.end()}});
    }
    for (const EmbeddedNote& structure : prevention.rows.front().notes) { // in the order of names
        rules.structures.emplace_back(structure.name);
    }
    for (const EmbeddedRow& line : prevention.rows) {
        core::AlkaliPrevention row{.risk = line.cells.front(), .by_structure = {}};
        for (const std::string& structure : rules.structures) {
            row.by_structure.emplace_back(note(line, structure));
        }
        rules.prevention.push_back(std::move(row));
    }
    rules.prevention_source = source_of(prevention.source);
}

} // namespace

core::AlkaliRules alkali_rules(UnitSystem system) {
    const EmbeddedTable& printed = table("alkali-loading");
    core::AlkaliRules rules{.levels = {},
                            .source = source_of(printed.source),
                            .guided_to_percent =
                                figure(table("practice"), "alkali_guided_to", system)};
    const char* most = system == UnitSystem::us ? "most_us" : "most_si";
    for (const EmbeddedRow& line : printed.rows) {
        const std::string_view besides = note(line, "besides");
        rules.levels.push_back({.name = std::string{line.name},
                                .most_kg_m3 = present(cell(printed, line, most)),
                                .least_slag_percent = present(cell(printed, line, "slag")),
                                .least_ash_percent = present(cell(printed, line, "ash")),
                                .beside_level = std::string{besides},
                                .fume_factor = present(cell(printed, line, "fume_factor"))});
    }
    take_prevention(rules);
    rules.least_fume_percent = constant(table("practice"), "alkali_least_fume", system);
    return rules;
}

} // namespace boardmark::reference
