#pragma once

#include <boardmark/core/code/printed_code.hpp>

#include "../gate/node.hpp"
#include "printed_words.hpp"
#include "table_form.hpp"

#include <string>

namespace boardmark::input {

/// What a table is read for.
struct TableOfCode {
    std::string code_name; ///< the work that a source without `work` means
    bool by_concrete;      ///< whether the code counts chloride by the concrete
};

/// One table of a code's file by its form: its source, its columns with their units, its rows. What
/// is wrong is told and reading goes on.
core::PrintedTable read_printed_table(const Entry& entry, const TableForm& form,
                                      const TableOfCode& of, PrintedWords& words);

} // namespace boardmark::input
