#include "exposure_limits.hpp"

#include "../basis/phrases.hpp"

namespace boardmark::core {

void append_other_editions(const ExposureClass& exposure, Phrase& message) {
    if (!exposure.other_editions.empty()) {
        const std::string name = numbered("editions", message);
        message.text += ". {" + name + "}";
        message.arguments.push_back(word(name, exposure.other_editions));
    }
}

std::string numbered(const std::string& name, const Phrase& message) {
    return name + "_" + std::to_string(message.arguments.size());
}

std::string joined(const std::vector<std::string>& words) {
    std::string text;
    for (const std::string& word : words) {
        text += (text.empty() ? "" : ", ") + word;
    }
    return text;
}

} // namespace boardmark::core
