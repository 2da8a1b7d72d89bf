#include "aggregate_figures.hpp"

#include "plot.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::report {
namespace {

using core::AggregateTogether;
using core::SieveOfAll;
using core::UnitSystem;

/// Sieves side by side, the finest on the left, as the figure of passing has them.
Flow retained_figure(const AggregateTogether& together, const core::RetainedRules& rules,
                     UnitSystem system) {
    std::vector<SieveOfAll> sieves(together.sieves.rbegin(), together.sieves.rend());
    Axis across{
        .name = "sieve", .from = 0, .to = static_cast<double>(sieves.size() + 1), .ticks = {}};
    std::vector<PlotPoint> retained;
    std::vector<PlotPoint> low;
    std::vector<PlotPoint> high;
    double most = rules.usual_high_percent.value;
    for (std::size_t i = 0; i < sieves.size(); ++i) {
        const core::RetainedLimits& limits = sieves[i].limits;
        const auto at = static_cast<double>(i + 1);
        // Every other name has room.
        const std::string& name = limits.name;
        across.ticks.push_back({at, i % 2 != 0 ? ""
                                    : system == UnitSystem::us
                                        ? name
                                        : fmt::format("{:g}", limits.opening_mm)});
        retained.push_back({at, sieves[i].retained_percent});
        most = std::max(most, sieves[i].retained_percent);
        if (limits.low_percent && limits.high_percent) {
            low.push_back({at, *limits.low_percent});
            high.push_back({at, *limits.high_percent});
            most = std::max(most, *limits.high_percent);
        }
    }
    if (system == UnitSystem::si) {
        across.name = "sieve opening, mm";
    }
    Plot plot{
        "What all aggregates together hold back on each sieve, by absolute volume, between what "
        "is advised: a guide, no limit.",
        std::move(across), round_axis("held back, % of all aggregate", 0, most)};
    plot.add_line(retained, "value", "all aggregates");
    plot.add_line(low, "limit", "least advised, as remembered");
    plot.add_line(high, "other", "most advised, as remembered");
    return Block{plot.figure()};
}

Flow workability_figure(const AggregateTogether& together, const core::WorkabilityRules& rules) {
    if (!together.coarseness_factor) {
        return {};
    }
    const double coarseness = *together.coarseness_factor;
    const double low = rules.coarseness_low.value;
    const double high = rules.coarseness_high.value;
    const double from = std::min({coarseness, low, 30.0});
    const double to = std::max({coarseness, high, 90.0});
    Plot plot{
        "Coarseness and workability of all aggregates: a chart for rounded or cubical stone, its "
        "fields as remembered; a guide, no limit.",
        round_axis("coarseness factor", from, to),
        round_axis("workability factor", std::min(together.workability_factor, 20.0),
                   std::max(together.workability_factor, 50.0))};
    plot.add_line({{from, core::control_line(from, rules)}, {to, core::control_line(to, rules)}},
                  "limit", "control line: below it rocky");
    plot.add_line({{low, rules.low.value},
                   {low, rules.high.value},
                   {high, rules.high.value},
                   {high, rules.low.value},
                   {low, rules.low.value}},
                  "other", "well graded above the control line");
    plot.add_spots({{coarseness, together.workability_factor}}, "chosen", "this mix");
    return Block{plot.figure()};
}

} // namespace

Flow aggregate_figures(const MixResult& result, UnitSystem system) {
    if (!result.aggregate || !result.grading) {
        return {};
    }
    const core::GradingRules& rules = **result.grading;
    return retained_figure(*result.aggregate, rules.retained, system) +
           workability_figure(*result.aggregate, rules.workability);
}

} // namespace boardmark::report
