#include "batch_options.hpp"

#include <boardmark/units/quantity.hpp>

#include "failure.hpp"

#include <fmt/format.h>

#include <vector>

namespace boardmark::commands {
namespace {

using units::Dimension;

/// Values that an option may have, in the inside unit, ends included.
struct Bounds {
    double least;
    double most;
};

std::string trimmed(std::string_view text) {
    const std::size_t first = text.find_first_not_of(' ');
    if (first == std::string_view::npos) {
        return "";
    }
    return std::string{text.substr(first, text.find_last_not_of(' ') - first + 1)};
}

/// A quantity on the command line, in the inside unit of its dimension.
double read(const std::string& option, const std::string& written, Dimension dimension,
            Bounds bounds) {
    const auto reading = units::read_quantity(written);
    if (const auto* wrong = std::get_if<units::Misreading>(&reading)) {
        throw wrong_command_line(fmt::format("--{}: {}", option, wrong->what),
                                 wrong->advice.empty()
                                     ? fmt::format("write {}", units::describe(dimension))
                                     : wrong->advice);
    }
    const auto quantity = std::get<units::Quantity>(reading);
    if (quantity.unit->dimension != dimension) {
        throw wrong_command_line(fmt::format("--{}: '{}' is {}; {} is expected", option, written,
                                             units::describe(quantity.unit->dimension),
                                             units::describe(dimension)));
    }
    const double value = quantity.inside();
    if (!(value >= bounds.least && value <= bounds.most)) {
        const auto in_unit = [&](double inside) {
            return fmt::format("{:.6g} {}", quantity.unit->from_inside(inside),
                               quantity.unit->spelling);
        };
        throw wrong_command_line(fmt::format("--{}: {} is out of range ({} to {})", option, written,
                                             in_unit(bounds.least), in_unit(bounds.most)));
    }
    return value;
}

std::vector<std::string> split(const std::string& text, char separator) {
    std::vector<std::string> parts;
    std::size_t start = 0;
    for (std::size_t end; (end = text.find(separator, start)) != std::string::npos;
         start = end + 1) {
        parts.push_back(trimmed(std::string_view{text}.substr(start, end - start)));
    }
    parts.push_back(trimmed(std::string_view{text}.substr(start)));
    return parts;
}

constexpr Bounds volume_bounds{.least = 1e-4, .most = 10000}; // from a tenth of a litre

double panel_volume_m3(const std::string& written) {
    const auto sides = split(written, 'x');
    if (sides.size() != 3) {
        throw wrong_command_line(fmt::format("--panel: '{}' has not three dimensions", written),
                                 "write for example --panel '24 in x 24 in x 8 in'");
    }
    double volume_m3 = 1;
    for (const std::string& side : sides) {
        constexpr Bounds side_bounds{.least = 1, .most = 100000};
        volume_m3 *= read("panel", side, Dimension::length, side_bounds) / 1000;
    }
    if (volume_m3 < volume_bounds.least || volume_m3 > volume_bounds.most) {
        throw wrong_command_line(fmt::format("--panel: '{}' makes {:.6g} m3 ({:g} m3 to {:.0f} m3)",
                                             written, volume_m3, volume_bounds.least,
                                             volume_bounds.most));
    }
    return volume_m3;
}

double net_volume_m3(const Arguments& arguments) {
    const auto volume = arguments.value("volume");
    const auto panel = arguments.value("panel");
    if (volume.has_value() == panel.has_value()) {
        throw wrong_command_line(
            volume ? "--volume and --panel say the same thing twice"
                   : "how much concrete? 'batch' needs --volume or --panel",
            "write for example --volume 2ft3, or --panel '24 in x 24 in x 8 in'");
    }
    return volume ? read("volume", *volume, Dimension::volume, volume_bounds)
                  : panel_volume_m3(*panel);
}

std::map<std::string, double> moistures(const Arguments& arguments) {
    std::map<std::string, double> result;
    const auto written = arguments.value("moisture");
    if (!written) {
        return result;
    }
    for (const std::string& part : split(*written, ',')) {
        const std::size_t equals = part.rfind('=');
        if (equals == std::string::npos || equals == 0) {
            throw wrong_command_line(fmt::format("--moisture: '{}' is not NAME=PERCENT", part),
                                     "write for example --moisture sand=5.2%,stone=1.4%");
        }
        constexpr Bounds moisture_bounds{.least = 0, .most = 60};
        const std::string name = trimmed(std::string_view{part}.substr(0, equals));
        const std::string amount = trimmed(std::string_view{part}.substr(equals + 1));
        const double percent = read("moisture", amount, Dimension::percentage, moisture_bounds);
        if (!result.emplace(name, percent).second) {
            throw wrong_command_line(fmt::format("--moisture: '{}' is named twice", name));
        }
    }
    return result;
}

} // namespace

BatchOptions read_batch_options(const Arguments& arguments) {
    BatchOptions options{.net_volume_m3 = net_volume_m3(arguments),
                         .allowance_percent = 0,
                         .order = {},
                         .moisture_percent = moistures(arguments)};
    if (const auto written = arguments.value("allowance")) {
        constexpr Bounds allowance_bounds{.least = 0, .most = 100};
        options.allowance_percent =
            read("allowance", *written, Dimension::percentage, allowance_bounds);
    }
    options.order.volume_m3 = options.net_volume_m3 * (1 + options.allowance_percent / 100);
    if (const auto written = arguments.value("resolution")) {
        constexpr Bounds resolution_bounds{.least = 0.001, .most = 1000};
        options.order.resolution_kg =
            read("resolution", *written, Dimension::mass, resolution_bounds);
    }
    return options;
}

} // namespace boardmark::commands
