#include <boardmark/report/pour/pour_report.hpp>
#include <boardmark/report/writing/words.hpp>
#include <boardmark/text/utf8.hpp>

#include "../writing/blank.hpp"
#include "../writing/flow.hpp"
#include "../writing/grid.hpp"
#include "../writing/html.hpp"
#include "../writing/quantity_format.hpp"
#include "../writing/text_sections.hpp"
#include "../writing/trace.hpp"
#include "../writing/verdicts.hpp"
#include "pour_tables.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::report {
namespace {

using core::UnitSystem;

Flow items(const std::vector<core::Phrase>& phrases, UnitSystem system) {
    Flow flow;
    for (const core::Phrase& phrase : phrases) {
        flow += paragraph(words(phrase, system), list_item);
    }
    return flow;
}

std::string names_of(const std::vector<core::PouredPart>& parts) {
    std::string names;
    for (const core::PouredPart& part : parts) {
        names += (names.empty() ? "" : ", ") + text::printable(part.name);
        names += part.copies > 1 ? fmt::format(" ({})", part.copies) : "";
    }
    return names;
}

Flow heading(const PourResult& result, const TextStyle& style) {
    const core::PourCard& card = result.card;
    Grid signs{{Align::left, Align::left, Align::left, Align::left, Align::left, Align::left}};
    signs.add({"date", blank, "leads the crew", blank, "may reject a load", blank});
    return paragraph(text::printable(result.title), {}) + file_line(result.inputs) +
           paragraph("Pour card: " + names_of(card.parts) + "; concrete of " +
                         text::printable(result.mix_file),
                     {}) +
           signs + "\n" + verdict_line(verdicts_of(card), style.system, "DO NOT PLACE") +
           strength_line(card.mix_checks, style.system);
}

/// What a requirement is not met in, whole: nobody places over it.
Flow failed(const core::PourCard& card, UnitSystem system) {
    Flow flow;
    for (const auto* checks : {&card.checks, &card.mix_checks}) {
        for (const core::Check& check : *checks) {
            if (check.verdict == core::Verdict::fails) {
                flow += paragraph(words(check.message, system),
                                  {.first = "  - FAILS: ", .other = "    "});
            }
        }
    }
    return flow;
}

std::string loads_name(const PourResult& result, UnitSystem system) {
    const core::PourCard& card = result.card;
    const auto volume = [&](double m3) { return shown({m3, core::Measure::volume}, system); };
    std::string name = "LOADS, " + volume(card.order.order_m3) + " ordered";
    if (!card.day.loads.empty()) {
        const double full_m3 = card.day.loads.front().volume_m3;
        const double last_m3 = card.day.loads.back().volume_m3;
        name += fmt::format(": {} of {}", card.day.loads.size(), volume(full_m3));
        name += last_m3 < full_m3 ? ", the last " + volume(last_m3) : "";
    }
    return name + (result.start_min ? "" : "; times from the start");
}

Flow flow_of(const PourResult& result, const TextStyle& style) {
    const core::PourCard& card = result.card;
    const UnitSystem system = style.system;
    Flow page = heading(result, style) + failed(card, system);
    page += wide_section(loads_name(result, system)) + loads_table(result, system);
    page += wide_section("LIFTS, one part after the other") + lifts_table(result, system);
    page += wide_section("FORMS, for planning only") + forms_table(card, system);
    page += section("TESTS") + tests_table(card, system);
    page += section("STOP, and ask before going on") + items(card.stops, system);
    for (const core::BriefSection& rules : card.rules) {
        page += section(rules.name) + items(rules.items, system);
    }
    page += screen_section("CHECKS of the walls and the day") + text_of_checks(card.checks, system);
    page += screen_section("CHECKS of the mix") + text_of_checks(card.mix_checks, system);
    page += section("CAUTIONS") + items(card.cautions, system);
    return page;
}

} // namespace

std::string text(const PourResult& result, const TextStyle& style) {
    return written(flow_of(result, style) + "\n" + trace_line(result.inputs), style);
}

std::string html(const PourResult& result, const TextStyle& style) {
    return html_of(
        flow_of(result, style),
        {.title = result.title, .command = "pour", .inputs = result.inputs, .one_sheet = true});
}

} // namespace boardmark::report
