#pragma once

#include <boardmark/input/fields/file_kind.hpp>

#include <string>
#include <string_view>

namespace boardmark::page {

/// "mix", "trial", "results", "wall".
std::string_view word_of(input::FileKind kind);

/// The keys of a kind of file as the table of fields has them, for a form.
std::string form_json(std::string_view kind);

/// The options of a command as its help has them, for a form.
std::string options_json(std::string_view command);

} // namespace boardmark::page
