#include <boardmark/input/fields/schema.hpp>

#include "command.hpp"
#include "delivery.hpp"
#include "file_kind_argument.hpp"
#include "listed_words.hpp"

namespace boardmark::commands {
namespace of_schema {
namespace {

constexpr std::string_view examples[] = {
    "boardmark schema",
    "boardmark schema trial",
};

ExitCode run(const Arguments& arguments) {
    write_only_form(input::schema_of(file_kind_argument(arguments), listed_words()), arguments);
    return ExitCode::done;
}

} // namespace
} // namespace of_schema

const Command schema_command{
    .name = "schema",
    .summary = "the format of a file as JSON Schema, from which an editor completes and checks it",
    .usage = "boardmark schema [OPTIONS] [KIND]",
    .reads = kinds_of_file,
    .words = words_for_kinds,
    .options = {},
    .examples = of_schema::examples,
    .run = of_schema::run,
    .takes_standard_input = false,
    .least_files = 0,
    .notes = "An editor that speaks to a YAML language server takes the schema by a first line in\n"
             "the file: # yaml-language-server: $schema=mix.schema.json"};

} // namespace boardmark::commands
