#pragma once

#include <boardmark/core/code/printed_code.hpp>
#include <boardmark/core/mix/vocabulary.hpp>

#include "tell_fault.hpp"

namespace boardmark::input {

/// Tells words that no other table explains: a class of a category that is not there, air of a
/// class that is not there, a strength class that nothing pairs, and tables of which the row of the
/// code does not say how they count.
void tell_loose_words(const core::PrintedCode& code, const core::Vocabulary& words,
                      const Node& tables, const TellFault& tell);

} // namespace boardmark::input
