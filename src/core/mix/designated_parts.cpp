#include <boardmark/core/mix/designated_parts.hpp>
#include <boardmark/core/mix/designation.hpp>

#include <charconv>
#include <optional>
#include <string_view>

namespace boardmark::core {
namespace {

constexpr std::string_view part_letters = "SPL";

char letter_of(Kind kind) {
    switch (kind) {
    case Kind::slag_cement:
        return 'S';
    case Kind::ground_limestone:
        return 'L';
    default: // silica fume and metakaolin are pozzolans
        return 'P';
    }
}

/// "60" of a type IS, "S25" of a type IT; nothing of "MS".
std::optional<DesignatedPart> part_of(std::string_view words, char type) {
    if (words.empty()) {
        return std::nullopt;
    }
    const bool own = part_letters.find(words.front()) != std::string_view::npos;
    const char letter = own ? words.front() : type;
    words.remove_prefix(own ? 1 : 0);
    int percent = 0;
    const auto [end, error] = std::from_chars(words.data(), words.data() + words.size(), percent);
    const bool is_number = error == std::errc{} && end == words.data() + words.size();
    return is_number ? std::optional{DesignatedPart{letter, double(percent)}} : std::nullopt;
}

} // namespace

std::vector<DesignatedPart> designated_parts(const std::string& standard) {
    const bool c595 = names_standard(standard, "C595") || names_standard(standard, "M240");
    std::vector<DesignatedPart> parts;
    std::size_t open = standard.find('(');
    if (!c595 || open == std::string::npos || open == 0) {
        return parts;
    }
    const char type = standard[open - 1];
    while (open != std::string::npos) {
        const std::size_t close = standard.find(')', open);
        if (close == std::string::npos) {
            break;
        }
        const std::string_view words{standard.data() + open + 1, close - open - 1};
        if (const auto part = part_of(words, type)) {
            parts.push_back(*part);
        }
        open = standard.find('(', close);
    }
    return parts;
}

double contained_percent(const Material& cement, char letter) {
    double percent = 0;
    for (const Constituent& part : cement.binder.contains) {
        percent += letter_of(part.kind) == letter ? part.percent : 0;
    }
    return percent;
}

} // namespace boardmark::core
