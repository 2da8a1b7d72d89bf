#pragma once

#include <boardmark/core/code/printed_code.hpp>
#include <boardmark/core/mix/vocabulary.hpp>
#include <boardmark/input/gate/diagnostic.hpp>

#include "../gate/node.hpp"

#include <optional>

namespace boardmark::input {

/// A code that a file prints: `code`, its name, and under `tables` the tables that data/ has of a
/// code, each in the same form. Every fault is told at its place: a table that is not known or
/// missing, a table without a source, a ragged row, a figure that is none, a word that no other
/// table explains. Nothing where there is a fault.
std::optional<core::PrintedCode> read_printed_code(const Node& root, const core::Vocabulary& known,
                                                   Diagnostics& diagnostics);

} // namespace boardmark::input
