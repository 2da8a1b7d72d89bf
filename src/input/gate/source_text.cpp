#include "source_text.hpp"

#include <boardmark/text/utf8.hpp>

#include <algorithm>

namespace boardmark::input {

SourceText::SourceText(std::string file, std::string text, std::size_t first_line)
    : file_(std::move(file))
    , text_(std::move(text))
    , first_line_(first_line) {
    std::string_view rest = text_;
    while (!rest.empty()) {
        const std::size_t end = std::min(rest.find('\n'), rest.size());
        std::string_view line = rest.substr(0, end);
        if (line.ends_with('\r')) {
            line.remove_suffix(1);
        }
        lines_.push_back(line);
        rest.remove_prefix(std::min(end + 1, rest.size()));
    }
}

std::string_view SourceText::line(std::size_t number) const {
    const std::size_t index = number - first_line_;
    return number >= first_line_ && index < lines_.size() ? lines_[index] : std::string_view{};
}

Spot SourceText::spot_of(std::size_t byte) const {
    const std::string_view before = std::string_view{text_}.substr(0, byte);
    const auto line = static_cast<std::size_t>(std::ranges::count(before, '\n'));
    const std::size_t start = before.rfind('\n');
    return {line + first_line_, start == std::string_view::npos ? byte : byte - start - 1};
}

std::size_t SourceText::quoted_length(Spot spot) const {
    const std::string_view rest =
        line(spot.line).substr(std::min(spot.byte, line(spot.line).size()));
    if (rest.empty()) {
        return 0;
    }
    const char quote = rest.front();
    for (std::size_t at = 1; at < rest.size(); ++at) {
        if (quote == '"' && rest[at] == '\\') {
            ++at;
        } else if (rest[at] == quote) {
            const bool doubled = quote == '\'' && at + 1 < rest.size() && rest[at + 1] == quote;
            if (!doubled) {
                return at + 1;
            }
            ++at;
        }
    }
    return 0;
}

Diagnostic SourceText::diagnostic(Underline where, std::string message, std::string advice) const {
    const std::string_view shown = line(where.at.line);
    const auto characters_before = [&](std::size_t byte) {
        return text::count_characters(shown.substr(0, std::min(byte, shown.size())));
    };
    const std::size_t start = characters_before(where.at.byte);
    return {.file = file_,
            .line = where.at.line + 1,
            .column = start + 1,
            .severity = Severity::error,
            .message = std::move(message),
            .excerpt = std::string{shown},
            .underlined = characters_before(where.at.byte + where.bytes) - start,
            .caret = characters_before(where.at.byte + where.caret) - start,
            .advice = std::move(advice)};
}

} // namespace boardmark::input
