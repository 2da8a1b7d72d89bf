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

    bool operator==(const NamedEnvelope&) const = default;
};

/// Methods of one envelope share a line.
void add_to(std::vector<NamedEnvelope>& lines, NamedEnvelope line) {
    for (NamedEnvelope& other : lines) {
        if (other.points == line.points) {
            other.name += ", " + line.name;
            return;
        }
    }
    lines.push_back(std::move(line));
}

/// The forms of parts that carry the same pressures.
struct AlikeForms {
    std::string names;
    std::vector<NamedEnvelope> lines;
};

std::vector<NamedEnvelope> envelopes_of(const core::FormForces& forces, UnitSystem system) {
    std::vector<NamedEnvelope> lines;
    for (const core::FormPressure& pressure : forces.pressures) {
        add_to(lines, {pressure.method, envelope_of(pressure, system)});
    }
    return lines;
}

std::vector<AlikeForms> alike_forms(const std::vector<core::FormForces>& forces,
                                    UnitSystem system) {
    std::vector<AlikeForms> all;
    for (const core::FormForces& of_part : forces) {
        const auto lines = envelopes_of(of_part, system);
        const std::string name = text::printable(of_part.wall);
        const auto same = std::ranges::find(all, lines, &AlikeForms::lines);
        if (same != all.end()) {
            same->names += ", " + name;
        } else if (!lines.empty()) {
            all.push_back({name, lines});
        }
    }
    return all;
}

Figure figure_of(const AlikeForms& forms, UnitSystem system) {
    PlotPoint most{0, 0};
    for (const NamedEnvelope& line : forms.lines) {
        for (const PlotPoint& point : line.points) {
            most = {std::max(most.x, point.x), std::max(most.y, point.y)};
        }
    }
    const bool us = system == UnitSystem::us;
    Plot plot{"Pressure on the form of " + forms.names +
                  " by depth below the top of the concrete. " + words(core::form_caution(), system),
              round_axis(us ? "pressure, psf" : "pressure, kPa", 0, most.x),
              round_axis(us ? "depth, ft" : "depth, m", 0, most.y), Upright::down};
    for (std::size_t i = 0; i < forms.lines.size(); ++i) {
        plot.add_line(forms.lines[i].points, roles[std::min(i, std::size(roles) - 1)],
                      forms.lines[i].name);
    }
    return plot.figure();
}

} // namespace

Flow pressure_figures(const std::vector<core::FormForces>& forces, UnitSystem system) {
    Flow figures;
    for (const AlikeForms& forms : alike_forms(forces, system)) {
        figures += Block{figure_of(forms, system)};
    }
    return figures;
}

} // namespace boardmark::report
