#include <boardmark/input/fields/schema.hpp>
#include <boardmark/reference/tables.hpp>

#include "command.hpp"
#include "delivery.hpp"
#include "file_kind_argument.hpp"

#include <vector>

namespace boardmark::commands {
namespace {

constexpr std::string_view examples[] = {
    "boardmark schema",
    "boardmark schema trial",
};

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
    write_only_form(input::schema_of(file_kind_argument(arguments), listed_words()), arguments);
    return ExitCode::done;
}

} // namespace

const Command schema_command{
    .name = "schema",
    .summary = "the format of a file as JSON Schema, from which an editor completes and checks it",
    .usage = "boardmark schema [OPTIONS] [KIND]",
    .reads = kinds_of_file,
    .words = words_for_kinds,
    .options = {},
    .examples = examples,
    .run = run,
    .takes_standard_input = false,
    .least_files = 0,
    .notes = "An editor that speaks to a YAML language server takes the schema by a first line in\n"
             "the file: # yaml-language-server: $schema=mix.schema.json"};

} // namespace boardmark::commands
