#include "record_charting.hpp"

#include <boardmark/text/closest.hpp>
#include <boardmark/text/utf8.hpp>

#include "failure.hpp"
#include "option_values.hpp"
#include "record_file.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::commands {
namespace {

core::ChartedName charted_name(const Arguments& arguments) {
    const auto names = core::all_charted();
    return *std::ranges::find(names, *arguments.value("chart"), &core::ChartedName::name);
}

double age_d(const Arguments& arguments) {
    constexpr double usual_d = 28;
    constexpr Bounds bounds{.least = 0.01, .most = 36525};
    const auto written = arguments.value("age");
    return written ? read_option({"age", *written}, units::Dimension::time, bounds) : usual_d;
}

/// "7 d, 28 d"
std::string told_ages(const std::vector<core::RecordedSpecimen>& specimens) {
    std::vector<std::string> ages;
    for (const double age : core::ages_of(specimens)) {
        ages.push_back(fmt::format("{:.4g} d", age));
    }
    return fmt::format("{}", fmt::join(ages, ", "));
}

Failure nothing_to_chart(const ChartedValues& values, const record::Contents& contents,
                         const Arguments& arguments) {
    const std::string ages = told_ages(contents.specimens);
    std::string message = fmt::format("boardmark: no chart follows: {} holds no {}",
                                      record_name(arguments), values.charted.heading);
    if (values.age_d) {
        message += fmt::format(" at {:.4g} d", *values.age_d);
        message += ages.empty() ? "" : "\n           '--age' can be one of: " + ages;
    }
    return {ExitCode::unresolved, message + "\n"};
}

std::string told(const std::vector<std::string>& mixes) {
    std::string text;
    for (const std::string& mix : mixes) {
        text += (text.empty() ? "'" : ", '") + mix + "'";
    }
    return text;
}

/// Leaves the values of one mix: values of several never follow one chart.
void keep_one_mix(ChartedValues& values, const Arguments& arguments) {
    const auto mixes = core::mixes_of(values.points);
    const auto asked = arguments.value("mix");
    if (!asked && mixes.size() > 1) {
        throw wrong_command_line(
            fmt::format("the values are of {} mixes, and a chart is of one", mixes.size()),
            "add --mix with one of " + told(mixes));
    }
    if (asked && std::ranges::count(mixes, *asked) == 0) {
        throw wrong_command_line(
            fmt::format("--mix: the record holds no {} of '{}'", values.charted.heading, *asked),
            "write one of " + told(mixes));
    }
    values.mix = asked.value_or(mixes.front());
    std::erase_if(values.points,
                  [&](const core::ChartPoint& point) { return point.mix != values.mix; });
}

/// Mix files of two projects may carry one name: of several titles one must be chosen.
void keep_one_title(ChartedValues& values, const Arguments& arguments) {
    const auto titles = core::titles_of(values.points);
    const auto asked = arguments.value("title");
    if (!asked && titles.size() > 1) {
        throw wrong_command_line(
            fmt::format("the values of '{}' are of {} mixes by their titles, and a chart is of one",
                        values.mix, titles.size()),
            "add --title with one of " + told(titles));
    }
    if (asked && std::ranges::count(titles, *asked) == 0) {
        throw wrong_command_line(fmt::format("--title: the record holds no {} of '{}' with the "
                                             "title '{}'",
                                             values.charted.heading, values.mix, *asked),
                                 titles.empty() ? "no title is recorded; leave --title out"
                                                : "write one of " + told(titles));
    }
    if (asked) {
        values.mix_title = *asked;
        std::erase_if(values.points,
                      [&](const core::ChartPoint& point) { return point.title != *asked; });
    }
}

/// Cylinders and cubes of one concrete do not show one strength.
void demand_one_shape(const ChartedValues& values) {
    const auto shapes = core::shapes_of(values.points);
    if (shapes.size() > 1) {
        throw wrong_command_line(
            fmt::format("the specimens are of {} shapes, whose strengths cannot be compared",
                        shapes.size()),
            "keep a record for each of " + told(shapes));
    }
}

} // namespace

ChartedValues charted_values(const record::Contents& contents, const Arguments& arguments) {
    ChartedValues values{
        .charted = charted_name(arguments), .age_d = {}, .mix = "", .mix_title = "", .points = {}};
    if (values.charted.charted == core::Charted::strength) {
        values.age_d = age_d(arguments);
        values.points = core::strength_points(contents.specimens, contents.trials, *values.age_d);
    } else {
        values.points = core::trial_points(contents.trials, values.charted.charted);
    }
    if (values.points.empty()) {
        throw nothing_to_chart(values, contents, arguments);
    }
    keep_one_mix(values, arguments);
    keep_one_title(values, arguments);
    demand_one_shape(values);
    return values;
}

} // namespace boardmark::commands
