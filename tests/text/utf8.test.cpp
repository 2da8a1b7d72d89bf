#include <boardmark/text/utf8.hpp>

#include <catch2/catch.hpp>

#include <optional>
#include <string>

using namespace boardmark::text;
using namespace std::string_literals;

TEST_CASE("texts that are UTF-8 throughout") {
    const auto [text, what] = GENERATE(table<std::string, std::string>({
        {"", "nothing"},
        {"Quay wall", "ASCII"},
        {"\0"s, "the zero byte is a character"},
        {"\x7F", "last of one byte, U+007F"},
        {"\xC2\x80", "first of two bytes, U+0080"},
        {"\xDF\xBF", "last of two bytes, U+07FF"},
        {"\xE0\xA0\x80", "first of three bytes, U+0800"},
        {"\xED\x9F\xBF", "last before the surrogates, U+D7FF"},
        {"\xEE\x80\x80", "first after the surrogates, U+E000"},
        {"\xF0\x90\x80\x80", "first of four bytes, U+10000"},
        {"\xF4\x8F\xBF\xBF", "last of all, U+10FFFF"},
        {"b\xC3\xA9ton armé", "accents"},
        {"コンクリート", "Japanese"},
    }));
    INFO(what);
    CHECK(first_invalid_byte(text) == std::nullopt);
}

TEST_CASE("the byte where a text stops being UTF-8") {
    const auto [text, at, what] = GENERATE(table<std::string, std::size_t, std::string>({
        {"\x80", 0, "a continuation byte alone"},
        {"wall\xBF", 4, "a continuation byte alone, later"},
        {"\xC0\xAF", 0, "'/' in two bytes: overlong"},
        {"\xC1\xBF", 0, "U+007F in two bytes: overlong"},
        {"\xE0\x9F\xBF", 0, "U+07FF in three bytes: overlong"},
        {"\xF0\x8F\xBF\xBF", 0, "U+FFFF in four bytes: overlong"},
        {"a\xED\xA0\x80", 1, "U+D800, a surrogate"},
        {"a\xED\xBF\xBF", 1, "U+DFFF, a surrogate"},
        {"\xED\xA0\xBD\xED\xB8\x80", 0, "an emoji as two surrogates"},
        {"\xF4\x90\x80\x80", 0, "U+110000, beyond the last character"},
        {"\xF5\x80\x80\x80", 0, "a first byte that no character has"},
        {"ab\xFE", 2, "a byte that no character has"},
        {"ab\xFF", 2, "a byte that no character has"},
        {"x\xC3", 1, "cut after one of two bytes"},
        {"x\xE2\x82", 1, "cut after two of three bytes"},
        {"x\xF0\x9F\x98", 1, "cut after three of four bytes"},
        {"\xC3(", 0, "a first byte, then ASCII"},
        {"\xC3\xA9\xE9", 2, "Latin-1 behind UTF-8"},
    }));
    INFO(what);
    CHECK(first_invalid_byte(text) == std::optional{at});
}

TEST_CASE("the first control character") {
    const auto [text, at, what] =
        GENERATE(table<std::string, std::optional<std::size_t>, std::string>({
            {"", std::nullopt, "nothing"},
            {"wall", std::nullopt, "letters"},
            {"a\tb\r\nc", std::nullopt, "tab, carriage return, line feed"},
            {"a\0b"s, 1, "zero"},
            {"\x01", 0, "start of heading"},
            {"ab\x08", 2, "backspace"},
            {"ab\x0B", 2, "vertical tab"},
            {"ab\x0C", 2, "form feed"},
            {"\tred \x1B[31m", 5, "escape"},
            {"a\x7F", 1, "delete"},
            {"\xC3\xA9\xC2\x85", 2, "next line, U+0085"},
            {"\xC3\xA9\xC2\x9B", 2, "control sequence introducer, U+009B"},
            {"\xC2\xA0", std::nullopt, "no-break space, U+00A0"},
        }));
    INFO(what);
    CHECK(first_control_character(text) == at);
}

