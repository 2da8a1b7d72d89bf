#include "exposure_limits.hpp"

#include "../basis/phrases.hpp"

namespace boardmark::core {

void append_other_editions(const ExposureClass& exposure, Phrase& message) {
    if (!exposure.other_editions.empty()) {
        const std::string editions = argument_name("editions", exposure.name);
        message.text += ". {" + editions + "}";
        message.arguments.push_back(word(editions, exposure.other_editions));
    }
}

std::string joined(const std::vector<std::string>& words) {
    std::string text;
    for (const std::string& word : words) {
        text += (text.empty() ? "" : ", ") + word;
    }
    return text;
}

} // namespace boardmark::core
