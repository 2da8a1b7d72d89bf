#include "control_figure.hpp"

#include <boardmark/units/unit.hpp>

#include "../writing/quantity_format.hpp"
#include "plot.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::report {
namespace {

using core::UnitSystem;

double in_user_unit(double value, const ChartResult& result, UnitSystem system) {
    const std::string_view unit = result.charted.unit(system);
    return unit.empty() ? value : units::unit(unit).from_inside(value);
}

/// Dates at the ends, numbers in between would not be read.
Axis order_axis(const ChartResult& result) {
    const double last = static_cast<double>(result.points.size());
    return {.name = "in order, one step for each value",
            .from = 0,
            .to = last + 1,
            .ticks = {{1, result.points.front().date}, {last, result.points.back().date}}};
}

std::string axis_name(const ChartResult& result, UnitSystem system) {
    const std::string_view unit = result.charted.unit(system);
    return std::string{result.charted.heading} + (unit.empty() ? "" : ", " + std::string{unit});
}

class Chart {
public:
    Chart(const ChartResult& result, UnitSystem system)
        : result_(result)
        , system_(system) {
        for (std::size_t i = 0; i < result.points.size(); ++i) {
            const bool outside = result.chart.signals[i] == core::ChartSignal::outside;
            const PlotPoint point{static_cast<double>(i + 1), user(result.points[i].value)};
            values_.push_back(point);
            (outside ? outside_ : inside_).push_back(point);
        }
    }

    Figure figure() const {
        Plot plot{"Control chart of the " + std::string{result_.charted.heading} +
                      ". The limits come from the values themselves.",
                  order_axis(result_), upright_axis()};
        plot.add_line(values_, "grid", "from value to value");
        add_level(plot, result_.chart.mean, "value", "mean");
        if (result_.chart.low) {
            add_level(plot, *result_.chart.low, "limit", "lower control limit");
            add_level(plot, *result_.chart.high, "limit", "upper control limit");
        }
        if (const auto target = core::common_target(result_.points)) {
            add_level(plot, *target, "other", "target");
        }
        if (!inside_.empty()) {
            plot.add_spots(inside_, "point", "value");
        }
        if (!outside_.empty()) {
            plot.add_spots(outside_, "chosen", "value outside the limits");
        }
        return plot.figure();
    }

private:
    double user(double value) const { return in_user_unit(value, result_, system_); }

    void add_level(Plot& plot, double value, const char* role, const std::string& name) const {
        const double last = values_.back().x + 1;
        plot.add_line({{0, user(value)}, {last, user(value)}}, role,
                      name + ", " + fixed(user(value), decimals()));
    }

    /// A hundredth of what the chart spans is told.
    int decimals() const {
        const Axis axis = upright_axis();
        return std::max(0, 2 - static_cast<int>(std::floor(std::log10(axis.to - axis.from))));
    }

    Axis upright_axis() const {
        std::vector<double> held{user(result_.chart.mean)};
        for (const PlotPoint& point : values_) {
            held.push_back(point.y);
        }
        for (const auto value :
             {result_.chart.low, result_.chart.high, core::common_target(result_.points)}) {
            held.push_back(user(value.value_or(result_.chart.mean)));
        }
        const auto [least, most] = std::ranges::minmax(held);
        return round_axis(axis_name(result_, system_), least, most);
    }

    const ChartResult& result_;
    UnitSystem system_;
    std::vector<PlotPoint> values_;
    std::vector<PlotPoint> inside_;
    std::vector<PlotPoint> outside_;
};

} // namespace

Flow control_figure(const ChartResult& result, UnitSystem system) {
    return result.points.size() < 2 ? Flow{} : Flow{Block{Chart{result, system}.figure()}};
}

} // namespace boardmark::report
