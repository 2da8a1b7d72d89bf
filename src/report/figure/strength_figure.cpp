#include "strength_figure.hpp"

#include "../writing/measured.hpp"
#include "../writing/quantity_format.hpp"
#include "plot.hpp"

#include <algorithm>

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
    return {
        std::move(caption), round_axis("w/cm", least.x, most.x),
        round_axis(system == UnitSystem::us ? "strength, psi" : "strength, MPa", least.y, most.y)};
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
    const double w_cm = result.proportions.totals.w_cm;
    std::vector<PlotPoint> chosen;
    if (strength.chosen_mpa) {
        chosen.push_back({w_cm, in_user_unit(*strength.chosen_mpa, system)});
    }
    Plot plot =
        plot_over({line, needed},
                  "Expected strength over w/cm, an estimate until trial batches prove it.", system);
    plot.add_line(line, "value", "expected by " + strength.source.citation);
    plot.add_line(needed, "limit", "average to reach, " + shown_strength(average_mpa, system));
    if (strength.chosen_mpa) {
        plot.add_spots(chosen, "chosen",
                       "this mix: w/cm " + shown({w_cm, Measure::w_cm}, system) + ", expected " +
                           shown_strength(*strength.chosen_mpa, system));
    }
    return Block{plot.figure()};
}

Flow strength_figure(const core::StrengthLine& line, UnitSystem system) {
    const auto fitted =
        points_of(line, system, [&](double w_cm) { return core::strength_at(line, w_cm); });
    const auto lower =
        points_of(line, system, [&](double w_cm) { return core::lower_mean_at(line, w_cm); });
    std::vector<PlotPoint> tests;
    for (const core::LinePoint& point : line.points) {
        tests.push_back({point.w_cm, in_user_unit(point.strength_mpa, system)});
    }
    Plot plot = plot_over({fitted, lower, tests}, "Own strength results over w/cm.", system);
    plot.add_line(fitted, "value", "line of the results");
    plot.add_line(lower, "limit", "lower side: the mean lies above it");
    plot.add_spots(tests, "point", "tests");
    return Block{plot.figure()};
}

} // namespace boardmark::report
