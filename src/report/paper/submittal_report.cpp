#include <boardmark/report/paper/submittal_report.hpp>
#include <boardmark/report/writing/words.hpp>

#include "../writing/blank.hpp"
#include "../writing/csv_cells.hpp"
#include "../writing/grid.hpp"
#include "../writing/html.hpp"
#include "../writing/text_sections.hpp"
#include "../writing/trace.hpp"
#include "paper_flow.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace boardmark::report {
namespace {

std::string due_text(const core::SubmittalItem& item) {
    if (!item.due) {
        return "";
    }
    return core::date_text(*item.due) + (item.past ? " PAST" : "");
}

Flow papers_table(const SubmittalListResult& result, const TextStyle& style) {
    // A page does not break a column that is set to the right: days stay whole.
    Grid grid{{Align::right, Align::left, Align::left, Align::left, Align::left}};
    grid.head({"by", "of the", "in", "received", "paper"});
    for (const core::SubmittalItem& item : result.list.items) {
        grid.add({item.due ? due_text(item) : words(item.when, style.system), item.by, tick_box,
                  blank, item.paper});
    }
    return grid;
}

Flow details(const SubmittalListResult& result, const TextStyle& style) {
    Flow flow;
    for (const core::SubmittalItem& item : result.list.items) {
        std::string text = item.paper + ": " + words(item.when, style.system);
        text += item.age.empty() ? "" : "; " + item.age + " old";
        text += item.keys.empty() ? "" : fmt::format("; into {}", fmt::join(item.keys, "; "));
        text += style.explain ? " [" + source_words(item.source) + "]" : "";
        flow += paragraph(text, list_item);
    }
    return flow;
}

Flow submittal_flow(const SubmittalListResult& result, const TextStyle& style) {
    return heading_of(result.heading, "Submittals: what is handed in, by whom, by when", style) +
           section("PAPERS by their days") + papers_table(result, style) +
           section("WHAT EACH HOLDS, and the keys that it fills") + details(result, style) +
           section("HOW") + listed(result.list.how, style.system) +
           checks_of(result.heading, style.system);
}

} // namespace

std::string text(const SubmittalListResult& result, const TextStyle& style) {
    return written(submittal_flow(result, style) + "\n" + trace_line(result.heading.inputs), style);
}

std::string html(const SubmittalListResult& result, const TextStyle& style) {
    return html_of(
        submittal_flow(result, style),
        {.title = result.heading.title, .command = "specify", .inputs = result.heading.inputs});
}

std::string csv(const SubmittalListResult& result, core::UnitSystem system) {
    std::string text = csv_row({"paper", "of the", "when", "by", "past", "age", "keys", "source"});
    for (const core::SubmittalItem& item : result.list.items) {
        text +=
            csv_row({csv_cell(item.paper), csv_cell(item.by), csv_cell(words(item.when, system)),
                     item.due ? core::date_text(*item.due) : "", item.past ? "yes" : "no",
                     csv_cell(item.age), csv_cell(fmt::format("{}", fmt::join(item.keys, "; "))),
                     csv_cell(source_words(item.source))});
    }
    return text;
}

} // namespace boardmark::report
