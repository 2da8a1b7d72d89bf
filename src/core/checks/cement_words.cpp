#include "cement_words.hpp"

#include <algorithm>
#include <array>
#include <span>

namespace boardmark::core {
namespace {

/// What each letter is as a capital; no letter where it stands in no word. Designations are written
/// in ASCII, whatever the locale. The library asks its tables for each letter, and these are asked
/// for each mix.
constexpr std::array<char, 256> capitals = [] {
    std::array<char, 256> letters{};
    for (char letter = '0'; letter <= '9'; ++letter) {
        letters[static_cast<unsigned char>(letter)] = letter;
    }
    for (char letter = 'A'; letter <= 'Z'; ++letter) {
        letters[static_cast<unsigned char>(letter)] = letter;
        letters[static_cast<unsigned char>(letter - 'A' + 'a')] = letter;
    }
    return letters;
}();

constexpr char capital(char letter) {
    return capitals[static_cast<unsigned char>(letter)];
}

constexpr bool in_word(char letter) {
    return capital(letter) != 0;
}

/// Takes the next word off a designation; empty at its end.
std::string_view next_word(std::string_view& rest) {
    const auto start = std::ranges::find_if(rest, in_word);
    const auto end = std::find_if_not(start, rest.end(), in_word);
    const std::string_view word{rest.substr(static_cast<std::size_t>(start - rest.begin()),
                                            static_cast<std::size_t>(end - start))};
    rest.remove_prefix(static_cast<std::size_t>(end - rest.begin()));
    return word;
}

bool equal_words(std::string_view left, std::string_view right) {
    return std::ranges::equal(left, right, {}, capital, capital);
}

/// Whether the words stand at its end letter by letter; where not, they may still be in it.
bool ends_with_words(std::string_view designation, std::string_view words) {
    const std::size_t before = designation.size() - std::min(words.size(), designation.size());
    return !words.empty() && designation.ends_with(words) &&
           (before == 0 || !in_word(designation[before - 1]));
}

bool holds_word(std::string_view designation, std::string_view sought) {
    for (std::string_view word = next_word(designation); !word.empty();
         word = next_word(designation)) {
        if (equal_words(word, sought)) {
            return true;
        }
    }
    return false;
}

constexpr std::string_view c150_types[] = {"I", "IA", "II", "IIA", "III", "IIIA", "IV", "V"};
constexpr std::string_view c595_types[] = {"IS", "IP", "IL", "IT", "MS", "HS"};
constexpr std::string_view c1157_types[] = {"GU", "HE", "MS", "HS", "MH", "LH"};

struct CementStandard {
    std::string_view number;
    std::span<const std::string_view> types;
};
constexpr CementStandard cement_standards[] = {
    {"C150", c150_types}, {"C595", c595_types}, {"C1157", c1157_types}};

bool is_standard(std::string_view word) {
    return std::ranges::any_of(cement_standards, [&](const CementStandard& standard) {
        return equal_words(word, standard.number);
    });
}

bool is_type(std::string_view word) {
    return std::ranges::any_of(cement_standards, [&](const CementStandard& standard) {
        return std::ranges::any_of(standard.types,
                                   [&](std::string_view type) { return equal_words(word, type); });
    });
}

/// "ASTM C150 II", as most write it and as is asked for each mix: no room for a second type.
bool is_one_type_by_its_form(std::string_view designation) {
    return designation.starts_with("ASTM ") && std::ranges::count(designation, ' ') <= 2 &&
           designation.find_first_of(",;|&+") == std::string_view::npos;
}

bool is_digit(char letter) {
    return letter >= '0' && letter <= '9';
}

} // namespace

bool holds_words(std::string_view designation, std::string_view accepted) {
    if (ends_with_words(designation, accepted)) { // as most write it
        return true;
    }
    for (std::string_view word = next_word(accepted); !word.empty(); word = next_word(accepted)) {
        if (!holds_word(designation, word)) {
            return false;
        }
    }
    return true;
}

bool is_class_f_ash(std::string_view designation) {
    return holds_word(designation, "F") && !holds_word(designation, "C");
}

bool names_alternatives(std::string_view designation) {
    if (is_one_type_by_its_form(designation)) {
        return false;
    }
    std::string_view rest = designation;
    const char* type_end = nullptr; // of the type named last
    bool only_digits_between = true;
    bool names_standard = false;
    bool several = false;
    for (std::string_view word = next_word(rest); !word.empty(); word = next_word(rest)) {
        names_standard = names_standard || is_standard(word);
        if (!is_type(word)) {
            only_digits_between = only_digits_between && std::ranges::any_of(word, is_digit);
            continue;
        }
        if (type_end) {
            const std::string_view between{type_end,
                                           static_cast<std::size_t>(word.data() - type_end)};
            several = several || !only_digits_between ||
                      between.find_first_of("/(") == std::string_view::npos;
        }
        type_end = word.data() + word.size();
        only_digits_between = true;
    }
    return names_standard && several;
}

bool states_cement_type(std::string_view designation) {
    return std::ranges::any_of(cement_standards, [&](const CementStandard& standard) {
        return holds_word(designation, standard.number) &&
               std::ranges::any_of(standard.types, [&](std::string_view type) {
                   return holds_word(designation, type);
               });
    });
}

} // namespace boardmark::core
