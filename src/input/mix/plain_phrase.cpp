#include "plain_phrase.hpp"

#include <variant>

namespace boardmark::input {

std::string plain(const core::Phrase& phrase) {
    std::string text = phrase.text;
    for (const core::Argument& argument : phrase.arguments) {
        const std::string place = "{" + argument.name + "}";
        const std::size_t at = text.find(place);
        if (at != std::string::npos) {
            text.replace(at, place.size(), std::get<std::string>(argument.value));
        }
    }
    return text;
}

} // namespace boardmark::input
