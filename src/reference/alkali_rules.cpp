#include "alkali_rules.hpp"

#include "lookup.hpp"

namespace boardmark::reference {

using core::UnitSystem;

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
                                .beside_level = std::string{besides}});
    }
    return rules;
}

} // namespace boardmark::reference
