#include <boardmark/report/paper/specification_report.hpp>
#include <boardmark/report/writing/words.hpp>

#include "../drawing/drawing_flow.hpp"
#include "../writing/csv_cells.hpp"
#include "../writing/html.hpp"
#include "../writing/text_sections.hpp"
#include "../writing/trace.hpp"
#include "paper_flow.hpp"

#include <fmt/format.h>

namespace boardmark::report {
namespace {

const Indent clause_indent{.first = "", .other = "  "};

std::string clause_words(const core::Clause& clause, core::UnitSystem system) {
    return clause.number + ": " + words(clause.text, system);
}

std::string advice_words(const core::Clause& clause, core::UnitSystem system) {
    return "open: " + words(clause.advice, system) + "; settle it with '" + clause.settles + "'";
}

std::string reason_words(const core::Clause& clause, core::UnitSystem system) {
    const std::string source = source_words(clause.source);
    return "why: " + words(clause.reason, system) + (source.empty() ? "" : " [" + source + "]");
}

Flow clause_flow(const core::Clause& clause, const TextStyle& style) {
    Flow flow = paragraph(clause_words(clause, style.system), clause_indent);
    if (clause.is_open()) {
        flow += paragraph(advice_words(clause, style.system), list_item);
    }
    if (style.explain) {
        flow += paragraph(reason_words(clause, style.system), list_item);
    }
    return flow;
}

std::string open_text(std::size_t open) {
    return open == 0   ? "Nothing is left to choose."
           : open == 1 ? "1 choice is open: it stands in brackets, with advice and the key that "
                         "settles it."
                       : fmt::format("{} choices are open: they stand in brackets, with advice and "
                                     "the key that settles each.",
                                     open);
}

Flow specification_flow(const SpecificationResult& result, const TextStyle& style) {
    Flow page = heading_of(result.heading, "Specification", style) +
                paragraph(open_text(result.specification.open()), {});
    for (const core::ClauseGroup& group : result.specification.groups) {
        page += section(group.division + ": " + group.subject);
        for (const core::Clause& clause : group.clauses) {
            page += clause_flow(clause, style);
        }
    }
    page += section("CAUTIONS") + listed(result.specification.cautions, style.system);
    if (result.heading.plan && !result.heading.plan->layout.sections.empty()) {
        page += Flow{Block{Heading{.text = "THE WALLS DRAWN", .page_only = true}}} +
                drawn_elevations(result.heading.plan->layout, style.system) +
                drawn_sections(result.heading.plan->layout, style.system);
    }
    return page + checks_of(result.heading, style.system);
}

} // namespace

std::string text(const SpecificationResult& result, const TextStyle& style) {
    return written(specification_flow(result, style) + "\n" + trace_line(result.heading.inputs),
                   style);
}

std::string html(const SpecificationResult& result, const TextStyle& style) {
    return html_of(
        specification_flow(result, style),
        {.title = result.heading.title, .command = "specify", .inputs = result.heading.inputs});
}

std::string csv(const SpecificationResult& result, core::UnitSystem system) {
    std::string text =
        csv_row({"division", "subject", "number", "clause", "open", "reason", "source"});
    for (const core::ClauseGroup& group : result.specification.groups) {
        for (const core::Clause& clause : group.clauses) {
            text += csv_row({csv_cell(group.division), csv_cell(group.subject),
                             csv_cell(clause.number), csv_cell(words(clause.text, system)),
                             csv_cell(clause.settles), csv_cell(words(clause.reason, system)),
                             csv_cell(source_words(clause.source))});
        }
    }
    for (const core::Phrase& caution : result.specification.cautions) {
        text += csv_row({"CAUTIONS", "", "", csv_cell(words(caution, system)), "", "", ""});
    }
    return text;
}

} // namespace boardmark::report
