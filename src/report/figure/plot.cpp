#include "plot.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace boardmark::report {
namespace {

constexpr int width = 560;
constexpr double left = 64;
constexpr double right = 520;
constexpr double top = 56;
constexpr double bottom = 330;
constexpr double text_gap = 6;
constexpr double letter_height = 13;
constexpr double below = 46; // room for the figures and the name of the axis

/// The step of 1, 2 or 5 times a power of ten that is at least so long.
double round_step(double at_least) {
    const double power = std::pow(10, std::floor(std::log10(at_least)));
    for (const double nice : {1.0, 2.0, 5.0}) {
        if (nice * power >= at_least) {
            return nice * power;
        }
    }
    return 10 * power;
}

} // namespace

Axis round_axis(std::string name, double least, double most) {
    constexpr double wanted_steps = 5;
    constexpr double one_value = 0.1; // how wide the axis of a single value is, as a part of it
    constexpr double rounding = 1e-9;
    const bool several = most - least > rounding * std::max(std::abs(most), std::abs(least));
    const double span = several ? most - least : std::max(std::abs(most) * one_value, rounding);
    const double step = round_step(span / wanted_steps);
    const int decimals = std::max(0, static_cast<int>(std::ceil(-std::log10(step) - rounding)));
    Axis axis{.name = std::move(name),
              .from = step * std::floor(least / step + rounding),
              .to = step * std::ceil(most / step - rounding),
              .ticks = {}};
    axis.to = std::max(axis.to, axis.from + step);
    const auto steps = std::lround((axis.to - axis.from) / step);
    for (long i = 0; i <= steps; ++i) {
        const double at = axis.from + static_cast<double>(i) * step;
        axis.ticks.push_back({at, fmt::format("{:.{}f}", at, decimals)});
    }
    return axis;
}

Plot::Plot(std::string caption, Axis across, Axis upright, Upright growth)
    : across_(std::move(across))
    , upright_(std::move(upright))
    , growth_(growth)
    , figure_{.caption = std::move(caption),
              .width = width,
              .height = static_cast<int>(bottom + below)} {
    draw_across();
    draw_upright();
}

/// Its figures stand where the axis is: below a plot that grows up, else above it.
void Plot::draw_across() {
    const bool up = growth_ == Upright::up;
    for (const Tick& tick : across_.ticks) {
        figure_.strokes.push_back(
            {fmt::format("{0},{1} {0},{2}", x_of(tick.at), coordinate(top), coordinate(bottom)),
             tick.at == across_.from ? "axis" : "grid"});
        if (!tick.label.empty()) {
            figure_.labels.push_back(
                {x_of(tick.at), coordinate(up ? bottom + letter_height + text_gap : top - text_gap),
                 tick.label, "middle"});
        }
    }
    figure_.labels.push_back({coordinate(up ? right : left),
                              coordinate(up ? bottom + 2 * letter_height + 2 * text_gap
                                            : top - letter_height - 2 * text_gap),
                              across_.name, up ? "end" : "start"});
}

void Plot::draw_upright() {
    const bool up = growth_ == Upright::up;
    for (const Tick& tick : upright_.ticks) {
        figure_.strokes.push_back({fmt::format("{},{} {},{}", coordinate(left), y_of(tick.at),
                                               coordinate(right), y_of(tick.at)),
                                   tick.at == upright_.from ? "axis" : "grid"});
        figure_.labels.push_back(
            {coordinate(left - text_gap), y_of(tick.at, letter_height / 3), tick.label, "end"});
    }
    // Below a plot it stands clear of the lowest figure, whose letters grow on a narrow page.
    figure_.labels.push_back(
        {coordinate(2), coordinate(up ? top - 3 * text_gap : bottom + letter_height + 3 * text_gap),
         upright_.name});
}

void Plot::add_line(const std::vector<PlotPoint>& points, const std::string& role,
                    const std::string& name) {
    add_stroke(points, role);
    figure_.key.push_back({role, false, name});
}

void Plot::add_stroke(const std::vector<PlotPoint>& points, const std::string& role) {
    std::string written;
    for (const PlotPoint& point : points) {
        written += (written.empty() ? "" : " ") + x_of(point.x) + "," + y_of(point.y);
    }
    figure_.strokes.push_back({std::move(written), role});
}

void Plot::add_label(PlotPoint at, const std::string& words) {
    constexpr double beside = 9; // of a spot, and clear of a line
    figure_.labels.push_back({x_of(at.x, beside), y_of(at.y, -beside / 2), words, "start"});
}

void Plot::add_spots(const std::vector<PlotPoint>& points, const std::string& role,
                     const std::string& name) {
    for (const PlotPoint& point : points) {
        figure_.spots.push_back({x_of(point.x), y_of(point.y), role, name});
    }
    figure_.key.push_back({role, true, name});
}

std::string Plot::x_of(double value, double aside) const {
    const double part = (value - across_.from) / (across_.to - across_.from);
    return coordinate(left + (right - left) * part + aside);
}

std::string Plot::y_of(double value, double lower) const {
    const double part = (value - upright_.from) / (upright_.to - upright_.from);
    const double down = growth_ == Upright::down ? part : 1 - part;
    return coordinate(top + (bottom - top) * down + lower);
}

} // namespace boardmark::report
