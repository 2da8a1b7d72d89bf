#include <boardmark/input/gate/diagnostic.hpp>
#include <boardmark/text/utf8.hpp>
#include <boardmark/text/wrap.hpp>

#include <algorithm>

namespace boardmark::input {
namespace {

constexpr std::size_t most_shown = 20;
constexpr std::size_t longest_line = 90; // of the file, characters shown
constexpr std::size_t number_width = 5;  // of a line, and what stands behind it
constexpr std::string_view bar = " | ";

/// The byte at which a character begins.
std::size_t byte_of(std::string_view text, std::size_t character) {
    std::size_t at = 0;
    for (std::size_t passed = 0; at < text.size(); ++at) {
        const bool begins = (static_cast<unsigned char>(text[at]) & 0xC0) != 0x80;
        if (begins && passed++ == character) {
            break;
        }
    }
    return at;
}

std::string_view characters(std::string_view text, std::size_t first, std::size_t count) {
    const std::size_t from = byte_of(text, first);
    return text.substr(from, byte_of(text.substr(from), count));
}

/// Characters as they are shown: harmless, and a tab as one blank.
std::string shown(std::string_view part) {
    std::string text{part};
    std::ranges::replace(text, '\t', ' ');
    return text::printable(text);
}

constexpr std::string_view cut_mark = "...";

/// The part of a long line that is shown, so that the whole underlined spot is inside it.
struct Window {
    std::string text;
    std::size_t first;  ///< character of the line at which it begins
    std::size_t indent; ///< columns of the mark that stands for a cut beginning
};

Window window(const Diagnostic& diagnostic, std::size_t longest) {
    const std::size_t length = text::count_characters(diagnostic.excerpt);
    const std::size_t start = diagnostic.column - 1;
    constexpr std::size_t context = 20;
    const bool fits = start + diagnostic.underlined <= longest;
    const std::size_t first = fits || start < context ? 0 : start - context;
    const std::string_view part = characters(diagnostic.excerpt, first, longest);
    const bool cut_before = first > 0;
    const bool cut_behind = first + longest < length;
    return {(cut_before ? std::string{cut_mark} : "") + shown(part) +
                (cut_behind ? std::string{cut_mark} : ""),
            first, cut_before ? cut_mark.size() : 0};
}

/// `~~~^~~` under the characters that are wrong, as wide as they are on a terminal.
std::string underline(const Diagnostic& diagnostic, const Window& window, std::size_t longest) {
    const std::size_t start = diagnostic.column - 1;
    const std::size_t end =
        std::min(start + std::max<std::size_t>(diagnostic.underlined, 1), window.first + longest);
    const auto width = [&](std::size_t from, std::size_t count) {
        return text::display_width(shown(characters(diagnostic.excerpt, from, count)));
    };
    std::string line(window.indent + width(window.first, start - window.first), ' ');
    for (std::size_t at = start; at < end; ++at) {
        const bool caret = at == start + diagnostic.caret;
        const std::size_t columns = std::max<std::size_t>(width(at, 1), 1);
        line += (caret ? "^" : "~") + std::string(columns - 1, '~');
    }
    return line;
}

std::string place(const Diagnostic& diagnostic) {
    std::string text = text::printable(diagnostic.file);
    if (diagnostic.line > 0) {
        text += ":" + std::to_string(diagnostic.line) + ":" + std::to_string(diagnostic.column);
    }
    return text;
}

/// Text as it is, or broken where a terminal ends.
std::string fitting(const std::string& text, std::optional<std::size_t> width) {
    return width ? text::fitted(text, *width) : text;
}

/// The advice behind the underlined spot, or below it where there is no room.
std::string with_advice(const std::string& underlined, const std::string& advice,
                        std::optional<std::size_t> width) {
    const std::string beside = underlined + (advice.empty() ? "" : " " + advice);
    if (!width || text::display_width(beside) <= *width) {
        return beside + "\n";
    }
    const std::string under(number_width + bar.size(), ' ');
    return underlined + "\n" + text::wrapped(advice, {under, under}, *width);
}

/// How many characters of a line are shown, so that it fits with what stands before it and the
/// marks of a cut on both sides. Wide characters may take two columns each.
std::size_t longest_shown(const Diagnostic& diagnostic, std::size_t before,
                          std::optional<std::size_t> width) {
    if (!width) {
        return longest_line;
    }
    const std::string line = shown(diagnostic.excerpt);
    const bool is_wide = text::display_width(line) > text::count_characters(diagnostic.excerpt);
    const std::size_t columns = *width - std::min(*width, before + 2 * cut_mark.size());
    return std::clamp<std::size_t>(is_wide ? columns / 2 : columns, 1, longest_line);
}

std::string counted(std::size_t count, const std::string& noun) {
    return std::to_string(count) + " " + noun + (count == 1 ? "" : "s");
}

std::string joined(const std::vector<std::string>& files) {
    std::string names;
    for (const std::string& file : files) {
        names += (names.empty() ? "" : " and ") + text::printable(file);
    }
    return names;
}

} // namespace

std::string render_one(const Diagnostic& diagnostic, std::optional<std::size_t> width) {
    std::string text = fitting(
        place(diagnostic) + (diagnostic.severity == Severity::error ? ": error: " : ": warning: ") +
            text::printable(diagnostic.message) + "\n",
        width);
    const std::string advice = text::printable(diagnostic.advice);
    if (diagnostic.line == 0) {
        return advice.empty() ? text : text + fitting("      " + advice + "\n", width);
    }
    std::string number = std::to_string(diagnostic.line);
    number.insert(0, number.size() < number_width ? number_width - number.size() : 0, ' ');
    const std::size_t longest = longest_shown(diagnostic, number.size() + bar.size(), width);
    const Window part = window(diagnostic, longest);
    text += number + std::string{bar} + part.text + "\n";
    return text + with_advice(std::string(number.size(), ' ') + std::string{bar} +
                                  underline(diagnostic, part, longest),
                              advice, width);
}

bool has_errors(const Diagnostics& diagnostics) {
    return std::ranges::any_of(diagnostics, [](const Diagnostic& diagnostic) {
        return diagnostic.severity == Severity::error;
    });
}

std::string render(const Diagnostics& diagnostics, std::string_view consequence,
                   std::optional<std::size_t> width) {
    std::string text;
    for (std::size_t i = 0; i < std::min(diagnostics.size(), most_shown); ++i) {
        text += render_one(diagnostics[i], width);
    }
    if (diagnostics.size() > most_shown) {
        text += "and " + std::to_string(diagnostics.size() - most_shown) + " more\n";
    }
    std::size_t errors = 0;
    std::vector<std::string> files;
    for (const Diagnostic& diagnostic : diagnostics) {
        if (diagnostic.severity == Severity::error) {
            ++errors;
            if (std::ranges::count(files, diagnostic.file) == 0) {
                files.push_back(diagnostic.file);
            }
        }
    }
    if (errors > 0) {
        text += fitting(counted(errors, "error") + " in " + joined(files) + "; " +
                            std::string{consequence} + "\n",
                        width);
    }
    return text;
}

} // namespace boardmark::input
