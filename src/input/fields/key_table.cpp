#include <boardmark/input/fields/key_table.hpp>

#include "fields.hpp"

namespace boardmark::input {
namespace {

DescribedFile described(std::string_view name, std::span<const Field> fields) {
    DescribedFile file{name, {}};
    for (const Field& field : fields) {
        file.keys.push_back({field.path, field.meaning, field.default_text, field.example});
    }
    return file;
}

} // namespace

std::vector<DescribedFile> key_tables() {
    return {described("mix file", mix_fields()), described("trial file", trial_fields()),
            described("results file", strength_fields()), described("wall file", wall_fields())};
}

} // namespace boardmark::input
