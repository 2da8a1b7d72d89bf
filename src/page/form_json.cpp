#include "form_json.hpp"

#include <boardmark/input/fields/key_table.hpp>

#include "../commands/command.hpp"
#include "../commands/file_kind_argument.hpp"
#include "../commands/listed_words.hpp"
#include "../input/starter/in_si.hpp"

#include <nlohmann/json.hpp>

namespace boardmark::page {
namespace {

using Json = nlohmann::ordered_json;

Json key_json(const input::DescribedKey& key, const input::ListedWords& listed) {
    Json words = Json::array();
    for (const std::string_view word : key.words) {
        words.push_back({word});
    }
    const auto found = listed.find(std::string{key.path});
    if (found != listed.end()) {
        for (const input::ListedWord& word : found->second) {
            words.push_back({word.word, word.meaning});
        }
    }
    return {{"path", key.path},
            {"shape", key.shape},
            {"meaning", key.meaning},
            {"default", key.default_text},
            {"example", key.example},
            {"example_si", input::in_si(key.example)},
            {"holds", key.holds},
            {"required", key.required},
            {"only_words", key.only_words},
            {"words", words},
            {"kinds", key.kinds}};
}

} // namespace

std::string_view word_of(input::FileKind kind) {
    return commands::word_of(kind);
}

std::string form_json(std::string_view kind) {
    const input::ListedWords listed = commands::listed_words();
    Json keys = Json::array();
    for (const input::DescribedFile& file : input::key_tables()) {
        if (word_of(file.kind) != kind) {
            continue;
        }
        for (const input::DescribedKey& key : file.keys) {
            keys.push_back(key_json(key, listed));
        }
    }
    return keys.dump();
}

std::string options_json(std::string_view command) {
    Json options = Json::array();
    if (const commands::Command* found = commands::find_command(command)) {
        for (const commands::Option& option : commands::with_common_options(found->options)) {
            options.push_back({{"name", option.name},
                               {"value", option.value},
                               {"meaning", option.meaning},
                               {"words", option.words}});
        }
    }
    return options.dump();
}

} // namespace boardmark::page
