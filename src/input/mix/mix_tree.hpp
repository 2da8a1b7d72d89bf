#pragma once

#include <boardmark/input/mix/read_mix.hpp>

#include "../gate/files.hpp"
#include "../gate/node.hpp"
#include "mix_context.hpp"

#include <functional>
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

/// What was read for keys, and how the diagnostics of that are put in order.
struct KeySource {
    Files& files; ///< gets what the keys name in turn
    std::function<void(Diagnostics&)> sort;
};

/// Reads the keys.
///
/// @param told  diagnostics so far
MixReading mix_of(MixTree tree, const KeySource& source, const ReadOptions& options,
                  Diagnostics told);

/// Makes the mix of keys that were read one by one.
///
/// @param results  what `take_results` took
/// @param reading  has the diagnostics of the context
void make_mix(const MixContext& context, const std::optional<Node>& results,
              const KeySource& source, MixReading& reading);

} // namespace boardmark::input
