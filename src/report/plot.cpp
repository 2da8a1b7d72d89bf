#include "plot.hpp"

#include <fmt/format.h>

#include <cmath>

namespace boardmark::report {
namespace {

constexpr int width = 560;
constexpr int height = 360;
constexpr double left = 64;
constexpr double right = 520;
constexpr double top = 56;
constexpr double bottom = 330;
constexpr double above_line = 6;

std::string coordinate(double value) {
    return fmt::format("{:.1f}", value);
}

} // namespace

Axis round_axis(std::string name, double most) {
    constexpr double wanted_steps = 5;
    const double rough = most / wanted_steps;
    const double power = std::pow(10, std::floor(std::log10(rough)));
    double step = 10 * power;
    for (const double nice : {5.0, 2.0, 1.0}) {
        step = nice * power >= rough ? nice * power : step;
    }
    return {std::move(name), step * std::ceil(most / step), step};
}

DownwardPlot::DownwardPlot(std::string caption, Axis across, Axis down)
    : across_(std::move(across))
    , down_(std::move(down))
    , figure_{.caption = std::move(caption), .width = width, .height = height} {
    constexpr double rounding = 1e-9;
    for (double x = 0; x <= across_.end + rounding; x += across_.step) {
        figure_.strokes.push_back(
            {fmt::format("{},{} {},{}", x_of(x), y_of(0), x_of(x), y_of(down_.end)),
             x == 0 ? "axis" : "grid"});
        figure_.labels.push_back(
            {x_of(x), coordinate(top - above_line), fmt::format("{:g}", x), "middle"});
    }
    for (double y = 0; y <= down_.end + rounding; y += down_.step) {
        figure_.strokes.push_back(
            {fmt::format("{},{} {},{}", x_of(0), y_of(y), x_of(across_.end), y_of(y)),
             y == 0 ? "axis" : "grid"});
        figure_.labels.push_back(
            {coordinate(left - above_line), y_of(y), fmt::format("{:g}", y), "end"});
    }
    figure_.labels.push_back({coordinate(left), coordinate(top / 2 - above_line), across_.name});
    figure_.labels.push_back({coordinate(2), coordinate(bottom + 3 * above_line), down_.name});
}

void DownwardPlot::add_line(const std::vector<PlotPoint>& points, const std::string& role,
                            const std::string& name) {
    std::string written;
    for (const PlotPoint& point : points) {
        written += (written.empty() ? "" : " ") + x_of(point.x) + "," + y_of(point.y);
    }
    figure_.strokes.push_back({std::move(written), role});
    ++lines_;
    constexpr double line_height = 22;
    constexpr double sample = 40;
    const double y = top + line_height * lines_;
    figure_.strokes.push_back({fmt::format("{},{} {},{}", coordinate(right - sample), coordinate(y),
                                           coordinate(right - above_line), coordinate(y)),
                               role});
    figure_.labels.push_back(
        {coordinate(right - sample - above_line), coordinate(y + above_line / 2), name, "end"});
}

std::string DownwardPlot::x_of(double value) const {
    return coordinate(left + (right - left) * value / across_.end);
}

std::string DownwardPlot::y_of(double value) const {
    return coordinate(top + (bottom - top) * value / down_.end);
}

} // namespace boardmark::report
