#include <boardmark/text/letter_case.hpp>

#include <algorithm>

namespace boardmark::text {

std::string lower(std::string_view text) {
    std::string result{text};
    std::ranges::transform(result, result.begin(), [](char letter) {
        return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
    });
    return result;
}

bool equal_but_for_case(std::string_view left, std::string_view right) {
    return lower(left) == lower(right);
}

} // namespace boardmark::text
