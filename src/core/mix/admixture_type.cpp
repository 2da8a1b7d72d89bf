#include <boardmark/core/basis/tables.hpp>

#include "designation_words.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

bool is_type_letter(const std::string& word) {
    return word.size() == 1 && std::string_view{"ABCDEFGS"}.find(word.front()) != std::string::npos;
}

/// Letters of types. A letter of a sentence ("a reducer") counts too, which is never more lenient.
std::string c494_letters(const Words& words) {
    constexpr std::string_view glued = "C494";
    const bool named = has_number(words, glued) || has_number(words, "M194");
    const bool says_type = has_word(words, "TYPE") || has_word(words, "TYPES");
    std::string letters;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const bool of_number = i + 1 < words.size() && words[i] == "C" && words[i + 1] == "494";
        if (is_type_letter(words[i]) && !of_number && (named || says_type || words.size() == 1)) {
            letters += words[i];
        }
        // "C494F"; the M of "C494M" is no type.
        if (words[i].size() == glued.size() + 1 && words[i].starts_with(glued) &&
            is_type_letter(words[i].substr(glued.size()))) {
            letters += words[i].back();
        }
    }
    return letters;
}

bool begins_any(const Words& words, std::string_view beginning) {
    return std::ranges::any_of(words,
                               [&](const auto& word) { return word.starts_with(beginning); });
}

/// Tables of EN 934-2 by number, as "T3.1" or "Table 3.1", from memory: 3 superplasticizers,
/// 8 retarders, 10 retarding plasticizers, 11 retarding superplasticizers.
bool names_table(const Words& words, std::span<const std::string_view> numbers) {
    const Words spelled = words_after(words, "TABLE");
    return std::ranges::any_of(numbers, [&](std::string_view number) {
        return has_word(words, "T" + std::string{number}) || has_word(spelled, number);
    });
}

} // namespace

AdmixtureType admixture_type(const std::string& standard) {
    static constexpr std::string_view high_range_tables[] = {"3", "11"};
    static constexpr std::string_view retarding_tables[] = {"8", "10", "11"};
    static constexpr std::string_view retarding_c1017[] = {"2", "II"};
    const Words words = words_of(standard);
    const bool european = has_word(words, "934");
    const bool c1017 = has_number(words, "C1017");
    AdmixtureType type{.c494 = c1017 ? "" : c494_letters(words)};
    const auto has_letter = [&](const char* any) {
        return type.c494.find_first_of(any) != std::string::npos;
    };
    type.high_range = has_letter("FG") || c1017 || begins_any(words, "SUPERPLASTICI") ||
                      std::ranges::count(words_after(words, "HIGH"), "RANGE") > 0 ||
                      (european && names_table(words, high_range_tables));
    type.retards = has_letter("BDG") || begins_any(words, "RETARD") ||
                   (c1017 && has_any(words, retarding_c1017)) ||
                   (european && names_table(words, retarding_tables));
    type.accelerates = has_letter("CE") || begins_any(words, "ACCELERAT");
    return type;
}

} // namespace boardmark::core
