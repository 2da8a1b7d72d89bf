#include "wall_checks.hpp"

#include "../phrases.hpp"
#include "../tolerance.hpp"

namespace boardmark::core {

Check of_wall(const std::string& wall, Check check) {
    check.message.text = "{wall}: " + check.message.text;
    check.message.arguments.push_back(word("wall", wall));
    check.part = wall;
    return check;
}

Check check_placing_temperature(const Wall& wall, double thickness_mm,
                                const WeatherTables& weather) {
    const TypicalFigure& least = weather.section(thickness_mm).least_placed_c;
    const TypicalFigure& hottest = weather.hottest_c;
    Check check{.id = "placing.temperature",
                .verdict = Verdict::not_checked,
                .measure = Measure::temperature,
                .requirement = "weather",
                .message = {"'placing.concrete_temperature' is not stated", {}}};
    if (!wall.placing.concrete_c) {
        return check;
    }
    const double concrete_c = *wall.placing.concrete_c;
    const bool cold = below(concrete_c, least.value);
    const bool hot = above(concrete_c, hottest.value);
    check.verdict = cold || hot ? Verdict::fails : Verdict::holds;
    check.value = concrete_c;
    check.limit = Limit{.low = least.value, .high = hottest.value};
    check.source = hot ? hottest.source : least.source;
    check.message = {"concrete at {value} in the form; {low} to {high} for the thinnest section",
                     {quantity("value", {concrete_c, Measure::temperature}),
                      quantity("low", {least.value, Measure::temperature}),
                      quantity("high", {hottest.value, Measure::temperature})}};
    return check;
}

} // namespace boardmark::core
