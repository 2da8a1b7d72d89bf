#include "designation_words.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// EN 197-1: "CEM I 42.5 R", "CEM II/A-LL 42.5 N".
CementType by_en197(const Words& words) {
    static constexpr std::string_view low_heat[] = {"LH", "VLH"};
    static constexpr std::string_view limestone[] = {"L", "LL"};
    const Words types = words_after(words, "CEM");
    if (types.empty()) {
        return CementType::not_told;
    }
    const bool all_one = std::ranges::all_of(types, [](const auto& type) { return type == "I"; });
    if (all_one) {
        return has_any(words, low_heat) ? CementType::other_portland : CementType::one_to_three;
    }
    const bool all_two = std::ranges::all_of(types, [](const auto& type) { return type == "II"; });
    const bool composite = has_word(words, "M");
    return all_two && has_any(words, limestone) && !composite ? CementType::limestone
                                                              : CementType::blended;
}

/// ASTM C150: the types are looked for among all words, and one outside I to III decides. Moderate
/// heat of hydration, II(MH), sets slower: it does not count as Type II.
CementType by_c150(const Words& words) {
    static constexpr std::string_view lower[] = {"I", "IA", "II", "IIA", "III", "IIIA"};
    static constexpr std::string_view other[] = {"IV", "V", "MH", "LH"};
    if (has_any(words, other)) {
        return CementType::other_portland;
    }
    return has_any(words, lower) ? CementType::one_to_three : CementType::not_told;
}

} // namespace

CementType cement_type(const std::string& standard) {
    const Words words = words_of(standard);
    if (const CementType by_cem = by_en197(words); by_cem != CementType::not_told) {
        return by_cem;
    }
    if (has_number(words, "C595") || has_number(words, "M240")) {
        return has_word(words, "IL") ? CementType::limestone : CementType::blended;
    }
    const bool other_standard = has_number(words, "C1157") || has_word(words, "EN");
    const bool c150 = has_number(words, "C150") || has_number(words, "M85");
    const bool bare_type = has_word(words, "TYPE") && !other_standard;
    return c150 || bare_type ? by_c150(words) : CementType::not_told;
}

} // namespace boardmark::core
