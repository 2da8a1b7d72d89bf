#pragma once

#include <algorithm>
#include <string_view>

namespace boardmark::input {

/// Whether a word has the form of a currency: three capital letters.
constexpr bool is_currency(std::string_view word) {
    return word.size() == 3 &&
           std::ranges::all_of(word, [](char letter) { return letter >= 'A' && letter <= 'Z'; });
}

} // namespace boardmark::input
