#include "pressure_figure.hpp"

#include <boardmark/report/writing/words.hpp>
#include <boardmark/text/utf8.hpp>

#include "../writing/measured.hpp"
#include "plot.hpp"

#include <algorithm>

namespace boardmark::report {
namespace {

using core::UnitSystem;

constexpr const char* roles[] = {"value", "other", "limit"};

PlotPoint plotted(const core::EnvelopePoint& point, UnitSystem system) {
    return {measured({point.kpa, core::Measure::pressure}, system).amount,
            measured({point.depth_m, core::Measure::line_length}, system).amount};
}

std::vector<PlotPoint> envelope_of(const core::FormPressure& pressure, UnitSystem system) {
    std::vector<PlotPoint> points;
    for (const core::EnvelopePoint& point : pressure.envelope) {
        points.push_back(plotted(point, system));
    }
    return points;
}

struct NamedEnvelope {
    std::string name;
    std::vector<PlotPoint> points;
};

/// Methods of one envelope share a line.
void add_to(std::vector<NamedEnvelope>& lines, NamedEnvelope line) {
    for (NamedEnvelope& other : lines) {
        const bool same = std::ranges::equal(other.points, line.points,
                                             [](const PlotPoint& one, const PlotPoint& two) {
                                                 return one.x == two.x && one.y == two.y;
                                             });
        if (same) {
            other.name += ", " + line.name;
            return;
        }
    }
    lines.push_back(std::move(line));
}

} // namespace

Flow pressure_figure(const std::vector<core::FormForces>& forces, UnitSystem system) {
    if (forces.empty()) {
        return {};
    }
    const core::FormForces& highest =
        *std::ranges::max_element(forces, {}, &core::FormForces::height_m);
    PlotPoint most{0, 0};
    for (const core::FormPressure& pressure : highest.pressures) {
        for (const PlotPoint& point : envelope_of(pressure, system)) {
            most = {std::max(most.x, point.x), std::max(most.y, point.y)};
        }
    }
    const bool us = system == UnitSystem::us;
    Plot plot{"Pressure on the form of " + text::printable(highest.wall) +
                  " by depth below the top of the concrete. " + words(core::form_caution(), system),
              round_axis(us ? "pressure, psf" : "pressure, kPa", 0, most.x),
              round_axis(us ? "depth, ft" : "depth, m", 0, most.y), Upright::down};
    std::vector<NamedEnvelope> lines;
    for (const core::FormPressure& pressure : highest.pressures) {
        add_to(lines, {pressure.method, envelope_of(pressure, system)});
    }
    for (std::size_t i = 0; i < lines.size(); ++i) {
        plot.add_line(lines[i].points, roles[std::min(i, std::size(roles) - 1)], lines[i].name);
    }
    return Block{plot.figure()};
}

} // namespace boardmark::report
