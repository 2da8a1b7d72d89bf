#pragma once

#include <string_view>
#include <vector>

namespace boardmark::input {

/// A key of the mix file, described for a reader.
struct DescribedKey {
    std::string_view path; ///< "materials.*.absorption"; `*` is a name of the user's
    std::string_view meaning;
    std::string_view default_text; ///< what holds where the key is left out; may be empty
    std::string_view example;      ///< as it is written
};

/// Every key of the mix file, in the order of the format.
std::vector<DescribedKey> key_table();

} // namespace boardmark::input
