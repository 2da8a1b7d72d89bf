#pragma once

#include <boardmark/input/fields/file_kind.hpp>

#include <map>
#include <string>
#include <vector>

namespace boardmark::input {

/// A word that a table outside this room lists.
struct ListedWord {
    std::string word;
    std::string meaning = {}; ///< in one line; empty where the word says it
};

/// Those words by the path of their key: "requirements.exposure". All words of a key have a meaning
/// or none has.
using ListedWords = std::map<std::string, std::vector<ListedWord>>;

/// The format of a kind of file as JSON Schema draft-07, made of the same table of keys that the
/// reader goes by: an editor completes, describes and checks a file with it. A file that is read
/// without an error satisfies it; what only a calculation can find, it does not know.
std::string schema_of(FileKind kind, const ListedWords& listed);

} // namespace boardmark::input
