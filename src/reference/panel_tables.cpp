#include "panel_tables.hpp"

#include "lookup.hpp"

#include <array>
#include <string>

namespace boardmark::reference {
namespace {

using core::PanelFeature;
using core::UnitSystem;

std::vector<core::PublishedDesign> published_designs() {
    const EmbeddedTable& printed = table("two-level-designs");
    std::vector<core::PublishedDesign> designs;
    for (const EmbeddedRow& line : printed.rows) {
        const auto whole = [&](const char* column) {
            return static_cast<int>(cell(printed, line, column));
        };
        core::PublishedDesign design{.factors = whole("factors"),
                                     .runs = whole("runs"),
                                     .resolution = whole("resolution"),
                                     .generators = {},
                                     .source = source_of(line.source)};
        for (const std::string_view word : split(note(line, "generators"), " ")) {
            design.generators.emplace_back(word);
        }
        designs.push_back(std::move(design));
    }
    return designs;
}

std::vector<core::PanelField> panel_fields(UnitSystem system) {
    constexpr std::array all{PanelFeature::face,    PanelFeature::board_joint,
                             PanelFeature::tie,     PanelFeature::corner,
                             PanelFeature::joint,   PanelFeature::lift_line,
                             PanelFeature::box_out, PanelFeature::repair};
    const EmbeddedTable& printed = table("panel-fields");
    const bool us = system == UnitSystem::us;
    std::vector<core::PanelField> fields;
    for (const PanelFeature feature : all) {
        const EmbeddedRow& line = row(printed, core::name_of(feature));
        fields.push_back({.feature = feature,
                          .length_mm = cell(printed, line, us ? "length_us" : "length_si"),
                          .height_mm = cell(printed, line, us ? "height_us" : "height_si"),
                          .source = source_of(line.source)});
    }
    return fields;
}

} // namespace

core::PanelTables panel_tables(UnitSystem system) {
    const EmbeddedTable& printed = table("panels");
    core::TypicalFigure viewing_m = figure(printed, "viewing", system);
    viewing_m.value /= 1000;
    return {.designs = published_designs(),
            .fields = panel_fields(system),
            .viewing_m = viewing_m,
            .around_box_out_mm = figure(printed, "around_box_out", system),
            .courses = figure(printed, "courses", system),
            .lifts = figure(printed, "lifts", system),
            .least_void_mm = figure(printed, "least_void", system),
            .size_step_mm = figure(printed, "size_step", system)};
}

} // namespace boardmark::reference
