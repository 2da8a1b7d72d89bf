#include <boardmark/input/fields/schema.hpp>
#include <boardmark/reference/tables.hpp>

#include "command.hpp"
#include "delivery.hpp"
#include "file_kind_argument.hpp"

#include <algorithm>
#include <string>
#include <vector>

namespace boardmark::commands {
namespace of_schema {
namespace {

constexpr std::string_view examples[] = {
    "boardmark schema",
    "boardmark schema trial",
};

/// Classes of every code. A word that several codes have is told once, by each of its meanings.
std::vector<input::ListedWord> classes_of_codes() {
    std::vector<input::ListedWord> classes;
    for (const std::string& name : reference::codes()) {
        const core::CodeTables code = reference::code(name, core::UnitSystem::si);
        for (const core::ExposureClass& exposure : code.classes) {
            const std::string told = name + ": " + exposure.meaning;
            const auto same = std::ranges::find(classes, exposure.name, &input::ListedWord::word);
            if (same == classes.end()) {
                classes.push_back({exposure.name, told});
            } else if (same->meaning.find(": " + exposure.meaning) == std::string::npos) {
                same->meaning += "; " + told;
            }
        }
    }
    return classes;
}

input::ListedWords listed_words() {
    const auto classes = classes_of_codes();
    std::vector<input::ListedWord> codes;
    for (const std::string& name : reference::codes()) {
        codes.push_back({name});
    }
    std::vector<input::ListedWord> strengths;
    for (const core::StrengthName& known : reference::vocabulary().strength_names) {
        strengths.push_back({known.name});
    }
    return {{"requirements.code", codes},
            {"requirements.exposure", classes},
            {"requirements.exposure_by_code.*", classes},
            {"requirements.strength", strengths}};
}

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
