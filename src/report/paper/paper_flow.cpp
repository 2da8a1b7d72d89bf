#include "paper_flow.hpp"

#include <boardmark/report/writing/words.hpp>
#include <boardmark/text/utf8.hpp>

#include "../writing/text_sections.hpp"
#include "../writing/trace.hpp"

namespace boardmark::report {

core::VerdictSummary verdicts_of(const PaperHeading& heading) {
    core::VerdictSummary summary;
    summary.add(heading.checks);
    summary.add(heading.mix_checks);
    return summary;
}

Flow heading_of(const PaperHeading& heading, const std::string& paper, const TextStyle& style) {
    std::string what = paper;
    if (!heading.mix_file.empty()) {
        what += "; concrete of " + text::printable(heading.mix_file);
    }
    if (heading.date) {
        what += "; of " + core::date_text(*heading.date);
    }
    return paragraph(text::printable(heading.title), {}) + file_line(heading.inputs) +
           paragraph(what, {}) + "\n" +
           verdict_line(verdicts_of(heading), style.system, "DO NOT ISSUE AS IT IS");
}

Flow checks_of(const PaperHeading& heading, core::UnitSystem system) {
    Flow flow;
    if (!heading.checks.empty()) {
        flow += section("CHECKS") + text_of_checks(heading.checks, system);
    }
    if (!heading.mix_checks.empty()) {
        flow += section("CHECKS of the mix") + text_of_checks(heading.mix_checks, system);
    }
    return flow;
}

Json json_heading(const std::string& command, const PaperHeading& heading) {
    Json object = json_heading(command, heading.title, verdicts_of(heading), heading.inputs);
    object["mix"] = heading.mix_file.empty() ? Json(nullptr) : Json(heading.mix_file);
    object["date"] = heading.date ? Json(core::date_text(*heading.date)) : Json(nullptr);
    return object;
}

void add_checks(const PaperHeading& heading, Json& object) {
    object["mix_checks"] = json_of(heading.mix_checks);
    object["checks"] = json_of(heading.checks);
}

Flow listed(const std::vector<core::Phrase>& phrases, core::UnitSystem system) {
    Flow flow;
    for (const core::Phrase& phrase : phrases) {
        flow += paragraph(words(phrase, system), list_item);
    }
    return flow;
}

std::string source_words(const core::Source& source) {
    return source.citation + (source.confidence == core::Confidence::from_memory
                                  ? " (from memory, not read again)"
                                  : "");
}

} // namespace boardmark::report
