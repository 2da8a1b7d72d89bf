#pragma once

#include <optional>
#include <string>

namespace boardmark::input {

/// What a file holds, as its keys say.
enum class FileKind { mix, trial, results, wall };

/// The kind of a file's text. Nothing where it cannot be read or has no key that tells.
std::optional<FileKind> kind_of(std::string text);

} // namespace boardmark::input
