#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace boardmark::input {

/// What a file holds, as its keys say.
enum class FileKind { mix, trial, results, wall };

/// The kind of a file's text. Nothing where it cannot be read or has no key that tells.
std::optional<FileKind> kind_of(std::string text);

/// The keys at the top of a file each of which tells that it is of a kind.
std::vector<std::string_view> telling_keys(FileKind kind);

} // namespace boardmark::input
