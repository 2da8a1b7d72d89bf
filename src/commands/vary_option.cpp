#include "vary_option.hpp"

#include <boardmark/report/writing/words.hpp>
#include <boardmark/text/closest.hpp>

#include "failure.hpp"
#include "option_values.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::commands {
namespace {

using core::Varied;
using units::Dimension;

constexpr const char* vary_example = "write for example --vary w_cm=0.36..0.50/15";

/// The four parts of one, as they are written.
struct WrittenAxis {
    std::string key;
    std::string from;
    std::string to;
    std::string points;
};

WrittenAxis parts_of(const std::string& written) {
    const std::size_t equals = written.find('=');
    const std::size_t dots = written.find("..", equals == std::string::npos ? 0 : equals);
    const std::size_t slash = written.rfind('/');
    if (equals == std::string::npos || dots == std::string::npos || slash == std::string::npos ||
        slash < dots) {
        throw wrong_command_line(fmt::format("--vary: '{}' is not KEY=FROM..TO/N", written),
                                 vary_example);
    }
    return {written.substr(0, equals), written.substr(equals + 1, dots - equals - 1),
            written.substr(dots + 2, slash - dots - 2), written.substr(slash + 1)};
}

std::string known_keys() {
    std::vector<std::string> keys;
    for (const core::VariedKey& known : core::varied_keys()) {
        keys.push_back(std::string{known.key} + (known.key.ends_with('.') ? "NAME" : ""));
    }
    return fmt::format("one of: {}", fmt::join(keys, ", "));
}

core::Variable variable_of(const std::string& key, const core::Mix& mix) {
    const auto variable = core::variable_named(key);
    if (!variable) {
        std::vector<std::string_view> names;
        for (const core::VariedKey& known : core::varied_keys()) {
            names.push_back(known.key);
        }
        const auto near = text::closest(key, names);
        throw wrong_command_line(fmt::format("--vary: '{}' is no figure that can be varied", key),
                                 near && !near->ends_with('.')
                                     ? fmt::format("did you mean '{}'?", *near)
                                     : known_keys());
    }
    if (const auto why = core::why_not_varied(*variable, mix)) {
        throw wrong_command_line(
            fmt::format("--vary: '{}': {}", key, report::words(*why, mix.system)),
            "take the names and keys of the file");
    }
    return *variable;
}

/// A value in the unit inside, and for a dose its basis.
double value_of(const std::string& written, core::Variable& variable) {
    constexpr Bounds any_share{.least = 0, .most = 100};
    constexpr Bounds any_change{.least = -10, .most = 10};
    constexpr Bounds any_amount{.least = 1, .most = 3000};
    constexpr Bounds any_dose_m3_kg{.least = 0, .most = 1e-3};
    const OptionText text{"vary", written};
    switch (variable.figure) {
    case Varied::w_cm:
        return read_number_option(text, {0.15, 1.5}); // of 'selections.w_cm'
    case Varied::coarse_volume:
        return read_number_option(text, {0.1, 1});
    case Varied::water:
    case Varied::binder:
        return read_option(text, Dimension::mass_per_volume, any_amount);
    case Varied::air:
    case Varied::fine_share:
    case Varied::share:
        return read_option(text, Dimension::percentage, any_share);
    case Varied::coarse_adjustment:
        return read_option(text, Dimension::percentage, any_change);
    case Varied::dose:
        break;
    }
    const units::Quantity dose = read_quantity_option(
        text, {{Dimension::dose, any_dose_m3_kg}, {Dimension::percentage, any_share}});
    variable.basis = dose.unit->dimension == Dimension::dose ? core::DoseBasis::volume
                                                             : core::DoseBasis::percent;
    return dose.inside();
}

core::SweepAxis axis_of(const std::string& written, const core::Mix& mix) {
    const WrittenAxis parts = parts_of(written);
    core::Variable variable = variable_of(parts.key, mix);
    const double from = value_of(parts.from, variable);
    const core::DoseBasis basis = variable.basis;
    const double to = value_of(parts.to, variable);
    if (basis != variable.basis) {
        throw wrong_command_line(
            fmt::format("--vary: '{}' and '{}' are in two kinds of unit", parts.from, parts.to),
            "write both by volume or both in percent of the binder");
    }
    if (from == to) {
        throw wrong_command_line(fmt::format("--vary: '{}' begins where it ends", written),
                                 vary_example);
    }
    constexpr Bounds counts{.least = 2, .most = core::most_sweep_points};
    return {std::move(variable), from, to,
            static_cast<std::size_t>(read_whole_option({"vary", parts.points}, counts))};
}

} // namespace

std::vector<core::SweepAxis> sweep_axes(const std::vector<std::string>& written,
                                        const core::Mix& mix) {
    if (written.empty() || written.size() > 2) {
        throw wrong_command_line(written.empty() ? "what is to be varied? '--vary' is missing"
                                                 : "--vary: one or two figures can be varied",
                                 vary_example);
    }
    std::vector<core::SweepAxis> axes;
    std::size_t points = 1;
    for (const std::string& one : written) {
        axes.push_back(axis_of(one, mix));
        points *= axes.back().points;
    }
    if (axes.size() == 2 && axes[0].variable == axes[1].variable) {
        throw wrong_command_line(
            fmt::format("--vary: '{}' is varied twice", core::key_of(axes[0].variable)),
            "keep one of the two");
    }
    std::vector<core::Variable> variables;
    for (const core::SweepAxis& axis : axes) {
        variables.push_back(axis.variable);
    }
    if (const auto why = core::why_not_together(variables, mix)) {
        throw wrong_command_line(fmt::format("--vary: {}", report::words(*why, mix.system)),
                                 "vary one, or the one that goes with it");
    }
    if (points > core::most_sweep_points) {
        throw wrong_command_line(
            fmt::format("--vary: {} points; at most {} are made", points, core::most_sweep_points),
            "take fewer of each");
    }
    return axes;
}

} // namespace boardmark::commands
