#include <boardmark/text/utf8.hpp>

#include <utf8proc.h>

#include <algorithm>
#include <array>
#include <cstdio>

namespace boardmark::text {
namespace {

/// ASCII decodes to itself in one byte; most texts are nothing else.
bool is_ascii(char byte) {
    return static_cast<unsigned char>(byte) < 0x80;
}

struct Decoded {
    utf8proc_int32_t character;
    std::size_t length;
};

/// The character at a byte, or nothing where the bytes there are not UTF-8.
std::optional<Decoded> decode(std::string_view text, std::size_t at) {
    if (is_ascii(text[at])) {
        return Decoded{text[at], 1};
    }
    utf8proc_int32_t character = -1;
    const auto* bytes = reinterpret_cast<const utf8proc_uint8_t*>(text.data());
    const auto length =
        utf8proc_iterate(bytes + at, static_cast<utf8proc_ssize_t>(text.size() - at), &character);
    if (length <= 0) {
        return std::nullopt;
    }
    return Decoded{character, static_cast<std::size_t>(length)};
}

// of ASCII
constexpr char first_printed = 0x20;
constexpr char last_printed = 0x7E;

/// Behind the printed ASCII that begins at a byte: most texts are nothing else.
std::size_t behind_printed(std::string_view text, std::size_t at) {
    while (at < text.size() && text[at] >= first_printed && text[at] <= last_printed) {
        ++at;
    }
    return at;
}

template <class Visit>
void for_each_character(std::string_view text, Visit visit) {
    for (std::size_t at = 0; at < text.size();) {
        const auto decoded = decode(text, at);
        if (!decoded) {
            return;
        }
        visit(decoded->character);
        at += decoded->length;
    }
}

bool is_control(utf8proc_int32_t character) {
    if (character >= first_printed && character <= last_printed) {
        return false;
    }
    return utf8proc_category(character) == UTF8PROC_CATEGORY_CC;
}

/// Columns on a terminal; controls have none.
std::size_t width_of(utf8proc_int32_t character) {
    if (character < 0x80) {
        return is_control(character) ? 0 : 1;
    }
    return static_cast<std::size_t>(utf8proc_charwidth(character));
}

bool is_white_space_control(utf8proc_int32_t character) {
    return character == '\t' || character == '\n' || character == '\r';
}

/// Marks that change the order of what stands beside them, and other invisible format characters.
bool is_invisible_format(utf8proc_int32_t character) {
    if (character < 0x80) {
        return false; // ASCII has none
    }
    const auto category = utf8proc_category(character);
    return category == UTF8PROC_CATEGORY_CF || category == UTF8PROC_CATEGORY_ZL ||
           category == UTF8PROC_CATEGORY_ZP;
}

std::string escape(const char* form, unsigned value) {
    std::array<char, 16> buffer{};
    std::snprintf(buffer.data(), buffer.size(), form, value);
    return buffer.data();
}

std::string escape_of(utf8proc_int32_t character) {
    return escape("\\u%04X", static_cast<unsigned>(character));
}

/// JSON knows units of 16 bits; a character beyond them is a pair (RFC 8259, section 7).
std::string json_escape_of(utf8proc_int32_t character) {
    constexpr unsigned first_of_pairs = 0x10000;
    const auto value = static_cast<unsigned>(character);
    if (value < first_of_pairs) {
        return escape("\\u%04x", value);
    }
    const unsigned rest = value - first_of_pairs;
    return escape("\\u%04x", 0xD800 + (rest >> 10)) + escape("\\u%04x", 0xDC00 + (rest & 0x3FF));
}

struct Kept {
    bool keeps_lines; ///< whether line breaks and tabs stay as they are
};

/// The text with an escape in place of each character that steers and each byte that is not UTF-8.
std::string with_escapes(std::string_view text, Kept kept,
                         std::string (*written)(utf8proc_int32_t character)) {
    std::string result;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = behind_printed(text, at);
        result += text.substr(at, end - at);
        at = end;
        if (at == text.size()) {
            break;
        }
        const auto decoded = decode(text, at);
        if (!decoded) {
            result += escape("\\x%02X", static_cast<unsigned char>(text[at]));
            ++at;
            continue;
        }
        const bool steers =
            is_control(decoded->character) || is_invisible_format(decoded->character);
        if (steers && !(kept.keeps_lines && is_white_space_control(decoded->character))) {
            result += written(decoded->character);
        } else {
            result += text.substr(at, decoded->length);
        }
        at += decoded->length;
    }
    return result;
}

} // namespace

std::optional<std::size_t> first_invalid_byte(std::string_view text) {
    for (std::size_t at = behind_printed(text, 0); at < text.size();) {
        const auto decoded = decode(text, at);
        if (!decoded) {
            return at;
        }
        at = behind_printed(text, at + decoded->length);
    }
    return std::nullopt;
}

std::optional<std::size_t> first_control_character(std::string_view text) {
    for (std::size_t at = behind_printed(text, 0); at < text.size();) {
        const auto decoded = decode(text, at);
        if (!decoded) {
            return std::nullopt;
        }
        if (is_control(decoded->character) && !is_white_space_control(decoded->character)) {
            return at;
        }
        at = behind_printed(text, at + decoded->length);
    }
    return std::nullopt;
}

std::size_t count_characters(std::string_view text) {
    std::size_t count = 0;
    for_each_character(text, [&](utf8proc_int32_t) { ++count; });
    return count;
}

std::size_t display_width(std::string_view text) {
    std::size_t width = behind_printed(text, 0); // what is printed of ASCII takes a column each
    for_each_character(text.substr(width),
                       [&](utf8proc_int32_t character) { width += width_of(character); });
    return width;
}

std::string beginning(std::string_view text, std::size_t width) {
    std::size_t end = 0;
    std::size_t taken = 0;
    while (end < text.size()) {
        const auto decoded = decode(text, end);
        const std::size_t length = decoded ? decoded->length : 1;
        taken += display_width(text.substr(end, length));
        if (end > 0 && taken > width) {
            break;
        }
        end += length;
    }
    return std::string{text.substr(0, end)};
}

std::string printable(std::string_view text) {
    return with_escapes(text, {.keeps_lines = false}, escape_of);
}

std::string printable_lines(std::string_view text) {
    return with_escapes(text, {.keeps_lines = true}, escape_of);
}

std::string printable_json(std::string_view json) {
    return with_escapes(json, {.keeps_lines = true}, json_escape_of);
}

} // namespace boardmark::text
