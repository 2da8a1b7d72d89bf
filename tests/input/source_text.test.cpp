#include "input/gate/source_text.hpp"

#include <catch2/catch.hpp>

using namespace boardmark::input;

TEST_CASE("lines end at either kind of line end and the last may have none") {
    const auto [text, count, second] = GENERATE(table<std::string, std::size_t, std::string>({
        {"", 0, ""},
        {"one", 1, ""},
        {"one\n", 1, ""},
        {"one\ntwo", 2, "two"},
        {"one\ntwo\n", 2, "two"},
        {"one\r\ntwo\r\n", 2, "two"},
        {"one\n\nthree", 3, ""},
    }));
    INFO(text);
    const SourceText source{"test.yaml", text};
    CHECK(source.line_count() == count);
    CHECK(source.line(1) == second);
}

TEST_CASE("a line that the text does not have is empty") {
    CHECK(SourceText("test.yaml", "one\n").line(7).empty());
}

TEST_CASE("a byte of the text is found as a line and a byte of it") {
    const auto [byte, line, column] = GENERATE(table<std::size_t, std::size_t, std::size_t>({
        {0, 0, 0},
        {2, 0, 2},
        {4, 1, 0}, // right behind the first line end
        {6, 1, 2},
        {8, 2, 0},
    }));
    INFO(byte);
    const Spot spot = SourceText("test.yaml", "one\ntwo\nthree\n").spot_of(byte);
    CHECK(spot.line == line);
    CHECK(spot.byte == column);
}

TEST_CASE("a quoted value reaches to the quote that closes it") {
    const auto [text, length] = GENERATE(table<std::string, std::size_t>({
        {"\"\"", 2},
        {"\"stone\" # of the quay", 7},
        {"'stone', 'sand'", 7},
        {"'it''s'", 7},        // a doubled quote is one of the text
        {"\"a \\\" b\" c", 8}, // so is an escaped one
        {"\"a \\\\\" b\"", 6}, // but not behind an escaped backslash
        {"\"'\"", 3},          // the other quote is a letter like any
        {"\"stone", 0},        // not closed on its line
        {"'it''", 0},
        {"", 0},
    }));
    INFO(text);
    CHECK(SourceText("test.yaml", text).quoted_length({0, 0}) == length);
}

TEST_CASE("columns count characters and not bytes") {
    const SourceText source{"test.yaml", "größe: 5 kg\n"};
    const std::size_t value_byte = std::string{"größe: "}.size();
    const Diagnostic fault =
        source.diagnostic({{0, value_byte}, 4, 2}, "not a length", "write '5 in'");
    CHECK(fault.file == "test.yaml");
    CHECK(fault.line == 1);
    CHECK(fault.column == 8);
    CHECK(fault.underlined == 4);
    CHECK(fault.caret == 2);
    CHECK(fault.excerpt == "größe: 5 kg");
    CHECK(fault.message == "not a length");
    CHECK(fault.advice == "write '5 in'");
    CHECK(fault.severity == Severity::error);
}
