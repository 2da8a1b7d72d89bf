#pragma once

#include "../gate/files.hpp"
#include "../gate/node.hpp"

#include <optional>

namespace boardmark::input {

/// Specimens and batches of a CSV file, as the tree that the same keys in YAML would give.
struct SpecimenTable {
    Node specimens;
    std::optional<Node> batches; ///< where the table has columns that describe them
};

/// Reads a table of specimens (RFC 4180): a header of `specimen`, `batch`, `age (d)`,
/// `strength (psi)` with the unit in the header, and of the batch `cast`, `purpose`, `w_cm`,
/// `air (%)` where it is not described elsewhere. Nothing where the table cannot be read.
std::optional<SpecimenTable> read_specimen_table(const SourceText& source,
                                                 Diagnostics& diagnostics);

} // namespace boardmark::input
