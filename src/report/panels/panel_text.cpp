#include <boardmark/report/panels/panel_report.hpp>
#include <boardmark/report/writing/words.hpp>
#include <boardmark/text/utf8.hpp>

#include "../writing/flow.hpp"
#include "../writing/html.hpp"
#include "../writing/quantity_format.hpp"
#include "../writing/text_sections.hpp"
#include "../writing/trace.hpp"
#include "../writing/verdicts.hpp"
#include "panel_tables.hpp"

#include <fmt/format.h>

namespace boardmark::report {
namespace {

using core::UnitSystem;

Flow panel_items(const std::vector<core::Phrase>& phrases, UnitSystem system) {
    Flow flow;
    for (const core::Phrase& phrase : phrases) {
        flow += paragraph(words(phrase, system), list_item);
    }
    return flow;
}

/// "6 small panels and 1 cast again, in 3 batches"
std::string counted_panels(const core::PanelProgramme& programme) {
    const std::size_t panels = programme.design.rows.size();
    const std::size_t repeats = programme.panels.size() - panels;
    return fmt::format("{} small panel{}{}, in {} batch{}", panels, panels == 1 ? "" : "s",
                       repeats > 0 ? fmt::format(" and {} cast again", repeats) : "",
                       programme.batches.size(), programme.batches.size() == 1 ? "" : "es");
}

Flow panels_heading(const PanelResult& result, UnitSystem system) {
    return paragraph(text::printable(result.title), {}) + file_line(result.inputs) +
           paragraph("Sample panels: " + counted_panels(result.programme) +
                         "; concrete of the wall: " + text::printable(result.mix_file),
                     {}) +
           "\n" + verdict_line(verdicts_of(result.programme), system, "DO NOT CAST");
}

Flow source_items(const std::vector<core::Source>& sources) {
    Flow flow;
    for (const core::Source& source : sources) {
        flow += paragraph(source.citation + (source.confidence == core::Confidence::from_memory
                                                 ? " (from memory, not read again)"
                                                 : ""),
                          list_item);
    }
    return flow;
}

Flow mix_check_lists(const core::PanelProgramme& programme, UnitSystem system) {
    Flow flow;
    for (const core::PanelMix& mix : programme.mixes) {
        const bool alone = programme.mixes.size() == 1;
        flow += section("CHECKS of " + text::printable(mix.file)) +
                text_of_checks(mix.checks, system, alone ? "" : mix.file);
    }
    return flow;
}

Flow flow_of(const PanelResult& result, const TextStyle& style) {
    const core::PanelProgramme& programme = result.programme;
    const UnitSystem system = style.system;
    Flow page = panels_heading(result, system);
    page +=
        section("WHAT DIFFERS, of each first what is meant for the wall") + factors_table(result);
    page += section("PANELS in the order of casting") + panels_table(result);
    page += section("BATCHES") + batches_table(result, system);
    page += section("CHECKS of panels and mock-up") + text_of_checks(programme.checks, system);
    page += section("WHAT THEY ANSWER") + effects_table(result);
    page += section("OTHER COUNTS OF PANELS") + designs_table(result);
    page += section("ROOM on a small panel") + room_table(programme.room, system);
    page += section("ROOM on the mock-up") + room_table(programme.mockup_room, system);
    for (const core::BriefSection& rules : programme.rules) {
        page += section(rules.name) + panel_items(rules.items, system);
    }
    page += section("SCORE SHEET, one for each who scores") + score_sheet(result, system);
    page += mix_check_lists(programme, system);
    page += section("SOURCES of the figures") + source_items(programme.sources);
    return page + section("CAUTIONS") + panel_items(programme.cautions, system);
}

} // namespace

std::string text(const PanelResult& result, const TextStyle& style) {
    return written(flow_of(result, style) + "\n" + trace_line(result.inputs), style);
}

std::string html(const PanelResult& result, const TextStyle& style) {
    return html_of(flow_of(result, style),
                   {.title = result.title, .command = "panels", .inputs = result.inputs});
}

} // namespace boardmark::report
