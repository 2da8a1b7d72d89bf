#pragma once

#include <string_view>
#include <vector>

namespace boardmark::input {

/// A key of a file, described for a reader.
struct DescribedKey {
    std::string_view path; ///< "materials.*.absorption"; `*` is a name of the user's
    std::string_view meaning;
    std::string_view default_text; ///< what holds where the key is left out; may be empty
    std::string_view example;      ///< as it is written
};

/// The keys of one kind of file, in the order of the format.
struct DescribedFile {
    std::string_view name; ///< "mix file"
    std::vector<DescribedKey> keys;
};

/// Every kind of file that is read, the mix file first.
std::vector<DescribedFile> key_tables();

} // namespace boardmark::input
