#include <boardmark/input/fields/key_table.hpp>

#include "../values/value_words.hpp"
#include "field_path.hpp"
#include "fields.hpp"

namespace boardmark::input {
namespace {

std::string_view word_of(Shape shape) {
    switch (shape) {
    case Shape::list:
    case Shape::list_or_one:
        return "list";
    case Shape::table:
    case Shape::value_or_table:
    case Shape::table_or_point:
        return "table";
    case Shape::section:
        return "section";
    case Shape::value:
        break;
    }
    return "value";
}

std::vector<std::string_view> words_of(const Field& field) {
    if (field.value.form == Form::flag) {
        return {"yes", "no"};
    }
    std::vector<std::string_view> words(field.value.words.begin(), field.value.words.end());
    if (field.value.form == Form::kind) {
        for (const core::KindName& kind : core::all_kinds()) {
            words.push_back(kind.name);
        }
    }
    return words;
}

bool holds_only_words(const Field& field) {
    const Form form = field.value.form;
    return form == Form::flag || form == Form::word || form == Form::kind;
}

/// The kinds of material that may have a key; none named where all may.
std::vector<std::string_view> kinds_of(const Field& field) {
    std::vector<std::string_view> kinds;
    for (const core::KindName& kind : core::all_kinds()) {
        if ((field.roles & role_bit(kind.role)) != 0) {
            kinds.push_back(kind.name);
        }
    }
    return kinds.size() == core::all_kinds().size() ? std::vector<std::string_view>{} : kinds;
}

DescribedFile described(std::string_view name, FileKind kind, std::span<const Field> fields) {
    DescribedFile file{name, kind, {}};
    for (const Field& field : fields) {
        file.keys.push_back({.path = field.path,
                             .meaning = field.meaning,
                             .default_text = field.default_text,
                             .example = field.example,
                             .holds = value_words(field),
                             .required = field.required,
                             .shape = word_of(field.shape),
                             .words = words_of(field),
                             .only_words = holds_only_words(field),
                             .kinds = kinds_of(field)});
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
