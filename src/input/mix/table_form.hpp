#pragma once

#include <boardmark/core/code/printed_code.hpp>
#include <boardmark/core/mix/vocabulary.hpp>

#include "../gate/node.hpp"

#include <functional>
#include <span>
#include <string>
#include <string_view>

namespace boardmark::input {

/// The form of one table of a code.
struct TableForm {
    std::string_view subject;
    std::span<const std::string_view> columns; ///< that it may have; none where they are sizes
    std::span<const std::string_view> needed_columns;
    std::span<const std::string_view> notes; ///< that may stand beside a row
    bool by_size = false;
    std::string_view example_of_columns = {};
};

/// Every table that a code may have.
std::span<const TableForm> table_forms();

/// The form of a subject, or nullptr.
const TableForm* find_table_form(std::string_view subject);

/// Tells a fault at its place.
using TellFault = std::function<void(const Node&, std::string, std::string)>;

/// Tells words that no other table explains: a class of a category that is not there, air of a class
/// that is not there, a strength class that nothing pairs, and a class without any limit.
void tell_loose_words(const core::PrintedCode& code, const core::Vocabulary& words,
                      const Node& tables, const TellFault& tell);

} // namespace boardmark::input
