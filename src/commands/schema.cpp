#include <boardmark/input/fields/schema.hpp>
#include <boardmark/reference/tables.hpp>
#include <boardmark/text/closest.hpp>

#include "command.hpp"
#include "delivery.hpp"

#include <fmt/format.h>

#include <vector>

namespace boardmark::commands {
namespace {

constexpr std::string_view examples[] = {
    "boardmark schema",
    "boardmark schema trial",
};

struct NamedKind {
    std::string_view name;
    input::FileKind kind;
};

constexpr NamedKind kinds[] = {
    {"mix", input::FileKind::mix},
    {"trial", input::FileKind::trial},
    {"results", input::FileKind::results},
    {"wall", input::FileKind::wall},
};

input::FileKind kind_named(const std::string& name) {
    std::vector<std::string_view> names;
    for (const NamedKind& known : kinds) {
        if (known.name == name) {
            return known.kind;
        }
        names.push_back(known.name);
    }
    const auto near = text::closest(name, names);
    throw wrong_command_line(fmt::format("'{}' is not a kind of file", name),
                             near ? fmt::format("did you mean '{}'?", *near)
                                  : fmt::format("one of {}", fmt::join(names, ", ")));
}

input::ListedWords listed_words() {
    std::vector<input::ListedWord> classes;
    const core::CodeTables code = reference::vocabulary().code;
    for (const core::ExposureClass& exposure : code.classes) {
        classes.push_back({exposure.name, exposure.meaning});
    }
    std::vector<input::ListedWord> codes;
    for (const std::string& name : reference::codes()) {
        codes.push_back({name});
    }
    return {{"requirements.code", codes}, {"requirements.exposure", classes}};
}

ExitCode run(const Arguments& arguments) {
    const std::string name = arguments.files().empty() ? "mix" : arguments.file();
    write_only_form(input::schema_of(kind_named(name), listed_words()), arguments);
    return ExitCode::done;
}

} // namespace

const Command schema_command{
    .name = "schema",
    .summary = "the format of a file as JSON Schema, from which an editor completes and checks it",
    .usage = "boardmark schema [OPTIONS] [KIND]",
    .reads = "KIND is mix (default), trial, results or wall",
    .options = {},
    .examples = examples,
    .run = run,
    .takes_standard_input = false,
    .least_files = 0,
    .notes = "An editor that speaks to a YAML language server takes the schema by a first line in\n"
             "the file: # yaml-language-server: $schema=mix.schema.json"};

} // namespace boardmark::commands
