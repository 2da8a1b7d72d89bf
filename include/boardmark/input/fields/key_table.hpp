#pragma once

#include <boardmark/input/fields/file_kind.hpp>

#include <string>
#include <string_view>
#include <vector>

namespace boardmark::input {

/// A key of a file, described for a reader.
struct DescribedKey {
    std::string_view path; ///< "materials.*.absorption"; `*` is a name of the user's
    std::string_view meaning;
    std::string_view default_text; ///< what holds where the key is left out; may be empty
    std::string_view example;      ///< as it is written
    std::string holds; ///< what may be written, its range: "a length (in, ft), 0 in to 12 in"
    bool required;     ///< wherever the section that it stands in does
    std::string_view shape; ///< value, list, table, section: what stands under it
    std::vector<std::string_view> words = {}; ///< that may stand there; of a flag yes and no
    bool only_words = false;                  ///< whether nothing else may
    std::vector<std::string_view> kinds = {}; ///< of the materials that may have it; empty: any
};

/// The keys of one kind of file, in the order of the format.
struct DescribedFile {
    std::string_view name; ///< "mix file"
    FileKind kind;
    std::vector<DescribedKey> keys;
};

/// Every kind of file that is read, the mix file first.
std::vector<DescribedFile> key_tables();

/// A key and the file that it stands in.
struct FoundKey {
    const DescribedFile* file;
    const DescribedKey* key;
};

/// The keys that a word may mean: a whole path, names of the user's in it or `*`, or its end.
/// "materials.sand.sieves", "sieves". They point into the tables.
std::vector<FoundKey> keys_named(std::string_view word, const std::vector<DescribedFile>& tables);

} // namespace boardmark::input
