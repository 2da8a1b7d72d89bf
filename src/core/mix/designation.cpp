#include "designation_words.hpp"

#include <algorithm>
#include <cctype>

namespace boardmark::core {

bool has_word(const Words& words, std::string_view word) {
    return std::ranges::count(words, word) > 0;
}

bool has_any(const Words& words, std::span<const std::string_view> of) {
    return std::ranges::any_of(of, [&](std::string_view word) { return has_word(words, word); });
}

bool has_number(const Words& words, std::string_view number) {
    const std::string letter{number.substr(0, 1)};
    const std::string digits{number.substr(1)};
    for (std::size_t i = 0; i < words.size(); ++i) {
        const bool parted = i > 0 && words[i - 1] == letter && words[i] == digits;
        if (words[i] == number || parted) {
            return true;
        }
    }
    return false;
}

Words words_after(const Words& words, std::string_view word) {
    Words after;
    for (std::size_t i = 0; i + 1 < words.size(); ++i) {
        if (words[i] == word) {
            after.push_back(words[i + 1]);
        }
    }
    return after;
}

std::vector<std::string> words_of(std::string_view designation) {
    Words words{""};
    for (const char character : designation) {
        if (std::isalnum(static_cast<unsigned char>(character))) {
            words.back() += static_cast<char>(std::toupper(static_cast<unsigned char>(character)));
        } else if (!words.back().empty()) {
            words.emplace_back();
        }
    }
    if (words.back().empty()) {
        words.pop_back();
    }
    return words;
}

bool names_standard(const std::string& designation, std::string_view number) {
    return has_number(words_of(designation), number);
}

} // namespace boardmark::core
