#pragma once

#include <boardmark/core/strength/recorded.hpp>
#include <boardmark/units/unit.hpp>

#include "../gate/node.hpp"

#include <optional>
#include <string>
#include <vector>

namespace boardmark::input {

/// A cell of a header: `slump (mm)`.
struct Heading {
    std::string name;
    std::string unit; ///< empty where none is written
};

Heading heading_of(const Node& cell);

/// A column of a file: what it holds, and the unit it is written in.
template <class Row>
struct FileColumn {
    const core::RecordColumn<Row>* column;
    const units::Unit* unit; ///< nullptr for texts and plain numbers
};

/// The columns that a header names, in its order. Nothing where any is wrong or a required one is
/// missing; then diagnostics tell why.
template <class Row>
std::optional<std::vector<FileColumn<Row>>> columns_of(const std::vector<Node>& header,
                                                       Diagnostics& diagnostics);

} // namespace boardmark::input
