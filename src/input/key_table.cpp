#include <boardmark/input/key_table.hpp>

#include "fields.hpp"

namespace boardmark::input {

std::vector<DescribedKey> key_table() {
    std::vector<DescribedKey> keys;
    for (const Field& field : mix_fields()) {
        keys.push_back({field.path, field.meaning, field.default_text, field.example});
    }
    return keys;
}

} // namespace boardmark::input
