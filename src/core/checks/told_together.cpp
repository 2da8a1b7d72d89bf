#include <boardmark/core/checks/told_together.hpp>

#include <algorithm>
#include <string>
#include <variant>

namespace boardmark::core {
namespace {

/// The argument that names the part, with which the sentence begins.
Argument* part_named_in(Check& check) {
    const auto named = std::ranges::find_if(check.message.arguments, [&](const Argument& argument) {
        const auto* text = std::get_if<std::string>(&argument.value);
        return text && *text == check.part &&
               check.message.text.starts_with("{" + argument.name + "}: ");
    });
    return named == check.message.arguments.end() ? nullptr : &*named;
}

/// Whether two checks differ in nothing but their part.
bool say_the_same(const Check& first, const Check& second) {
    if (first.part.empty() || second.part.empty() || first.id != second.id ||
        first.verdict != second.verdict || first.source.citation != second.source.citation ||
        first.message.text != second.message.text) {
        return false;
    }
    Check renamed = second;
    Argument* const part = part_named_in(renamed);
    if (!part) {
        return false;
    }
    part->value = first.part;
    return first.message == renamed.message;
}

} // namespace

std::vector<Check> told_together(const std::vector<Check>& checks) {
    std::vector<Check> told; // alone, to be compared with those that follow
    std::vector<std::string> parts;
    for (const Check& check : checks) {
        const auto same = std::ranges::find_if(
            told, [&](const Check& earlier) { return say_the_same(earlier, check); });
        if (same == told.end()) {
            told.push_back(check);
            parts.push_back(check.part);
        } else {
            parts[static_cast<std::size_t>(same - told.begin())] += ", " + check.part;
        }
    }
    for (std::size_t i = 0; i < told.size(); ++i) {
        if (Argument* const part = part_named_in(told[i])) {
            part->value = parts[i];
        }
    }
    return told;
}

} // namespace boardmark::core
