#pragma once

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/mix/any_mix.hpp>
#include <boardmark/core/mix/proportions.hpp>

#include "failure.hpp"
#include "read_mix_file.hpp"

#include <string>
#include <variant>
#include <vector>

namespace boardmark::commands {

/// A mix that was read and proportioned, with the tables it was done with.
struct WorkedMix {
    std::string title;
    core::AnyCompleteMix mix;
    core::Tables tables;
    core::Proportions proportions;
    std::vector<core::Check> checks;
    Origin origin;
    std::optional<core::Supply> supply = {};
    core::Scatter scatter = {};
    std::vector<core::VariableBound> bounds = {};

    const core::Requirements& requirements() const { return core::requirements_of(mix); }
};

/// Reads the file of the arguments, proportions or accepts the mix and runs the checks. Warnings go
/// to standard error. Throws Failure where the file is wrong; gives it back where no mix follows.
std::variant<WorkedMix, Failure> open_mix(const Arguments& arguments, const MixDemand& demand);

/// The same of a file that has been read.
std::variant<WorkedMix, Failure> open_mix(const Arguments& arguments, const MixDemand& demand,
                                          OpenedFile file, FilesRead files_read);

} // namespace boardmark::commands
