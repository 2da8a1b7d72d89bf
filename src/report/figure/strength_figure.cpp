#include "strength_figure.hpp"

#include <boardmark/core/checks/check_id.hpp>

#include "../writing/measured.hpp"
#include "../writing/names.hpp"
#include "../writing/quantity_format.hpp"
#include "plot.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace boardmark::report {
namespace {

using core::Measure;
using core::UnitSystem;

double in_user_unit(double mpa, UnitSystem system) {
    return measured({mpa, Measure::strength}, system).amount;
}

/// A plot of strengths that holds all of these points.
Plot plot_over(const std::vector<std::vector<PlotPoint>>& all, std::string caption,
               UnitSystem system) {
    PlotPoint least = all.front().front();
    PlotPoint most = least;
    for (const auto& points : all) {
        for (const PlotPoint& point : points) {
            least = {std::min(least.x, point.x), std::min(least.y, point.y)};
            most = {std::max(most.x, point.x), std::max(most.y, point.y)};
        }
    }
    constexpr double air = 0.02; // of the height: a level lies above the axis, not on it
    return {std::move(caption), round_axis("w/cm", least.x, most.x),
            round_axis(system == UnitSystem::us ? "strength, psi" : "strength, MPa",
                       least.y - air * (most.y - least.y), most.y)};
}

template <class StrengthAt>
std::vector<PlotPoint> points_of(const core::StrengthLine& line, UnitSystem system,
                                 StrengthAt strength_at) {
    constexpr int steps = 24;
    std::vector<PlotPoint> points;
    for (int i = 0; i <= steps; ++i) {
        const double w_cm = line.lowest_w_cm + (line.highest_w_cm - line.lowest_w_cm) * i / steps;
        points.push_back({w_cm, in_user_unit(strength_at(w_cm), system)});
    }
    return points;
}

std::string shown_strength(double mpa, UnitSystem system) {
    return shown({mpa, Measure::strength}, system);
}

/// The check of the highest w/cm that the exposure allows; nothing where no class asks one.
const core::Check* exposure_limit(const std::vector<core::Check>& checks) {
    const auto found = std::ranges::find_if(checks, [](const core::Check& check) {
        return check.is(core::check_ids::w_cm_exposure) && check.limit && check.limit->high;
    });
    return found == checks.end() ? nullptr : &*found;
}

/// Whether the test at a point of the line fails as a single one.
bool fails_alone(const core::StrengthFindings& findings, const core::LinePoint& point) {
    return std::ranges::any_of(findings.tests, [&](const core::JudgedTest& judged) {
        return judged.verdict == core::Verdict::fails && judged.test.batch.name == point.name;
    });
}

/// The lowest and the highest y of all points.
std::pair<double, double> heights(const std::vector<std::vector<PlotPoint>>& all) {
    double least = all.front().front().y;
    double most = least;
    for (const auto& points : all) {
        for (const PlotPoint& point : points) {
            least = std::min(least, point.y);
            most = std::max(most, point.y);
        }
    }
    return {least, most};
}

} // namespace

Flow strength_figure(const MixResult& result, UnitSystem system) {
    const core::StrengthOverRatio& strength = result.strength;
    if (strength.points.size() < 2) {
        return {};
    }
    std::vector<PlotPoint> line;
    for (const core::CurvePoint& point : strength.points) {
        line.push_back({point.w_cm, in_user_unit(point.strength_mpa, system)});
    }
    const double average_mpa = result.proportions.selection.required_average_strength_mpa;
    const double average = in_user_unit(average_mpa, system);
    const std::vector<PlotPoint> needed{{line.front().x, average}, {line.back().x, average}};
    const double specified_mpa = result.proportions.selection.specified_strength_mpa;
    const double specified = in_user_unit(specified_mpa, system);
    const std::vector<PlotPoint> asked{{line.front().x, specified}, {line.back().x, specified}};
    std::vector<std::vector<PlotPoint>> held{line, needed, asked};
    const double w_cm = result.proportions.totals.w_cm;
    std::vector<PlotPoint> chosen;
    if (strength.chosen_mpa) {
        chosen.push_back({w_cm, in_user_unit(*strength.chosen_mpa, system)});
        held.push_back(chosen);
    }
    const core::Check* limit = exposure_limit(result.checks);
    std::vector<PlotPoint> bound;
    if (limit) {
        const auto [least, most] = heights(held);
        bound = {{*limit->limit->high, least}, {*limit->limit->high, most}};
        held.push_back(bound);
    }
    Plot plot = plot_over(
        held, "Expected strength over w/cm, an estimate until trial batches prove it.", system);
    plot.add_line(line, "value", "expected by " + strength.source.citation);
    plot.add_line(needed, "limit", "average to reach, " + shown_strength(average_mpa, system));
    plot.add_line(asked, "other", "specified, " + shown_strength(specified_mpa, system));
    if (limit) {
        plot.add_line(bound, "bound",
                      "w/cm at most " + shown({*limit->limit->high, Measure::w_cm}, system) +
                          " by exposure " + limit->requirement);
    }
    if (strength.chosen_mpa) {
        plot.add_spots(chosen, "chosen",
                       "this mix: w/cm " + shown({w_cm, Measure::w_cm}, system) + ", expected " +
                           shown_strength(*strength.chosen_mpa, system));
    }
    return Block{plot.figure()};
}

