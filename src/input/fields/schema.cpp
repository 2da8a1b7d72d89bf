#include <boardmark/input/fields/schema.hpp>

#include "../values/value_schema.hpp"
#include "field_example.hpp"
#include "field_path.hpp"

#include <fmt/format.h>

#include <vector>

namespace boardmark::input {
namespace {

/// Whether a key stands directly under another.
bool is_child(std::string_view path, std::string_view parent) {
    if (parent.empty()) {
        return path.find('.') == std::string_view::npos;
    }
    return path.size() > parent.size() + 1 && path.starts_with(parent) &&
           path[parent.size()] == '.' && path.find('.', parent.size() + 1) == path.npos;
}

std::string description_of(const Field& field) {
    std::string text{field.meaning};
    if (!field.default_text.empty()) {
        text += " (default " + std::string{field.default_text} + ")";
    }
    return text + "\n\n" + std::string{field.example};
}

Schema from_a_file() {
    return matching("from +.+", "write 'from' and the name of a file, for example from yard.yaml");
}

class SchemaOfFields {
public:
    SchemaOfFields(std::span<const Field> fields, const ListedWords& listed)
        : fields_(fields)
        , listed_(listed) {}

    /// The keys under one path. A `*` stands for names of the user's.
    Schema section(std::string_view parent) const {
        Schema schema{{"type", "object"}};
        Schema required = Schema::array();
        Schema named = false;
        for (const Field& field : fields_) {
            if (!is_child(field.path, parent)) {
                continue;
            }
            if (last_part(field.path) == "*") {
                named = schema_of_field(field);
                continue;
            }
            schema["properties"][std::string{last_part(field.path)}] = schema_of_field(field);
            if (field.required) {
                required.push_back(last_part(field.path));
            }
        }
        schema["additionalProperties"] = named;
        if (!required.empty()) {
            schema["required"] = required;
        }
        return schema;
    }

private:
    Schema schema_of_field(const Field& field) const {
        Schema schema = shape_of(field);
        if (field.from_file) {
            schema = {{"anyOf", {schema, from_a_file()}}};
        }
        schema["description"] = description_of(field);
        return schema;
    }

    Schema shape_of(const Field& field) const {
        switch (field.shape) {
        case Shape::section: {
            Schema schema = section(field.path);
            if (field.path == "materials.*") {
                schema["allOf"] = keys_by_kind();
            }
            return schema;
        }
        case Shape::list:
            return {{"type", "array"}, {"items", schema_of_one(field)}};
        case Shape::list_or_one:
            return {{"anyOf",
                     {{{"type", "array"}, {"items", schema_of_one(field)}}, schema_of_one(field)}}};
        case Shape::table:
            return table_of(field);
        case Shape::table_or_point:
            return {{"anyOf", {schema_of_point(field), table_of(field)}}};
        case Shape::value_or_table:
            return {{"anyOf",
                     {schema_of_value(field.whole.value_or(field.value), whole_example(field)),
                      table_of(field)}}};
        case Shape::value:
            return schema_of_one(field);
        }
        return {};
    }

    /// A text that is one of the words that a table lists is offered as such; a quantity may have
    /// such a word in its place.
    Schema schema_of_one(const Field& field) const {
        const auto listed = listed_.find(std::string{field.path});
        if (listed == listed_.end()) {
            return schema_of_value(field.value, example_of(field).value);
        }
        return field.value.form == Form::text
                   ? schema_of_words(listed->second)
                   : Schema{{"anyOf",
                             {schema_of_value(field.value, example_of(field).value),
                              schema_of_words(listed->second)}}};
    }

    static Schema schema_of_words(const std::vector<ListedWord>& words) {
        Schema schema{{"enum", Schema::array()}};
        for (const ListedWord& listed : words) {
            schema["enum"].push_back(listed.word);
            if (!listed.meaning.empty()) {
                schema["enumDescriptions"].push_back(listed.meaning);
            }
        }
        return schema;
    }

    /// The example of one value for all; a table shows none.
    static std::string_view whole_example(const Field& field) {
        const FieldExample example = example_of(field);
        return example.key.empty() ? example.value : std::string_view{};
    }

    /// `16 % at 8 fl oz/cwt`, or its value alone.
    static Schema schema_of_point(const Field& field) {
        Value key = field.key;
        key.words = {};
        const FieldExample example = example_of(field);
        return matching(
            pattern_of_key(field.value) + "(?: at " + pattern_of_key(key) + ")?",
            fmt::format("write {}, and where it is known 'at' and {}, for example {} at {}",
                        described(field.value), described(key), example.value, example.key));
    }

    static Schema table_of(const Field& field) {
        const FieldExample example = example_of(field);
        Schema rows{{"type", "object"}, {"minProperties", 1}};
        rows["patternProperties"]["^" + pattern_of_key(field.key) + "$"] =
            schema_of_value(field.value, example.value);
        rows["additionalProperties"] = false;
        std::string message =
            fmt::format("write pairs of {} and {}", described(field.key), described(field.value));
        if (!example.key.empty()) {
            message += fmt::format(", for example {{{}: {}}}", example.key, example.value);
        }
        rows["errorMessage"] = message; // of a key that does not match, too
        if (field.key.words.empty()) {
            return rows;
        }
        // `water_reduction: standard minimum`: a word in place of the whole table.
        Schema words = Schema::array();
        for (const std::string_view word : field.key.words) {
            words.push_back(word);
        }
        return {{"anyOf", {rows, {{"enum", words}}}}};
    }

    /// Which keys a material of each kind may have.
    Schema keys_by_kind() const {
        Schema rules = Schema::array();
        for (const core::KindName& kind : core::all_kinds()) {
            Schema keys = Schema::array();
            for (const Field& field : fields_) {
                if (is_child(field.path, "materials.*") &&
                    (field.roles & role_bit(core::role_of(kind.kind))) != 0) {
                    keys.push_back(last_part(field.path));
                }
            }
            rules.push_back({{"if", {{"properties", {{"kind", {{"const", kind.name}}}}}}},
                             {"then", {{"propertyNames", {{"enum", keys}}}}}});
        }
        return rules;
    }

    std::span<const Field> fields_;
    const ListedWords& listed_;
};

struct DescribedKind {
    FileKind kind;
    const char* title;
    std::span<const Field> (*fields)();
};

constexpr DescribedKind kinds[] = {
    {FileKind::mix, "boardmark mix file", mix_fields},
    {FileKind::trial, "boardmark trial file", trial_fields},
    {FileKind::results, "boardmark results file", strength_fields},
    {FileKind::wall, "boardmark wall file", wall_fields},
};

} // namespace

std::string schema_of(FileKind kind, const ListedWords& listed) {
    for (const DescribedKind& described : kinds) {
        if (described.kind == kind) {
            Schema schema{{"$schema", "http://json-schema.org/draft-07/schema#"},
                          {"title", described.title}};
            schema.update(SchemaOfFields{described.fields(), listed}.section(""));
            schema["properties"]["boardmark"]["enum"] = {1};
            return schema.dump(2) + "\n";
        }
    }
    return "";
}

} // namespace boardmark::input
