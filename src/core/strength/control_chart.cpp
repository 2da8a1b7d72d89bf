#include <boardmark/core/strength/control_chart.hpp>

#include <cassert>
#include <cmath>
#include <numbers>
#include <numeric>

namespace boardmark::core {
namespace {

double mean_moving_range(const std::vector<double>& values) {
    double sum = 0;
    for (std::size_t i = 1; i < values.size(); ++i) {
        sum += std::abs(values[i] - values[i - 1]);
    }
    return sum / static_cast<double>(values.size() - 1);
}

/// What rounding of the sums may move, so that equal values are not beyond themselves.
double slack(const ControlChart& chart) {
    return 1e-9 * std::abs(chart.mean);
}

bool outside(double value, const ControlChart& chart) {
    return value < *chart.low - slack(chart) || value > *chart.high + slack(chart);
}

int side(double value, const ControlChart& chart) {
    const double distance = value - chart.mean;
    return std::abs(distance) <= slack(chart) ? 0 : distance > 0 ? 1 : -1;
}

std::vector<ChartSignal> signals_of(const std::vector<double>& values, const ControlChart& chart,
                                    const ControlChartRules& rules) {
    std::vector<ChartSignal> signals;
    double in_a_row = 0;
    int last_side = 0;
    for (const double value : values) {
        const int now = side(value, chart);
        in_a_row = now != 0 && now == last_side ? in_a_row + 1 : now == 0 ? 0 : 1;
        last_side = now;
        signals.push_back(outside(value, chart)                ? ChartSignal::outside
                          : in_a_row >= rules.run_length.value ? ChartSignal::run
                                                               : ChartSignal::none);
    }
    return signals;
}

} // namespace

ControlChart control_chart(const std::vector<double>& values, const ControlChartRules& rules) {
    assert(!values.empty());
    const auto count = static_cast<double>(values.size());
    ControlChart chart{.mean = std::accumulate(values.begin(), values.end(), 0.0) / count,
                       .deviation = {},
                       .low = {},
                       .high = {},
                       .provisional = count < rules.firm_count.value,
                       .signals = {}};
    if (values.size() < 2) {
        chart.signals.assign(values.size(), ChartSignal::none);
        return chart;
    }
    chart.deviation = mean_moving_range(values) * std::sqrt(std::numbers::pi) / 2;
    const double reach = rules.limit_in_deviations.value * *chart.deviation;
    chart.low = chart.mean - reach;
    chart.high = chart.mean + reach;
    chart.signals = signals_of(values, chart, rules);
    return chart;
}

} // namespace boardmark::core
