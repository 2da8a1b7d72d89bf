#pragma once

#include <boardmark/input/fields/file_kind.hpp>

#include "arguments.hpp"

#include <string_view>

namespace boardmark::commands {

/// What KIND may be in a command's help.
constexpr std::string_view kinds_of_file = "KIND is mix (default), trial, results or wall";

/// The words for KIND.
constexpr std::string_view words_for_kinds[] = {"mix", "trial", "results", "wall"};

/// The word that stands for a kind of file: "mix".
std::string_view word_of(input::FileKind kind);

/// The kind of file that the command line names, a mix file where it names none. Throws Failure
/// where it is no kind.
input::FileKind file_kind_argument(const Arguments& arguments);

} // namespace boardmark::commands
