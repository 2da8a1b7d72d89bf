#include <boardmark/input/fields/key_table.hpp>

#include "../values/value_words.hpp"
#include "field_path.hpp"
#include "fields.hpp"

namespace boardmark::input {
namespace {

DescribedFile described(std::string_view name, FileKind kind, std::span<const Field> fields) {
    DescribedFile file{name, kind, {}};
    for (const Field& field : fields) {
        file.keys.push_back({field.path, field.meaning, field.default_text, field.example,
                             value_words(field), field.required});
    }
    return file;
}

bool is_named(std::string_view path, std::string_view word) {
    const bool is_end = path.size() > word.size() && path.ends_with(word) &&
                        path[path.size() - word.size() - 1] == '.';
    return is_end || stands_for(path, word);
}

} // namespace

std::vector<DescribedFile> key_tables() {
    return {described("mix file", FileKind::mix, mix_fields()),
            described("trial file", FileKind::trial, trial_fields()),
            described("results file", FileKind::results, strength_fields()),
            described("wall file", FileKind::wall, wall_fields())};
}

std::vector<FoundKey> keys_named(std::string_view word, const std::vector<DescribedFile>& tables) {
    std::vector<FoundKey> found;
    for (const DescribedFile& file : tables) {
        for (const DescribedKey& key : file.keys) {
            if (is_named(key.path, word)) {
                found.push_back({&file, &key});
            }
        }
    }
    return found;
}

} // namespace boardmark::input
