#pragma once

#include <boardmark/core/mix/complete_mix.hpp>
#include <boardmark/core/risk/scatter.hpp>
#include <boardmark/input/mix/read_mix.hpp>

#include "arguments.hpp"
#include "delivery.hpp"
#include "opened_file.hpp"

#include <map>
#include <string>

namespace boardmark::commands {

/// A mix that was read, and where from.
struct ReadMix {
    core::AnyCompleteMix mix;
    Origin origin;
    core::Scatter scatter = {};
    std::vector<core::VariableBound> bounds = {};
};

/// What a mix file is read for.
struct MixDemand {
    input::Purpose purpose;
    std::map<std::string, double> moisture_percent = {};
    bool to_be_selected = false; ///< submitted amounts are refused
};

/// Reads the file of the arguments. Warnings go to standard error. Throws Failure where the file is
/// wrong.
ReadMix read_mix_file(const Arguments& arguments, const MixDemand& demand);

/// The same of a file that has been read.
ReadMix read_mix_file(const Arguments& arguments, const MixDemand& demand, OpenedFile file,
                      FilesRead files_read);

} // namespace boardmark::commands
