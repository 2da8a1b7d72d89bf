#pragma once

#include "table_figure.hpp"

namespace boardmark::input {

/// What is wrong with the words of a note, or nothing.
std::optional<FigureFault> fault_of_note(std::string_view written, const NoteForm& form);

} // namespace boardmark::input
