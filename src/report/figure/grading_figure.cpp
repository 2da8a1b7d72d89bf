#include "grading_figure.hpp"

#include <boardmark/core/mix/blended_aggregate.hpp>
#include <boardmark/core/mix/grading.hpp>

#include "../writing/names.hpp"
#include "plot.hpp"

#include <fmt/format.h>

#include <cmath>

namespace boardmark::report {
namespace {

using core::Grading;
using core::GradingRules;

/// Where an opening stands: on this scale the line of maximum density is straight.
double place_of(double opening_mm, const GradingRules& rules) {
    return std::pow(opening_mm, rules.density_exponent.value);
}

std::vector<PlotPoint> points_of(const Grading& grading, const GradingRules& rules) {
    std::vector<PlotPoint> points;
    for (const core::SievePassing& sieve : grading) {
        points.push_back({place_of(sieve.opening_mm, rules), sieve.percent});
    }
    return points;
}

/// A tick at each sieve; figures where they have room.
Axis sieve_axis(const Grading& grading, const GradingRules& rules) {
    constexpr double least_gap = 0.08; // of the axis
    const double end = place_of(grading.front().opening_mm, rules);
    Axis axis{.name = fmt::format("sieve opening, mm, spaced by its power of {:g}",
                                  rules.density_exponent.value),
              .from = 0,
              .to = end,
              .ticks = {{0, "0"}}};
    double labelled = 0;
    for (auto sieve = grading.rbegin(); sieve != grading.rend(); ++sieve) {
        const double at = place_of(sieve->opening_mm, rules);
        const bool has_room = at - labelled >= least_gap * end;
        labelled = has_room ? at : labelled;
        axis.ticks.push_back({at, has_room ? fmt::format("{:g}", sieve->opening_mm) : ""});
    }
    return axis;
}

Plot plot_of(const Grading& widest, std::string caption, const char* passing,
             const GradingRules& rules) {
    return {std::move(caption), sieve_axis(widest, rules), round_axis(passing, 0, 100)};
}

std::vector<PlotPoint> limit_line(const GradingRules& rules, double core::SieveLimits::*bound) {
    std::vector<PlotPoint> points;
    for (const core::SieveLimits& limits : rules.fine) {
        points.push_back({place_of(limits.opening_mm, rules), limits.*bound});
    }
    return points;
}

Grading sieves_of_limits(const GradingRules& rules) {
    Grading sieves;
    for (const core::SieveLimits& limits : rules.fine) {
        sieves.push_back({limits.opening_mm, 0});
    }
    return sieves;
}

Flow fine_figure(const core::FineGrading& fine, const GradingRules& rules) {
    Grading drawn;
    for (const core::SieveLimits& limits : rules.fine) {
        drawn.push_back(
            {limits.opening_mm, core::passing_anywhere_percent(fine.grading, limits.opening_mm)});
    }
    Plot plot = plot_of(sieves_of_limits(rules),
                        "Grading of " + column_name(fine.name) + " between the limits of " +
                            rules.fine_source.citation + ".",
                        "percent passing by mass", rules);
    plot.add_line(points_of(drawn, rules), "value", column_name(fine.name));
    plot.add_line(limit_line(rules, &core::SieveLimits::low_percent), "limit", "least passing");
    plot.add_line(limit_line(rules, &core::SieveLimits::high_percent), "other", "most passing");
    return Block{plot.figure()};
}

/// The curve or the band that aggregates are blended to; the line of maximum density is drawn
/// anyway.
void add_target(const core::AggregateBlend* blend, const GradingRules& rules, Plot& plot) {
    if (!blend || blend->to == core::BlendTo::maximum_density) {
        return;
    }
    std::vector<PlotPoint> low;
    std::vector<PlotPoint> high;
    for (const core::SieveBand& sieve : blend->target) {
        low.push_back({place_of(sieve.opening_mm, rules), sieve.low_percent});
        high.push_back({place_of(sieve.opening_mm, rules), sieve.high_percent});
    }
    const bool band = blend->to == core::BlendTo::band;
    plot.add_line(low, "limit", band ? "band, least passing" : "the stated curve");
    if (band) {
        plot.add_line(high, "limit", "band, most passing");
    }
}

Flow combined_figure(const Grading& combined, const core::AggregateBlend* blend,
                     const GradingRules& rules) {
    const auto maximum_mm = core::maximum_size_mm(combined);
    if (!maximum_mm) {
        return {};
    }
    Plot plot = plot_of(combined,
                        "All aggregates together, by absolute volume, beside the line of maximum "
                        "density: a guide, no limit.",
                        "percent passing by absolute volume", rules);
    plot.add_line(points_of(combined, rules), "value", "all aggregates");
    plot.add_line({{0, 0},
                   {place_of(*maximum_mm, rules),
                    core::density_line_percent(*maximum_mm, *maximum_mm, rules)}},
                  "other", fmt::format("maximum density up to {:g} mm", *maximum_mm));
    add_target(blend, rules, plot);
    return Block{plot.figure()};
}

} // namespace

Flow grading_figures(const MixResult& result) {
    if (!result.grading) {
        return {};
    }
    Flow figures;
    for (const core::FineGrading& fine : core::fine_gradings(result.proportions)) {
        figures += fine_figure(fine, **result.grading);
    }
    const Grading combined = core::combined_grading(result.proportions);
    return combined.empty() ? figures
                            : figures + combined_figure(combined, result.proportions.blend.get(),
                                                        **result.grading);
}

} // namespace boardmark::report
