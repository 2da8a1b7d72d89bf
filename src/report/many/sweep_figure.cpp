#include "sweep_figure.hpp"

#include "../figure/plot.hpp"
#include "../writing/quantity_format.hpp"
#include "contour.hpp"
#include "sweep_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace boardmark::report {
namespace {

using core::Sweep;
using core::SweepPoint;
using core::UnitSystem;

constexpr const char* failing_words = "fails a check";

std::optional<double> amount_at(const SweepPoint& point, const SweptFigure& figure,
                                UnitSystem system) {
    const auto value = point.mix ? figure.of(*point.mix) : std::nullopt;
    return value ? std::optional{swept_amount(figure, *value, system)} : std::nullopt;
}

/// Least and most of a figure.
struct Extent {
    double least;
    double most;

    /// Whether the points differ by rounding alone.
    bool is_one_value() const {
        constexpr double relative_rounding = 1e-9;
        return most - least <= relative_rounding * std::max(1.0, std::abs(most));
    }
};

/// Nothing where fewer than two points have the figure.
std::optional<Extent> extent_of(const Sweep& sweep, const SweptFigure& figure, UnitSystem system) {
    std::vector<double> amounts;
    for (const SweepPoint& point : sweep.points) {
        if (const auto amount = amount_at(point, figure, system)) {
            amounts.push_back(*amount);
        }
    }
    if (amounts.size() < 2) {
        return std::nullopt;
    }
    const auto [least, most] = std::ranges::minmax(amounts);
    return Extent{least, most};
}

Axis axis_of(const core::SweepAxis& axis, UnitSystem system) {
    const double one = variable_amount(axis.variable, axis.from, system);
    const double other = variable_amount(axis.variable, axis.to, system);
    return round_axis(variable_axis(axis.variable, system), std::min(one, other),
                      std::max(one, other));
}

Flow line_figure(const Sweep& sweep, const SweptFigure& figure, const Extent& extent,
                 UnitSystem system) {
    const core::SweepAxis& axis = sweep.axes.front();
    Plot plot{fmt::format("How {} follows {}.", figure.name, variable_axis(axis.variable, system)),
              axis_of(axis, system),
              round_axis(figure.name + ", " + figure.unit, extent.least, extent.most)};
    std::vector<std::vector<PlotPoint>> lines(1);
    std::vector<PlotPoint> failing;
    for (const SweepPoint& point : sweep.points) {
        const auto amount = amount_at(point, figure, system);
        if (!amount) {
            lines.emplace_back();
            continue;
        }
        lines.back().push_back({variable_amount(axis.variable, point.at.front(), system), *amount});
        if (!point.is_sound()) {
            failing.push_back(lines.back().back());
        }
    }
    std::erase_if(lines, [](const auto& line) { return line.size() < 2; });
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (i == 0) {
            plot.add_line(lines[i], "value", figure.name);
        } else {
            plot.add_stroke(lines[i], "value");
        }
    }
    if (!failing.empty()) {
        plot.add_spots(failing, "chosen", failing_words);
    }
    return Block{plot.figure()};
}

/// The values of a figure on the grid of two variables.
ContourGrid grid_of(const Sweep& sweep, const SweptFigure& figure, UnitSystem system) {
    const core::SweepAxis& first = sweep.axes[0];
    const core::SweepAxis& second = sweep.axes[1];
    ContourGrid grid;
    for (std::size_t i = 0; i < first.points; ++i) {
        grid.across.push_back(variable_amount(first.variable, first.value(i), system));
    }
    for (std::size_t i = 0; i < second.points; ++i) {
        grid.upright.push_back(variable_amount(second.variable, second.value(i), system));
    }
    for (const SweepPoint& point : sweep.points) {
        grid.values.push_back(amount_at(point, figure, system));
    }
    grid.values.resize(grid.across.size() * grid.upright.size());
    return grid;
}

Flow contour_figure(const Sweep& sweep, const SweptFigure& figure, const Extent& extent,
                    UnitSystem system) {
    Plot plot{fmt::format("Lines of equal {}, in {}, over {} and {}.", figure.name, figure.unit,
                          variable_axis(sweep.axes[0].variable, system),
                          variable_axis(sweep.axes[1].variable, system)),
              axis_of(sweep.axes[0], system), axis_of(sweep.axes[1], system)};
    const ContourGrid grid = grid_of(sweep, figure, system);
    bool named = false;
    for (const Tick& level : round_axis("", extent.least, extent.most).ticks) {
        const auto strokes = contour(grid, level.at);
        for (const auto& stroke : strokes) {
            if (named) {
                plot.add_stroke({stroke.begin, stroke.end}, "value");
            } else {
                plot.add_line({stroke.begin, stroke.end}, "value",
                              fmt::format("equal {}, {}", figure.name, figure.unit));
                named = true;
            }
        }
        if (!strokes.empty()) {
            plot.add_label(strokes[strokes.size() / 2].begin, level.label);
        }
    }
    std::vector<PlotPoint> failing;
    for (const SweepPoint& point : sweep.points) {
        if (!point.is_sound()) {
            failing.push_back({variable_amount(sweep.axes[0].variable, point.at[0], system),
                               variable_amount(sweep.axes[1].variable, point.at[1], system)});
        }
    }
    if (!failing.empty()) {
        plot.add_spots(failing, "chosen", "fails a check, or no mix");
    }
    return Block{plot.figure()};
}

/// A figure that nothing changes is told, not drawn.
Flow swept_figure(const Sweep& sweep, const SweptFigure& figure, UnitSystem system) {
    const auto extent = extent_of(sweep, figure, system);
    if (!extent) {
        return {};
    }
    if (extent->is_one_value()) {
        const int decimals = figure.measure == core::Measure::money ? 2 : 0;
        return Flow{"\n"} +
               paragraph(fmt::format("The same at each point that has a mix: {} {} {}.",
                                     figure.name, fixed(extent->most, decimals), figure.unit),
                         {});
    }
    return sweep.axes.size() == 1 ? line_figure(sweep, figure, *extent, system)
                                  : contour_figure(sweep, figure, *extent, system);
}

} // namespace

Flow sweep_figures(const Sweep& sweep, UnitSystem system) {
    Flow figures;
    for (const SweptFigure& figure : swept_figures(sweep, system)) {
        figures += swept_figure(sweep, figure, system);
    }
    return figures;
}

} // namespace boardmark::report
