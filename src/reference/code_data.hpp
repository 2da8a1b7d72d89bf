#pragma once

#include "embedded_table.hpp"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace boardmark::reference {

/// The tables of one code among others: those whose names begin with its prefix.
struct CodeData {
    std::span<const EmbeddedTable> tables;
    std::string prefix; ///< "aci318-19"

    /// The table PREFIX-SUBJECT, or nullptr.
    const EmbeddedTable* find(std::string_view subject) const;
};

/// A text on the whole code in its exposure table; empty where there is none.
std::string_view code_note(const CodeData& data, std::string_view name);

/// Every code of some tables: those that a table `codes` lists, in its order, else one for each
/// table PREFIX-exposure.
std::vector<CodeData> codes_of(std::span<const EmbeddedTable> tables);

/// The codes of the program's own tables, found once.
const std::vector<CodeData>& embedded_codes();

} // namespace boardmark::reference