TEST_CASE("characters and the columns they take") {
    struct Row {
        std::string text;
        std::size_t characters;
        std::size_t columns;
        std::string what;
    };
    const Row row =
        GENERATE(Row{"", 0, 0, "nothing"}, Row{"stone", 5, 5, "ASCII"},
                 Row{"b\xC3\xA9ton", 5, 5, "an accent in one character"},
                 Row{"be\xCC\x81ton", 6, 5, "an accent as a combining mark, U+0301"},
                 Row{"\xD7\xA9\xD6\xB8", 2, 1, "a Hebrew letter with its vowel point"},
                 Row{"砂利", 2, 4, "Chinese characters are wide"},
                 Row{"ｗ／ｃ", 3, 6, "full-width Latin letters are wide"},
                 Row{"\xEF\xBD\xBA", 1, 1, "half-width katakana, U+FF7A"},
                 Row{"모래", 2, 4, "Hangul syllables are wide"}, Row{"😀", 1, 2, "emoji are wide"},
                 Row{"Бетон", 5, 5, "Cyrillic"}, Row{"\xE2\x82\xAC", 1, 1, "euro sign"},
                 Row{"a\xE2\x80\x8B"
                     "b",
                     3, 2, "zero width space, U+200B"});
    INFO(row.what);
    CHECK(count_characters(row.text) == row.characters);
    CHECK(display_width(row.text) == row.columns);
}

TEST_CASE("what steers a terminal is written out") {
    const auto [text, shown, what] = GENERATE(table<std::string, std::string, std::string>({
        {"", "", "nothing"},
        {"Quay wall No. 3", "Quay wall No. 3", "ASCII"},
        {"b\xC3\xA9ton 砂利 😀", "b\xC3\xA9ton 砂利 😀", "letters of any script"},
        {"e\xCC\x81", "e\xCC\x81", "a combining mark belongs to its letter"},
        {"a\x1B[31mred", "a\\u001B[31mred", "escape"},
        {"a\x1B]0;title\x07", "a\\u001B]0;title\\u0007", "a terminal's title"},
        {"a\0b"s, "a\\u0000b", "zero"},
        {"a\tb\r\nc", "a\\u0009b\\u000D\\u000Ac", "a name stays on its line"},
        {"a\x7F", "a\\u007F", "delete"},
        {"a\xC2\x9B"
         "31m",
         "a\\u009B31m", "control sequence introducer in one character"},
        {"sand\xE2\x80\xAE"
         "dnas",
         "sand\\u202Ednas", "right-to-left override, U+202E"},
        {"\xE2\x81\xA6x\xE2\x81\xA9", "\\u2066x\\u2069", "isolates, U+2066 and U+2069"},
        {"\xE2\x80\x8F", "\\u200F", "right-to-left mark"},
        {"a\xE2\x80\x8B"
         "b",
         "a\\u200Bb", "zero width space"},
        {"a\xE2\x80\xA8"
         "b",
         "a\\u2028b", "line separator"},
        {"a\xE2\x80\xA9"
         "b",
         "a\\u2029b", "paragraph separator"},
        {"\xEF\xBB\xBF"
         "a",
         "\\uFEFFa", "byte order mark"},
        {"\xF3\xA0\x81\x81", "\\uE0041", "an invisible tag letter, U+E0041"},
        {"a\xFF"
         "b",
         "a\\xFFb", "a byte that is not UTF-8"},
        {"\xC3", "\\xC3", "a cut character"},
        {"\xED\xA0\x80", "\\xED\\xA0\\x80", "a surrogate, byte by byte"},
        {"\xC0\xAF", "\\xC0\\xAF", "an overlong form, byte by byte"},
        {"x\xE2\x82\xC3\xA9", "x\\xE2\\x82\xC3\xA9", "reading goes on behind a cut character"},
    }));
    INFO(what);
    CHECK(printable(text) == shown);
}

TEST_CASE("in cells lines stay, in JSON what steers is an escape of JSON") {
    const auto [text, cell, json] = GENERATE(table<std::string, std::string, std::string>({
        {"one\ttwo\r\nthree", "one\ttwo\r\nthree", "one\ttwo\r\nthree"},
        {"12 m\xC2\xB3, 5 \xC2\xB0\x43", "12 m\xC2\xB3, 5 \xC2\xB0\x43", "12 m\xC2\xB3, 5 \xC2\xB0\x43"},
        {"a\xE2\x80\xAEz", "a\\u202Ez", "a\\u202ez"},
        {"\xC2\x85", "\\u0085", "\\u0085"},
        {"\x7F", "\\u007F", "\\u007f"},
        {"\xF3\xA0\x80\x81.", "\\uE0001.", "\\udb40\\udc01."}, // RFC 8259, section 7: a pair
    }));
    CHECK(printable_lines(text) == cell);
    CHECK(printable_json(text) == json);
}

TEST_CASE("what was written out stays as it is") {
    const std::string text =
        GENERATE("\x1B[31m\xE2\x80\xAE\xFF"s, "plain"s, "\xF0\x9F\x98\x80\xC2\x9B"s);
    const std::string once = printable(text);
    CHECK(first_invalid_byte(once) == std::nullopt);
    CHECK(first_control_character(once) == std::nullopt);
    CHECK(printable(once) == once);
}
