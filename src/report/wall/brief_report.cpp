#include <boardmark/report/wall/brief_report.hpp>
#include <boardmark/report/writing/words.hpp>
#include <boardmark/text/utf8.hpp>

#include "../drawing/drawing_flow.hpp"
#include "../writing/csv_cells.hpp"
#include "../writing/flow.hpp"
#include "../writing/html.hpp"
#include "../writing/json_values.hpp"
#include "../writing/long_table.hpp"
#include "../writing/measure_units.hpp"
#include "../writing/text_sections.hpp"
#include "../writing/trace.hpp"
#include "../writing/verdicts.hpp"

#include <algorithm>

namespace boardmark::report {
namespace {

constexpr const char* walls_checks = "CHECKS of the walls";
constexpr const char* mix_checks = "CHECKS of the mix";

Flow items_of(const std::vector<core::Phrase>& phrases, core::UnitSystem system) {
    Flow flow;
    for (const core::Phrase& phrase : phrases) {
        flow += paragraph(words(phrase, system), list_item);
    }
    return flow;
}

std::string source_text(const core::Source& source) {
    return source.citation + (source.confidence == core::Confidence::from_memory
                                  ? " (from memory, not read again)"
                                  : "");
}

Flow brief_heading(const BriefResult& result, core::UnitSystem system) {
    return paragraph(text::printable(result.title), {}) + file_line(result.inputs) +
           paragraph("Brief for the concrete contractor and the supplier; concrete of " +
                         text::printable(result.mix_file),
                     {}) +
           "\n" + verdict_line(verdicts_of(result.plan), system, "DO NOT PLACE") +
           strength_line(result.plan.mix_checks, system);
}

Flow flow_of(const BriefResult& result, const TextStyle& style) {
    Flow page = brief_heading(result, style.system);
    for (const core::BriefSection& section : result.brief.sections) {
        if (!section.items.empty()) {
            page += report::section(section.name) + items_of(section.items, style.system);
        }
    }
    page += section(walls_checks) + text_of_checks(result.plan.checks, style.system);
    page += section(mix_checks) + text_of_checks(result.plan.mix_checks, style.system);
    page += section("QUESTIONS for the meeting before the pour") +
            items_of(result.brief.questions, style.system);
    if (!result.plan.layout.sections.empty()) {
        page += Flow{Block{Heading{.text = "THE WALLS DRAWN", .page_only = true}}} +
                drawn_elevations(result.plan.layout, style.system) +
                drawn_sections(result.plan.layout, style.system);
    }
    page += section("SOURCES of the figures");
    for (const core::Source& source : result.brief.sources) {
        page += paragraph(source_text(source), list_item);
    }
    return page + section("CAUTIONS") + items_of(result.brief.cautions, style.system);
}

/// Whether a sentence tells of a pressure or a tie: the caution then stands in its own row.
bool speaks_of_forms(const core::Phrase& phrase) {
    const bool presses = std::ranges::any_of(phrase.arguments, [](const core::Argument& argument) {
        const auto* quantity = std::get_if<core::Quantity>(&argument.value);
        return quantity && presses_on_forms(quantity->measure);
    });
    return presses || phrase.text.starts_with("Ties ");
}

} // namespace

std::string text(const BriefResult& result, const TextStyle& style) {
    return written(flow_of(result, style), style);
}

std::string html(const BriefResult& result, const TextStyle& style) {
    return html_of(flow_of(result, style),
                   {.title = result.title, .command = "brief", .inputs = result.inputs});
}

std::string json(const BriefResult& result) {
    Json object = json_heading("brief", result.title, verdicts_of(result.plan), result.inputs);
    object["mix"] = result.mix_file;
    object["sections"] = Json::array();
    for (const core::BriefSection& section : result.brief.sections) {
        object["sections"].push_back(
            {{"name", section.name}, {"items", json_of_items(section.items)}});
    }
    object["questions"] = json_of_items(result.brief.questions);
    object["sources"] = Json::array();
    for (const core::Source& source : result.brief.sources) {
        object["sources"].push_back(source_text(source));
    }
    object["mix_checks"] = json_of(result.plan.mix_checks);
    object["checks"] = json_of(result.plan.checks);
    object["cautions"] = json_of(result.brief.cautions);
    return written(object);
}

std::string csv(const BriefResult& result, core::UnitSystem system) {
    std::string text = csv_row({"section", "item", "sentence", "note"});
    const auto add = [&](const std::string& section, const std::vector<core::Phrase>& phrases) {
        int number = 0;
        for (const core::Phrase& phrase : phrases) {
            text += csv_row({csv_cell(section), std::to_string(++number),
                             csv_cell(words(phrase, system)),
                             speaks_of_forms(phrase) ? csv_cell(with_form_caution()) : ""});
        }
    };
    text += csv_row({"TITLE", "1", csv_cell(result.title), ""});
    text += csv_row({"CONCRETE of", "1", csv_cell(result.mix_file), ""});
    for (const core::BriefSection& section : result.brief.sections) {
        add(section.name, section.items);
    }
    const auto add_unsettled = [&](const char* section, const std::vector<core::Check>& checks) {
        int number = 0;
        for (const core::Check& check : checks) {
            if (check.verdict != core::Verdict::holds) {
                const CheckRow row = row_of(check, system);
                text += csv_row(
                    {csv_cell(std::string{section}), std::to_string(++number),
                     csv_cell(printed_verdict(row.verdict) + ", " + row.title + ": " + row.told()),
                     speaks_of_forms(check.message) ? csv_cell(with_form_caution()) : ""});
            }
        }
    };
    add_unsettled(walls_checks, result.plan.checks);
    add_unsettled(mix_checks, result.plan.mix_checks);
    add("QUESTIONS", result.brief.questions);
    add("CAUTIONS", result.brief.cautions);
    int number = 0;
    for (const core::Source& source : result.brief.sources) {
        text += csv_row({"SOURCES", std::to_string(++number), csv_cell(source_text(source)), ""});
    }
    return text;
}

} // namespace boardmark::report
