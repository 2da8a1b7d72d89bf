#pragma once

#include <boardmark/core/batch/batch.hpp>
#include <boardmark/core/batch/charges.hpp>
#include <boardmark/units/quantity.hpp>

#include "arguments.hpp"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace boardmark::commands {

/// Sacks as the command line has them; no name stands for the main cementitious material.
struct AskedSack {
    std::optional<std::string> material;
    double kg;
};

/// What the options of `batch` ask for.
struct BatchOptions {
    double net_volume_m3;
    double allowance_percent;
    double volume_m3; ///< with the allowance
    std::map<std::string, double> moisture_percent;
    std::optional<double> resolution_kg;
    std::optional<core::VesselSize> vessel;
    std::vector<AskedSack> sacks;
    std::optional<units::Quantity> hold_back;  ///< a percentage, a mass or a volume of water
    std::vector<core::Phrase> improbable = {}; ///< figures that are possible, hardly true
};

/// Reads the options of `batch`. Throws Failure where one is wrong.
BatchOptions read_batch_options(const Arguments& arguments);

// Options that other commands have too.

/// The concrete that `--volume` asks for, where it does.
std::optional<double> volume_m3(const Arguments& arguments);
std::map<std::string, double> moistures(const Arguments& arguments);
std::optional<double> resolution_kg(const Arguments& arguments);

} // namespace boardmark::commands
