#pragma once

#include <boardmark/input/mix/read_mix.hpp>

#include "../gate/files.hpp"
#include "../reading/file_context.hpp"

namespace boardmark::input {

/// A value that names a mix file.
struct MixName {
    const FileContext& context;
    const Parsed& named;
    const char* key; ///< in the words of a message
};

/// The mix file that a value names. Nothing where it cannot be read; then its faults are told.
std::optional<core::AnyCompleteMix> read_named_mix(const MixName& name, Files& files,
                                                   ReadOptions options, const char* advice);

/// The mix file that the key `mix` of another file names. Nothing where it cannot be read; then its
/// faults are told.
///
/// @param options how the mix is read; `load` gets what the other file names
/// @param advice what to name instead of a file of another kind
std::optional<core::AnyCompleteMix> read_named_mix(const FileContext& context, Files& files,
                                                   ReadOptions options, const char* advice);

} // namespace boardmark::input
