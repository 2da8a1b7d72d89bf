#include "note_words.hpp"

#include <boardmark/text/closest.hpp>
#include <boardmark/units/quantity.hpp>

#include <fmt/format.h>

#include <algorithm>
#include <vector>

namespace boardmark::input {
namespace {

std::optional<FigureFault> fault_of_word(std::string_view word, const NoteForm& form) {
    if (std::ranges::count(form.words, word) > 0) {
        return std::nullopt;
    }
    const auto near = text::closest(word, form.words);
    return FigureFault{fmt::format("'{}' is no word that is known for it", word),
                       near ? fmt::format("did you mean '{}'?", *near)
                            : fmt::format("known here: {}", fmt::join(form.words, ", "))};
}

std::optional<FigureFault> fault_of_words(std::string_view written, const NoteForm& form) {
    constexpr std::string_view separator = " or ";
    for (std::size_t at = 0; at <= written.size();) {
        const std::size_t end = std::min(written.find(separator, at), written.size());
        if (auto fault = fault_of_word(written.substr(at, end - at), form)) {
            return fault;
        }
        at = end + separator.size();
    }
    return std::nullopt;
}

std::optional<FigureFault> fault_of_days(std::string_view written) {
    const auto reading = units::read_quantity(written);
    const auto* age = std::get_if<units::Quantity>(&reading);
    const bool days = age && age->amount >= 1 && age->amount <= 365 &&
                      written == fmt::format("{:.0f} d", age->amount);
    return days ? std::nullopt
                : std::optional{FigureFault{fmt::format("'{}' is no age in whole days", written),
                                            "write for example '28 d', at most 365 d"}};
}

} // namespace

std::optional<FigureFault> fault_of_note(std::string_view written, const NoteForm& form) {
    if (written.empty()) {
        return std::nullopt; // told already
    }
    switch (form.text) {
    case NoteText::free:
        break;
    case NoteText::word:
        return fault_of_word(written, form);
    case NoteText::words_or:
        return fault_of_words(written, form);
    case NoteText::whole_days:
        return fault_of_days(written);
    }
    return std::nullopt;
}

} // namespace boardmark::input
