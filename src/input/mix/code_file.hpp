#pragma once

#include <boardmark/core/code/printed_code.hpp>

#include "../gate/files.hpp"
#include "mix_context.hpp"

#include <memory>
#include <optional>

namespace boardmark::input {

/// The code that `code: from annex.yaml` names: its tables, in the system that the file reports in.
/// Nothing where no file is named, or where it holds a fault, which is told at its place.
std::shared_ptr<const core::CodeTables> fetch_code(Node& root, Files& files,
                                                   const ReadOptions& options,
                                                   Diagnostics& diagnostics);

} // namespace boardmark::input
