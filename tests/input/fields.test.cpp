// The table of keys is the format: it must agree with itself and with what its reader accepts.

#include "input/fields/fields.hpp"

#include <boardmark/input/fields/key_table.hpp>

#include "input/gate/document.hpp"
#include "tree.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>
#include <string>

using namespace boardmark::input;
using boardmark::test::Tree;
using boardmark::test::tree_of;

namespace {

std::string parent_of(std::string_view path) {
    const std::size_t point = path.rfind('.');
    return std::string{point == std::string_view::npos ? "" : path.substr(0, point)};
}

std::string last_name(std::string_view path) {
    return std::string{path.substr(path.rfind('.') + 1)};
}

/// The fields of each kind of file in turn.
std::span<const Field> any_file() {
    return GENERATE(mix_fields(), trial_fields(), strength_fields(), wall_fields());
}

const Field* field_of(std::span<const Field> fields, std::string_view path) {
    const auto found = std::ranges::find(fields, path, &Field::path);
    return found == fields.end() ? nullptr : &*found;
}

/// An example set under its parents: "{a: {b: {EXAMPLE}}}" for the path "a.b.c".
std::string nested(std::string_view path, const std::string& example) {
    std::string text = example;
    for (std::string parent = parent_of(path); !parent.empty(); parent = parent_of(parent)) {
        std::string name = last_name(parent);
        text = (name == "*" ? "sand" : name) + ": {" + text + "}";
    }
    return text + "\n";
}

} // namespace

TEST_CASE("every path is in the table once and below a section") {
    const auto fields = any_file();
    std::set<std::string_view> paths;
    for (const Field& field : fields) {
        INFO(field.path);
        CHECK(paths.insert(field.path).second);
        const std::string parent = parent_of(field.path);
        if (!parent.empty()) {
            REQUIRE(field_of(fields, parent) != nullptr);
            CHECK(field_of(fields, parent)->shape == Shape::section);
        }
    }
}

TEST_CASE("every example is read by its own key without a fault") {
    const auto fields = any_file();
    for (const Field& field : fields) {
        const bool shortened = field.example.find("...") != std::string_view::npos;
        const bool other_file =
            field.from_file && field.example.find(": from ") != field.example.npos;
        if (shortened || other_file) {
            continue; // shows the form only, or is replaced before the keys are read
        }
        const std::string text = nested(field.path, std::string{field.example});
        INFO(text);
        const Tree tree = tree_of(text);
        Diagnostics faults;
        const Document document{tree.root, fields, faults};
        CHECK(render(faults) == "");
    }
}

TEST_CASE("every example begins with its key") {
    const auto fields = any_file();
    for (const Field& field : fields) {
        INFO(field.path);
        const std::string name = last_name(field.path);
        CHECK((name == "*" || field.example.starts_with(name + ": ")));
        CHECK(field.example.find(": ") != std::string_view::npos);
    }
}

TEST_CASE("every default can be written as a value of its key") {
    const auto fields = any_file();
    int defaults = 0;
    for (const Field& field : fields) {
        if (field.default_text.empty()) {
            continue;
        }
        ++defaults;
        const std::string line = last_name(field.path) + ": " + std::string{field.default_text};
        INFO(field.path);
        const Tree tree = tree_of(line + "\n");
        Diagnostics faults;
        const Node& value = tree.root.entries.at(0).value;
        const Value of_default = field.whole.value_or(field.value);
        CHECK(read_value(value, of_default, {"default"}, "", faults).has_value());
        CHECK(faults.empty());
    }
    CHECK(defaults > 0);
}

TEST_CASE("every key says what it means and its range is one") {
    const auto fields = any_file();
    for (const Field& field : fields) {
        INFO(field.path);
        CHECK_FALSE(field.meaning.empty());
        for (const Value& value : {field.value, field.key}) {
            CHECK(value.range.low < value.range.high);
            CHECK(value.suspicious_below <= value.range.high);
        }
    }
}

TEST_CASE("a quantity names its dimension and a word its words") {
    const auto fields = any_file();
    for (const Field& field : fields) {
        INFO(field.path);
        const Form form = field.value.form;
        const bool of_quantity = form == Form::quantity || form == Form::window;
        CHECK(field.value.dimensions[0].has_value() == of_quantity);
        CHECK((form != Form::word || !field.value.words.empty()));
        const bool has_pairs = field.shape == Shape::table ||
                               field.shape == Shape::value_or_table ||
                               field.shape == Shape::table_or_point;
        CHECK((has_pairs || field.key.form == Form::text));
        CHECK((form == Form::price_range) == !field.value.per.empty());
    }
}

TEST_CASE("only keys of materials belong to some roles and not to others") {
    for (const Field& field : mix_fields()) {
        INFO(field.path);
        CHECK((field.roles == any_role || field.path.starts_with("materials.*.")));
    }
}

TEST_CASE("a yard has its heading and every key of the materials") {
    std::set<std::string_view> yard;
    for (const Field& field : yard_fields()) {
        yard.insert(field.path);
    }
    CHECK(yard.contains("boardmark"));
    CHECK(yard.contains("title"));
    CHECK_FALSE(yard.contains("reporting"));
    CHECK_FALSE(yard.contains("requirements"));
    for (const Field& field : material_fields()) {
        INFO(field.path);
        CHECK(yard.contains(field.path));
    }
    CHECK(yard.size() == material_fields().size() + 2);
}

TEST_CASE("the names that materials may not have are those of the proportions") {
    std::set<std::string_view> own;
    for (const Field& field : mix_fields()) {
        if (parent_of(field.path) == "proportions" && !field.path.ends_with("*")) {
            own.insert(field.path.substr(field.path.find('.') + 1));
        }
    }
    const auto reserved = reserved_names();
    CHECK(own == std::set<std::string_view>(reserved.begin(), reserved.end()));
}
