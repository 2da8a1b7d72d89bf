#include "pour_tables.hpp"

#include <boardmark/report/writing/words.hpp>
#include <boardmark/text/utf8.hpp>

#include "../writing/blank.hpp"
#include "../writing/grid.hpp"
#include "../writing/names.hpp"
#include "../writing/quantity_format.hpp"
#include "clock.hpp"
#include "lift_rows.hpp"
#include "load_rows.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

namespace boardmark::report {
namespace {

using core::Measure;
using core::UnitSystem;

constexpr const char* short_blank = "_____";
const Indent below_table{.first = "  ", .other = "  "};

Flow remark(std::string text) {
    return paragraph(std::move(text), below_table);
}

std::string shown_or_dash(std::optional<double> value, Measure measure, core::Keep keep,
                          UnitSystem system) {
    return value ? shown({*value, measure, keep}, system) : "-";
}

std::string parts_of(const core::LoadOfDay& load) {
    std::string parts;
    for (const std::string& part : load.parts) {
        parts += (parts.empty() ? "" : ", ") + text::printable(part);
    }
    return parts.empty() ? "kept for waste" : parts;
}

/// "every 12 min", "every 12 to 31 min".
std::string interval_of(const LoadRow& row) {
    const auto minutes = [](double hours) { return std::lround(60 * hours); };
    const long least = minutes(row.shortest_h);
    const long most = minutes(row.longest_h);
    return least == most ? fmt::format("every {} min", least)
                         : fmt::format("every {} to {} min", least, most);
}

std::string number_of(const LoadRow& row) {
    return row.is_single() ? std::to_string(row.first->number)
                           : fmt::format("{} to {}", row.first->number, row.last->number);
}

std::string into(const LoadRow& row) {
    const std::string first = parts_of(*row.first);
    const std::string last = parts_of(*row.last);
    const std::string parts = first == last ? first : first + " to " + last;
    return row.is_single() ? parts : parts + ", " + interval_of(row);
}

/// Of several loads when the first begins and the last ends.
std::vector<std::string> cells_of(const LoadRow& row, std::optional<int> start_min) {
    const auto& batched_h = row.first->batched_h;
    const auto& latest_h = row.last->latest_end_h;
    return {number_of(row),
            batched_h ? clock_text(*batched_h, start_min) : "-",
            clock_text(row.first->begins_h, start_min),
            clock_text(row.last->ends_h, start_min),
            latest_h ? latest_clock_text(*latest_h, start_min) : "-",
            short_blank,
            short_blank,
            short_blank,
            short_blank,
            into(row)};
}

std::string after_the_loads(const PourResult& result, UnitSystem system) {
    const core::PlacingDay& day = result.card.day;
    const std::string limit =
        shown({result.card.limits.discharge_h.value, Measure::duration}, system);
    std::string said = "A load must be empty " + limit + " after the time on its ticket [" +
                       result.card.limits.discharge_h.source.citation + "]";
    if (day.haul_by == core::HaulBy::round_trip) {
        said += "; the haul is not stated, the whole round trip counts for it";
    }
    return said + ". Order the last when what is left of the form is measured.";
}

std::string begins_of(const LiftRow& row, std::optional<int> start_min) {
    std::string times;
    for (const core::LiftOfDay& lift : row.first) {
        times += (times.empty() ? "" : ", ") + clock_text(lift.begins_h, start_min);
    }
    return row.is_single()
               ? times
               : times + "; the last from " + clock_text(row.last.front().begins_h, start_min);
}

const core::PouredPart* part_named(const core::PourCard& card, const std::string& name) {
    for (const core::PouredPart& part : card.parts) {
        if (part.name == name) {
            return &part;
        }
    }
    return nullptr;
}

/// Until when a lift takes the vibrator; of what has one lift nothing has to.
std::string cover_within(const core::PouredPart* part, UnitSystem system) {
    return part && part->run && part->run->lifts.lifts > 1
               ? shown({part->run->lifts.longest_wait_min / 60, Measure::duration,
                        core::Keep::at_most},
                       system)
               : "-";
}

std::string lift_height(const core::PouredPart* part, UnitSystem system) {
    return part && part->run ? shown({1000 * part->run->lifts.lift_m, Measure::length}, system)
                             : "-";
}

std::string highest(const core::HighestRise& rise, UnitSystem system) {
    if (rise.any || !rise.m_h) {
        return rise.any ? "any rate" : "-";
    }
    const std::string rate = shown({*rise.m_h, Measure::rate_of_rise, core::Keep::at_most}, system);
    return rise.planned ? rate + ", planned" : rate;
}

std::string count_or_dash(const std::optional<int>& count) {
    return count ? std::to_string(*count) : "-";
}

/// Why concrete may rise so fast, once for the parts of which it is said; whose is left out where
/// it is said of all.
std::string reasons_of_rise(const core::PourCard& card, UnitSystem system) {
    std::vector<std::pair<std::string, std::string>> reasons;
    for (const core::PouredPart& part : card.parts) {
        if (!part.forces) {
            continue;
        }
        const std::string why = words(part.highest.why, system);
        const auto same =
            std::ranges::find(reasons, why, &std::pair<std::string, std::string>::first);
        if (same == reasons.end()) {
            reasons.emplace_back(why, text::printable(part.name));
        } else {
            same->second += ", " + text::printable(part.name);
        }
    }
    std::string said;
    for (const auto& [why, parts] : reasons) {
        said += "At most" + (reasons.size() == 1 ? "" : ", " + parts) + ": " + why + ". ";
    }
    return said;
}

std::string asked_text(const core::TestWindow& window, Measure measure, UnitSystem system) {
    const auto amount = [&](double value, core::Keep keep) {
        return shown({value, measure, keep}, system);
    };
    const auto low = [&] { return amount(*window.low, core::Keep::at_least); };
    const auto high = [&] { return amount(*window.high, core::Keep::at_most); };
    if (window.low && window.high) {
        return low() + " to " + high();
    }
    return window.low     ? "at least " + low()
           : window.high  ? "at most " + high()
           : window.asked ? "about " + amount(*window.asked, core::Keep::nearest)
                          : "-";
}

std::string aim_text(const core::PourTest& test, UnitSystem system) {
    return test.asked.asked && test.asked.low
               ? ", aim " + shown({*test.asked.asked, test.measure}, system)
               : "";
}

} // namespace

Flow loads_table(const PourResult& result, UnitSystem system) {
    const core::PlacingDay& day = result.card.day;
    if (day.loads.empty()) {
        return remark(words(day.discharge.message, system) + ".") +
               remark(after_the_loads(result, system));
    }
    Grid grid{{Align::left, Align::right, Align::right, Align::right, Align::right, Align::left,
               Align::left, Align::left, Align::left, Align::left}};
    grid.head({"load", "batched", "begins", "empty", "latest", "ticket", "slump", "air",
               system == UnitSystem::us ? "degF" : "degC", "into"});
    for (const LoadRow& row : load_rows(day.loads)) {
        grid.add(cells_of(row, result.start_min));
    }
    return Flow{grid} + remark(after_the_loads(result, system));
}

Flow lifts_table(const PourResult& result, UnitSystem system) {
    const core::PourCard& card = result.card;
    if (card.day.lifts.empty()) {
        return remark(words(card.day.discharge.message, system) + ".");
    }
    Grid grid{{Align::left, Align::right, Align::right, Align::right, Align::left, Align::left,
               Align::left}};
    grid.head({"", "lift", "full at", "cover in", "began", "was full", "lifts begin"});
    for (const LiftRow& row : lift_rows(card.day.lifts)) {
        const auto* part = part_named(card, row.first.front().part);
        grid.add({name_of(row), lift_height(part, system),
                  clock_text(row.last.back().ends_h, result.start_min), cover_within(part, system),
                  short_blank, short_blank, begins_of(row, result.start_min)});
    }
    std::string said = "No break between parts is counted. A lift is covered by the next within "
                       "the time shown, or it shows as a joint.";
    if (!card.day.by_output) {
        said += " All times are by the planned rise: 'placing.output' is not stated, and nobody "
                "knows whether the crew keeps it.";
    }
    return Flow{grid} + remark(said);
}

Flow forms_table(const core::PourCard& card, UnitSystem system) {
    Grid grid{{Align::left, Align::right, Align::right, Align::right, Align::right, Align::right,
               Align::right}};
    grid.head(
        {"", "pressure", "rises", "at most", "a tie carries", "vibrators", "insertions a lift"});
    bool any = false;
    for (const core::PouredPart& part : card.parts) {
        if (!part.forces) {
            continue;
        }
        any = true;
        const auto& vibration = part.run->vibration;
        grid.add({column_name(part.name),
                  shown({core::governing_pressure(*part.forces).kpa, Measure::pressure,
                         core::Keep::at_least},
                        system),
                  shown_or_dash(part.forces->rise.fastest_m_h(), Measure::rate_of_rise,
                                core::Keep::at_most, system),
                  highest(part.highest, system),
                  shown_or_dash(core::hardest_tie_kn(*part.forces), Measure::force,
                                core::Keep::at_least, system),
                  count_or_dash(part.vibrators),
                  count_or_dash(vibration ? std::optional{vibration->insertions} : std::nullopt)});
    }
    const Flow flow = any ? Flow{grid} : Flow{};
    return flow + remark(reasons_of_rise(card, system) + words(core::form_caution(), system));
}

Flow tests_table(const core::PourCard& card, UnitSystem system) {
    Grid grid{{Align::left, Align::left, Align::left, Align::left}};
    grid.head({"", "within", "when", "found"});
    Flow notes;
    for (const core::PourTest& test : card.tests) {
        grid.add({test.name, asked_text(test.asked, test.measure, system) + aim_text(test, system),
                  words(test.when, system), blank});
        if (!test.note.text.empty()) {
            notes += remark(test.name + ": " + words(test.note, system) + ".");
        }
    }
    return Flow{grid} + notes;
}

} // namespace boardmark::report
