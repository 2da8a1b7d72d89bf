#pragma once

#include <boardmark/input/mix/read_mix.hpp>

#include "../gate/files.hpp"
#include "../reading/file_context.hpp"

namespace boardmark::input {

/// The mix file that the key `mix` of another file names. Nothing where it cannot be read; then its
/// faults are told.
///
/// @param options how the mix is read; `load` gets what the other file names
/// @param advice what to name instead of a file of another kind
std::optional<core::AnyCompleteMix> read_named_mix(const FileContext& context, Files& files,
                                                   ReadOptions options, const char* advice);

} // namespace boardmark::input
