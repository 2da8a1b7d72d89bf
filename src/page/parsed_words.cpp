#include "../commands/parsed_words.hpp"

#include "../commands/failure.hpp"

#include <algorithm>

// The page writes its words itself, always `--name=value`: that needs no library.

namespace boardmark::commands {

ParsedWords parse(const std::vector<const Option*>& options, const std::vector<std::string>& words,
                  const std::string& help) {
    ParsedWords parsed;
    for (const std::string& word : words) {
        if (!word.starts_with("--")) {
            parsed.files.push_back(word);
            continue;
        }
        const std::size_t end = std::min(word.find('='), word.size());
        const std::string name = word.substr(2, end - 2);
        const bool known = std::ranges::any_of(
            options, [&](const Option* option) { return option->name == name; });
        if (!known) {
            throw wrong_command_line("'" + word + "' is not an option", help);
        }
        parsed.values[name].push_back(end == word.size() ? "" : word.substr(end + 1));
    }
    return parsed;
}

} // namespace boardmark::commands
