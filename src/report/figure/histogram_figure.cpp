#include "histogram_figure.hpp"

#include <boardmark/core/checks/check_title.hpp>

#include "../risk/risk_words.hpp"
#include "../writing/measured.hpp"
#include "../writing/quantity_format.hpp"
#include "plot.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <string>
#include <vector>

namespace boardmark::report {
namespace {

double on_axis(double value, const core::Distribution& one, core::UnitSystem system) {
    return measured({value, core::measure_of(one.quantity)}, system).amount;
}

std::string axis_name(const core::Distribution& one, core::UnitSystem system) {
    const std::string unit = measured({0, core::measure_of(one.quantity)}, system).unit;
    return quantity_words(one.quantity) + (unit == "1" ? "" : ", " + unit);
}

double share_percent(std::size_t count, const core::Distribution& one) {
    return 100 * static_cast<double>(count) / static_cast<double>(one.samples);
}

/// The outline of the steps.
std::vector<PlotPoint> outline_of(const core::Distribution& one, core::UnitSystem system) {
    const auto& [from, to, counts] = one.histogram;
    const double step = (to - from) / static_cast<double>(counts.size());
    std::vector<PlotPoint> points{{on_axis(from, one, system), 0}};
    for (std::size_t i = 0; i < counts.size(); ++i) {
        const double share = share_percent(counts[i], one);
        const auto place = static_cast<double>(i);
        points.push_back({on_axis(from + place * step, one, system), share});
        points.push_back({on_axis(from + (place + 1) * step, one, system), share});
    }
    points.push_back({on_axis(to, one, system), 0});
    return points;
}

Flow histogram_figure(const core::Distribution& one, core::UnitSystem system) {
    if (one.histogram.counts.empty()) {
        return {};
    }
    const double most = share_percent(*std::ranges::max_element(one.histogram.counts), one);
    const auto points = outline_of(one, system);
    double least_x = points.front().x;
    double most_x = points.back().x;
    for (const core::DistributionLimit& limit : one.limits) {
        least_x = std::min(least_x, on_axis(limit.value, one, system));
        most_x = std::max(most_x, on_axis(limit.value, one, system));
    }
    Plot plot{"How the batches spread over " + quantity_words(one.quantity) + ".",
              round_axis(axis_name(one, system), least_x, most_x),
              round_axis("% of the batches in a step", 0, most)};
    plot.add_line(points, "value", "batches of this mix");
    for (const core::DistributionLimit& limit : one.limits) {
        const double x = on_axis(limit.value, one, system);
        plot.add_line({{x, 0}, {x, most}}, "limit",
                      fmt::format("{}, {}",
                                  limit.by ? core::title_of(limit.by->name())
                                           : std::string{"Specified strength"},
                                  shown({limit.value, core::measure_of(one.quantity)}, system, 1)));
    }
    return Block{plot.figure()};
}

} // namespace

Flow histogram_figures(const core::Risk& risk, core::UnitSystem system) {
    Flow figures;
    for (const core::Distribution& one : risk.quantities) {
        figures += histogram_figure(one, system);
    }
    return figures;
}

} // namespace boardmark::report
