#pragma once

#include <boardmark/input/fields/file_kind.hpp>

#include <map>
#include <string>
#include <vector>

namespace boardmark::input {

/// Texts that only tables outside this room list, by the path of their key:
/// "requirements.exposure".
using ListedWords = std::map<std::string, std::vector<std::string>>;

/// The format of a kind of file as JSON Schema draft-07, made of the same table of keys that the
/// reader goes by: an editor completes, describes and checks a file with it. A file that is read
/// without an error satisfies it; what only a calculation can find, it does not know.
std::string schema_of(FileKind kind, const ListedWords& listed);

} // namespace boardmark::input
