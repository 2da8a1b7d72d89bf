#pragma once

#include <boardmark/input/mix/read_mix.hpp>

#include "../gate/files.hpp"
#include "../gate/node.hpp"

#include <optional>

namespace boardmark::input {

/// The keys of a mix file, its materials fetched, before they are read.
struct MixTree {
    Node root;
    bool had_materials; ///< whether the file has the key, even where they could not be fetched
};

/// Nothing where the text is no mix file; then diagnostics tell why.
std::optional<MixTree> mix_tree(const SourceText& source, Files& files, const ReadOptions& options,
                                Diagnostics& diagnostics);

/// Reads the keys.
///
/// @param files  gets what the keys name in turn
/// @param told  diagnostics so far
MixReading mix_of(MixTree tree, Files& files, const ReadOptions& options, Diagnostics told);

} // namespace boardmark::input
