#include "dose_figure.hpp"

#include "../study/comparison_rows.hpp"
#include "../writing/measured.hpp"
#include "../writing/quantity_format.hpp"
#include "plot.hpp"

#include <algorithm>
#include <functional>

namespace boardmark::report {
namespace {

using core::ComparedMix;
using core::DosePoint;
using core::DoseResponse;
using core::Measure;
using core::UnitSystem;

using ValueOf = std::function<std::optional<double>(const DosePoint&)>;

double dose_of(const DosePoint& point, UnitSystem system) {
    return measured({point.ml_100kg, Measure::dose}, system).amount;
}

std::vector<PlotPoint> points_of(const DoseResponse& response, UnitSystem system,
                                 const ValueOf& value_of) {
    std::vector<PlotPoint> points;
    for (const DosePoint& point : response.points) {
        if (const auto value = value_of(point)) {
            points.push_back({dose_of(point, system), *value});
        }
    }
    return points;
}

std::optional<double> point_strength(const DosePoint& point, UnitSystem system) {
    const auto& strength = point.less_water.strength;
    return strength ? std::optional{measured({strength->mpa, Measure::strength}, system).amount}
                    : std::nullopt;
}

std::optional<double> cost_of(const ComparedMix& column, UnitSystem system) {
    return column.cost && column.cost->sum.is_whole()
               ? std::optional{per_unit(column.cost->sum.per_m3, system)}
               : std::nullopt;
}

Plot plot_of(const DoseResponse& response, UnitSystem system, std::string caption,
             std::string upright, const std::vector<std::vector<PlotPoint>>& lines) {
    std::vector<double> values;
    for (const auto& line : lines) {
        for (const PlotPoint& point : line) {
            values.push_back(point.y);
        }
    }
    const auto [least, most] = std::ranges::minmax(values);
    return {std::move(caption),
            round_axis(system == UnitSystem::us ? "dose, fl oz/cwt" : "dose, mL/100 kg", 0,
                       dose_of(response.points.back(), system)),
            round_axis(std::move(upright), least, most)};
}

/// The point of a line at one of the doses; nothing where the line lacks it.
std::vector<PlotPoint> at_dose(const std::vector<PlotPoint>& line, const DosePoint& dose,
                               UnitSystem system) {
    const auto found = std::ranges::find(line, dose_of(dose, system), &PlotPoint::x);
    return found == line.end() ? std::vector<PlotPoint>{} : std::vector{*found};
}

std::string shown_dose(const DosePoint& point, UnitSystem system) {
    return shown({point.ml_100kg, Measure::dose}, system);
}

Flow strength_plot(const DoseResponse& response, UnitSystem system) {
    const auto line = points_of(
        response, system, [&](const DosePoint& point) { return point_strength(point, system); });
    if (line.size() < 2) {
        return {};
    }
    Plot plot =
        plot_of(response, system, "Strength expected where the reducer saves water, an estimate.",
                system == UnitSystem::us ? "strength, psi" : "strength, MPa", {line});
    plot.add_line(line, "value", "less water");
    if (response.limits_hold_from) {
        const DosePoint& first = response.points[*response.limits_hold_from];
        if (const auto spot = at_dose(line, first, system); !spot.empty()) {
            plot.add_spots(spot, "chosen", "limits hold from " + shown_dose(first, system) + " on");
        }
    }
    return Block{plot.figure()};
}

Flow cost_plot(const DoseResponse& response, UnitSystem system) {
    const auto less_water = points_of(response, system, [&](const DosePoint& point) {
        return cost_of(point.less_water, system);
    });
    const auto less_binder = points_of(response, system, [&](const DosePoint& point) {
        return cost_of(point.less_binder, system);
    });
    if (less_water.size() < 2 || less_binder.size() < 2) {
        return {};
    }
    const std::string currency = response.points.front().less_binder.cost
                                     ? response.points.front().less_binder.cost->currency
                                     : "cost";
    Plot plot =
        plot_of(response, system, "Cost of the materials by dose, in each use.",
                currency + (system == UnitSystem::us ? "/yd3" : "/m3"), {less_water, less_binder});
    plot.add_line(less_water, "value", "less water");
    plot.add_line(less_binder, "other", "less binder");
    if (response.cheapest) {
        const DosePoint& least = response.points[*response.cheapest];
        if (const auto spot = at_dose(less_binder, least, system); !spot.empty()) {
            plot.add_spots(spot, "chosen", "cheapest, at " + shown_dose(least, system));
        }
    }
    return Block{plot.figure()};
}

} // namespace

Flow dose_figures(const DoseResponse& response, UnitSystem system) {
    return strength_plot(response, system) + cost_plot(response, system);
}

} // namespace boardmark::report
