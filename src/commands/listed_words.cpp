#include "listed_words.hpp"

#include <boardmark/reference/tables.hpp>

#include <algorithm>
#include <string>
#include <vector>

namespace boardmark::commands {
namespace {

/// Classes of every code. A word that several codes have is told once, by each of its meanings.
std::vector<input::ListedWord> classes_of_codes() {
    std::vector<input::ListedWord> classes;
    for (const std::string& name : reference::codes()) {
        const core::CodeTables code = *reference::code(name, core::UnitSystem::si);
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

} // namespace

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

} // namespace boardmark::commands
