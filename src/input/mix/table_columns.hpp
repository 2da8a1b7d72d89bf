#pragma once

#include <boardmark/input/gate/diagnostic.hpp>

#include "../gate/node.hpp"

#include <optional>
#include <string>
#include <vector>

namespace boardmark::input {

/// A column of a table of mixes: the key that it writes.
struct TableColumn {
    std::vector<std::string> names; ///< from the top of the file down
    std::string heading;            ///< as it was written
    std::string unit;               ///< of every cell; empty: cells have their own, or need none
};

/// The columns that a header names. Nothing where one of them is no key of a mix file or cannot be
/// written into this one; then diagnostics tell why.
///
/// @param base  the keys of the mix file
std::optional<std::vector<TableColumn>> table_columns(const std::vector<Node>& header,
                                                      const Node& base, Diagnostics& diagnostics);

} // namespace boardmark::input
