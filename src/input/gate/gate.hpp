#pragma once

#include <boardmark/input/gate/diagnostic.hpp>

#include "node.hpp"

#include <optional>

namespace boardmark::input {

/// The most bytes that a file may have.
constexpr std::size_t largest_file = std::size_t{1024} * 1024;

/// The strict gate before the fields are read. Refuses what the YAML library alone lets through:
/// files above the cap, text that is not UTF-8, control characters, a second document, anchors,
/// aliases, tags, merge keys, tabs for indentation, values over several lines, nesting above 16.
///
/// The first fault of this kind is reported alone: behind it nothing can be trusted.
std::optional<Node> pass_gate(const SourceText& source, Diagnostics& diagnostics);

/// The same by the YAML library alone, also where the text is plain enough for the short way: both
/// must agree.
std::optional<Node> pass_gate_by_library(const SourceText& source, Diagnostics& diagnostics);

} // namespace boardmark::input
