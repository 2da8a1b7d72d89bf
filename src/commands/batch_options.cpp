#include "batch_options.hpp"

#include <boardmark/units/unit.hpp>

#include "failure.hpp"
#include "option_values.hpp"

#include <fmt/format.h>

namespace boardmark::commands {
namespace {

using units::Dimension;

constexpr Bounds volume_bounds{.least = core::least_batch_m3, .most = core::most_batch_m3};
constexpr Bounds capacity_bounds{.least = 1e-3, .most = 1000}; // a beaker to a ship's plant
constexpr Bounds sack_bounds{.least = 1, .most = 2000};        // to the bag that a crane lifts

double panel_volume_m3(const std::string& written) {
    const auto sides = split(written, 'x');
    if (sides.size() != 3) {
        throw wrong_command_line(fmt::format("--panel: '{}' has not three dimensions", written),
                                 "write for example --panel '30 in x 36 in x 8 in'");
    }
    double volume_m3 = 1;
    for (const std::string& side : sides) {
        constexpr Bounds side_bounds{.least = 1, .most = 100000};
        volume_m3 *= read_option({"panel", side}, Dimension::length, side_bounds) / 1000;
    }
    if (volume_m3 < volume_bounds.least || volume_m3 > volume_bounds.most) {
        throw wrong_command_line(fmt::format("--panel: '{}' makes {:.6g} m3 ({:g} m3 to {:.0f} m3)",
                                             written, volume_m3, volume_bounds.least,
                                             volume_bounds.most));
    }
    return volume_m3;
}

double net_volume_m3(const Arguments& arguments) {
    const auto panel = arguments.value("panel");
    if (arguments.has("volume") == panel.has_value()) {
        throw wrong_command_line(
            panel ? "--volume and --panel say the same thing twice"
                  : "how much concrete? 'batch' needs --volume or --panel",
            "write for example --volume 2ft3, or --panel '30 in x 36 in x 8 in'");
    }
    return panel ? panel_volume_m3(*panel) : *volume_m3(arguments);
}

double allowance_percent(const Arguments& arguments) {
    const auto written = arguments.value("allowance");
    constexpr Bounds bounds{.least = 0, .most = 100};
    return written ? read_option({"allowance", *written}, Dimension::percentage, bounds) : 0;
}

std::optional<core::VesselSize> vessel(const Arguments& arguments) {
    const auto mixer = arguments.value("mixer");
    const auto truck = arguments.value("truck");
    if (mixer && truck) {
        throw wrong_command_line("--mixer and --truck cannot both be given",
                                 "keep the one that this batch is mixed in");
    }
    if (mixer) {
        return core::VesselSize{core::Vessel::mixer,
                                read_option({"mixer", *mixer}, Dimension::volume, capacity_bounds)};
    }
    if (truck) {
        return core::VesselSize{core::Vessel::truck,
                                read_option({"truck", *truck}, Dimension::volume, capacity_bounds)};
    }
    return std::nullopt;
}

std::vector<AskedSack> sacks(const Arguments& arguments) {
    const auto written = arguments.value("sacks");
    if (!written) {
        return {};
    }
    if (arguments.has("truck")) {
        throw wrong_command_line("--sacks goes with mixing on site, not with --truck",
                                 "a plant weighs its cement");
    }
    if (written->find('=') == std::string::npos) {
        return {{std::nullopt, read_option({"sacks", *written}, Dimension::mass, sack_bounds)}};
    }
    std::vector<AskedSack> asked;
    for (const NamedText& pair : read_pairs(
             {"sacks", *written}, {.form = "NAME=MASS", .example = "cement=94lb,slag=50lb"})) {
        asked.push_back(
            {pair.name, read_option({"sacks", pair.written}, Dimension::mass, sack_bounds)});
    }
    return asked;
}

std::optional<units::Quantity> hold_back(const Arguments& arguments) {
    const auto written = arguments.value("hold-back");
    if (!written) {
        return std::nullopt;
    }
    const auto held = read_quantity_option({"hold-back", *written},
                                           {{Dimension::percentage, {.least = 0, .most = 100}},
                                            {Dimension::mass, {.least = 0, .most = 1e6}},
                                            {Dimension::volume, {.least = 0, .most = 1000}}});
    constexpr double all_percent = 100;
    if (held.unit->dimension == Dimension::percentage && held.inside() >= all_percent) {
        throw wrong_command_line(
            fmt::format("--hold-back: {} is all of the water: nothing would mix", *written),
            "hold back less; a tenth is usual");
    }
    return held;
}

/// A percentage that is more likely a fraction; common practice, no source.
void ask_back_fraction(const Arguments& arguments, const char* option,
                       std::vector<core::Phrase>& improbable) {
    const auto written = arguments.value(option);
    const auto reading = written ? units::read_quantity(*written)
                                 : units::Reading<units::Quantity>{units::Misreading{}};
    const auto* percent = std::get_if<units::Quantity>(&reading);
    constexpr double smallest_usual = 1;
    if (percent && percent->unit->dimension == Dimension::percentage && percent->inside() > 0 &&
        percent->inside() < smallest_usual) {
        improbable.push_back({fmt::format("--{}: {} is unusually small; {:.6g} %, perhaps? A "
                                          "percentage is read, not a fraction.",
                                          option, *written, 100 * percent->inside()),
                              {}});
    }
}

/// Sacks that no hand carries and no crane needs: pounds and kilograms exchanged.
void ask_back_sacks(const Arguments& arguments, const std::vector<AskedSack>& sacks,
                    std::vector<core::Phrase>& improbable) {
    constexpr double lightest_kg = 5;
    constexpr double heaviest_kg = 60;
    constexpr double big_bag_kg = 400;
    for (const AskedSack& sack : sacks) {
        if (sack.kg < lightest_kg || (sack.kg > heaviest_kg && sack.kg < big_bag_kg)) {
            improbable.push_back(
                {fmt::format("--sacks: {} is unusual for a sack ({:.3g} lb, {:.3g} kg); check what "
                             "is printed on it. It is used as written.",
                             *arguments.value("sacks"), units::unit("lb").from_inside(sack.kg),
                             sack.kg),
                 {}});
        }
    }
}

/// More than a day of a large plant places: another unit, or digits too many; common practice, no
/// source.
void ask_back_volume(double net_volume_m3, std::vector<core::Phrase>& improbable) {
    constexpr double largest_usual_m3 = 300;
    if (net_volume_m3 > largest_usual_m3) {
        improbable.push_back(
            {"An order of {volume} is unusual, rarely above {usual}; check the figure and its "
             "unit. It is used as written.",
             {{"volume", core::Quantity{net_volume_m3, core::Measure::volume}},
              {"usual", core::Quantity{largest_usual_m3, core::Measure::volume}}}});
    }
}

} // namespace

std::optional<double> volume_m3(const Arguments& arguments) {
    const auto written = arguments.value("volume");
    return written
               ? std::optional{read_option({"volume", *written}, Dimension::volume, volume_bounds)}
               : std::nullopt;
}

std::map<std::string, double> moistures(const Arguments& arguments) {
    std::map<std::string, double> result;
    const auto written = arguments.value("moisture");
    if (!written) {
        return result;
    }
    for (const NamedText& pair : read_pairs(
             {"moisture", *written}, {.form = "NAME=PERCENT", .example = "sand=5.2%,stone=1.4%"})) {
        constexpr Bounds bounds{.least = 0, .most = 60};
        result[pair.name] = read_option({"moisture", pair.written}, Dimension::percentage, bounds);
    }
    return result;
}

std::optional<double> resolution_kg(const Arguments& arguments) {
    const auto written = arguments.value("resolution");
    constexpr Bounds bounds{.least = 0.001, .most = 1000};
    return written ? std::optional{read_option({"resolution", *written}, Dimension::mass, bounds)}
                   : std::nullopt;
}

BatchOptions read_batch_options(const Arguments& arguments) {
    BatchOptions options{.net_volume_m3 = net_volume_m3(arguments),
                         .allowance_percent = allowance_percent(arguments),
                         .volume_m3 = 0,
                         .moisture_percent = moistures(arguments),
                         .resolution_kg = resolution_kg(arguments),
                         .vessel = vessel(arguments),
                         .sacks = sacks(arguments),
                         .hold_back = hold_back(arguments)};
    ask_back_volume(options.net_volume_m3, options.improbable);
    ask_back_fraction(arguments, "allowance", options.improbable);
    ask_back_fraction(arguments, "hold-back", options.improbable);
    ask_back_sacks(arguments, options.sacks, options.improbable);
    options.volume_m3 = options.net_volume_m3 * (1 + options.allowance_percent / 100);
    return options;
}

} // namespace boardmark::commands
