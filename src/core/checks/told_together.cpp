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

std::vector<ToldCheck> told_together(const std::vector<Check>& checks) {
    std::vector<ToldCheck> told;
    std::vector<std::string> names; // a sentence keeps its first part's while others are compared
    for (const Check& check : checks) {
        const auto same = std::ranges::find_if(
            told, [&](const ToldCheck& earlier) { return say_the_same(earlier.check, check); });
        if (same == told.end()) {
            told.push_back({check});
            names.push_back(check.part);
        } else {
            ++same->parts;
            names[static_cast<std::size_t>(same - told.begin())] += ", " + check.part;
        }
    }
    for (std::size_t i = 0; i < told.size(); ++i) {
        if (Argument* const part = part_named_in(told[i].check)) {
            part->value = names[i];
        }
    }
    return told;
}

} // namespace boardmark::core
