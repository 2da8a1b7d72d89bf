#include "../basis/phrases.hpp"
#include "pour_case.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

Phrase window_of_loads(const PourLimits& limits) {
    const bool air_counts = limits.air_percent.low && limits.air_percent.high;
    Phrase told{air_counts
                    ? "Slump outside {low_slump} to {high_slump} or air outside {low_air} to "
                      "{high_air}: test the same load once more; outside again, it goes back"
                    : "Slump outside {low_slump} to {high_slump}: test the same load once "
                      "more; outside again, it goes back",
                {quantity("low_slump", {*limits.slump_mm.low, Measure::slump}),
                 quantity("high_slump", {*limits.slump_mm.high, Measure::slump})}};
    if (air_counts) {
        told.arguments.push_back(percent_of("low_air", *limits.air_percent.low));
        told.arguments.push_back(percent_of("high_air", *limits.air_percent.high));
    }
    return told;
}

std::optional<double> shortest_wait_h(const PourCard& card) {
    std::optional<double> wait_h;
    for (const PouredPart& part : card.parts) {
        if (part.run && part.run->lifts.lifts > 1) {
            const double own_h = part.run->lifts.longest_wait_min / 60;
            wait_h = std::min(wait_h.value_or(own_h), own_h);
        }
    }
    return wait_h;
}

} // namespace

std::vector<Phrase> pour_stops(const PourCase& pour) {
    const PourLimits& limits = pour.card.limits;
    std::vector<Phrase> stops;
    stops.push_back({"A form, tie, wedge or brace moves, bulges, leaks or cracks: stop, everybody "
                     "away from the form, call the formwork's designer",
                     {}});
    stops.push_back({"Concrete rises faster than the table allows: stop until it is back at that "
                     "rate",
                     {}});
    stops.push_back(window_of_loads(limits));
    stops.push_back(
        {"Discharge not finished {discharge} after the time on the ticket: the rest goes back",
         {quantity("discharge", {limits.discharge_h.value, Measure::duration})}});
    if (limits.concrete_c.low && limits.concrete_c.high) {
        stops.push_back({"Concrete colder than {low} or warmer than {high}: the load waits for "
                         "whoever may reject it",
                         {no_less_than("low", {*limits.concrete_c.low, Measure::temperature}),
                          no_more_than("high", {*limits.concrete_c.high, Measure::temperature})}});
    }
    const bool vibrated = !pour.wall.placing.self_consolidating;
    if (const auto wait_h = shortest_wait_h(pour.card)) {
        stops.push_back({vibrated ? "A lift lies open for {wait}, or the vibrator no longer sinks "
                                    "into it by its own weight: stop, it is a joint now; the "
                                    "engineer decides"
                                  : "A lift lies open for {wait}: stop, it is a joint now; the "
                                    "engineer decides",
                         {no_more_than("wait", {*wait_h, Measure::duration})}});
    }
    stops.push_back({vibrated ? "No spare vibrator works, heavy rain or lightning: stop at a line "
                                "between lifts, level against a fixed strip, and cover it"
                              : "Heavy rain or lightning: stop at a line between lifts, level "
                                "against a fixed strip, and cover it",
                     {}});
    return stops;
}

} // namespace boardmark::core