Flow tests_figure(const StrengthResult& result, UnitSystem system) {
    const core::StrengthFindings& findings = result.findings;
    if (findings.tests.size() < 2) {
        return {};
    }
    std::vector<PlotPoint> values;
    std::vector<PlotPoint> means;
    std::vector<PlotPoint> good;
    std::vector<PlotPoint> failing;
    for (const core::JudgedTest& judged : findings.tests) {
        const auto at = static_cast<double>(values.size() + 1);
        values.push_back({at, in_user_unit(judged.test.mean_mpa, system)});
        if (judged.running_mean_mpa) {
            means.push_back({at, in_user_unit(*judged.running_mean_mpa, system)});
        }
        const bool fails =
            judged.verdict == core::Verdict::fails || judged.mean_verdict == core::Verdict::fails;
        (fails ? failing : good).push_back(values.back());
    }
    const auto last = static_cast<double>(values.size() + 1);
    const core::Acceptance& acceptance = findings.acceptance;
    const auto level = [&](double mpa) {
        const double y = in_user_unit(mpa, system);
        return std::vector<PlotPoint>{{0, y}, {last, y}};
    };
    const auto specified = level(result.record.specified_mpa);
    const auto single = level(acceptance.single_least_mpa);
    const auto [least, most] = heights({values, specified, single});
    const auto name_at = [&](std::size_t test) {
        return column_name(findings.tests[test].test.batch.name);
    };
    Plot plot{
        "Tests in order of casting.",
        {.name = "batch, one step for each test",
         .from = 0,
         .to = last,
         .ticks = {{1, name_at(0)}, {last - 1, name_at(values.size() - 1)}}},
        round_axis(system == UnitSystem::us ? "strength, psi" : "strength, MPa", least, most)};
    plot.add_line(specified, "other",
                  "specified, " + shown_strength(result.record.specified_mpa, system));
    plot.add_line(single, "limit",
                  "least of a single test, " + shown_strength(acceptance.single_least_mpa, system));
    if (means.size() > 1) {
        plot.add_line(means, "value", fmt::format("mean of {}", acceptance.averaged));
    }
    if (!good.empty()) {
        plot.add_spots(good, "point", "test");
    }
    if (!failing.empty()) {
        plot.add_spots(failing, "chosen", "test that fails, or ends a mean that fails");
    }
    return Block{plot.figure()};
}

Flow line_figure(const core::StrengthFindings& findings, UnitSystem system) {
    const core::StrengthLine& line = *findings.line;
    const auto fitted =
        points_of(line, system, [&](double w_cm) { return core::strength_at(line, w_cm); });
    const auto lower =
        points_of(line, system, [&](double w_cm) { return core::lower_mean_at(line, w_cm); });
    std::vector<PlotPoint> tests;
    std::vector<PlotPoint> failing;
    for (const core::LinePoint& point : line.points) {
        const PlotPoint test{point.w_cm, in_user_unit(point.strength_mpa, system)};
        (fails_alone(findings, point) ? failing : tests).push_back(test);
    }
    Plot plot =
        plot_over({fitted, lower, tests, failing}, "Own strength results over w/cm.", system);
    plot.add_line(fitted, "value", "line of the results");
    plot.add_line(lower, "limit", "lower side: the mean lies above it");
    plot.add_spots(tests, "point", "tests");
    if (!failing.empty()) {
        plot.add_spots(failing, "chosen", "test that fails");
    }
    return Block{plot.figure()};
}

} // namespace boardmark::report
