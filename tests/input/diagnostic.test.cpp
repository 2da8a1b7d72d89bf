// How faults are printed. Each expected text is the whole text.

#include <boardmark/input/gate/diagnostic.hpp>
#include <boardmark/text/utf8.hpp>

#include "input/gate/source_text.hpp"

#include <catch2/catch.hpp>

#include <sstream>
#include <string>

using namespace boardmark::input;

namespace {

/// A fault of the first line of a text, from a byte on.
Diagnostic fault_at(const std::string& text, std::size_t byte, std::size_t bytes,
                    std::size_t caret = 0) {
    return SourceText("test.yaml", text).diagnostic({{0, byte}, bytes, caret}, "wrong", "right");
}

/// What is printed of one fault, without the first and the last line.
std::string excerpt(const Diagnostic& fault) {
    const std::string text = render({fault});
    const std::size_t start = text.find('\n') + 1;
    return text.substr(start, text.rfind("1 error") - start);
}

Diagnostics many(std::size_t count) {
    return Diagnostics(count, fault_at("a: 1", 3, 1));
}

} // namespace

TEST_CASE("a fault is a place and a line with a caret and what to write instead") {
    CHECK(render({fault_at("slump: 4 kg", 7, 4, 2)}) ==
          "test.yaml:1:8: error: wrong\n"
          "    1 | slump: 4 kg\n"
          "      |        ~~^~ right\n"
          "1 error in test.yaml; nothing was calculated\n");
}

TEST_CASE("a fault of the file as a whole has no line") {
    const Diagnostic fault{
        .file = "test.yaml", .message = "too large", .excerpt = "", .advice = "shorten it"};
    CHECK(render({fault}) == "test.yaml: error: too large\n"
                             "      shorten it\n"
                             "1 error in test.yaml; nothing was calculated\n");
}

TEST_CASE("without advice nothing follows the caret") {
    Diagnostic fault = fault_at("a: 1", 3, 1);
    fault.advice.clear();
    CHECK(excerpt(fault) == "    1 | a: 1\n      |    ^\n");
}

TEST_CASE("a warning is named and not counted as an error") {
    Diagnostic warning = fault_at("a: 1", 3, 1);
    warning.severity = Severity::warning;
    CHECK(render({warning}) == "test.yaml:1:4: warning: wrong\n"
                               "    1 | a: 1\n"
                               "      |    ^ right\n");
    CHECK_FALSE(has_errors({warning}));
    CHECK(has_errors({warning, fault_at("a: 1", 3, 1)}));
    CHECK_FALSE(has_errors({}));
}

TEST_CASE("the caret stands under its character") {
    struct Case {
        std::string text;
        std::size_t byte;
        std::size_t bytes;
        std::string printed;
        std::string line_below;
    };
    const auto [text, byte, bytes, printed, line_below] = GENERATE(values<Case>({
        {"größe: kg", 9, 2, "größe: kg", "       ^~"},
        {"水泥: kg", 8, 2, "水泥: kg", "      ^~"},        // two columns each
        {"a: 水泥", 3, 6, "a: 水泥", "   ^~~~"},           // as wide as what is wrong
        {"e\xCC\x81: kg", 5, 2, "e\xCC\x81: kg", "   ^~"}, // a combining accent has no width
        {"a:\tkg", 3, 2, "a: kg", "   ^~"},                // a tab is printed as a blank
        {"\xE2\x80\xAE"
         "a: kg",
         6, 2,
         "\\u202E"
         "a: kg",
         "         ^~"}, // as it is printed
    }));
    INFO(text);
    CHECK(excerpt(fault_at(text, byte, bytes)) ==
          "    1 | " + printed + "\n      | " + line_below + " right\n");
}

TEST_CASE("a long line is cut around its fault") {
    const std::string long_text(200, 'x');
    const auto [byte, shown, before] = GENERATE(table<std::size_t, std::string, std::size_t>({
        {0, std::string(90, 'x') + "...", 0},
        {89, std::string(90, 'x') + "...", 89}, // the last that the beginning shows
        // From here on the beginning is cut: a mark and 20 characters stand before the fault.
        {90, "..." + std::string(90, 'x') + "...", 23},
        {199, "..." + std::string(21, 'x'), 23},
    }));
    INFO(byte);
    CHECK(excerpt(fault_at(long_text, byte, 1)) ==
          "    1 | " + shown + "\n      | " + std::string(before, ' ') + "^ right\n");
}

TEST_CASE("an underline ends where the shown line ends") {
    const std::string below = excerpt(fault_at(std::string(200, 'x'), 80, 100));
    CHECK(below == "    1 | ..." + std::string(90, 'x') + "...\n      | " + std::string(23, ' ') +
                       "^" + std::string(69, '~') + " right\n");
}

TEST_CASE("what steers a terminal is printed as an escape") {
    Diagnostic fault = fault_at("a: \x1B[31m", 3, 1);
    fault.file = "\x1B[32m.yaml";
    fault.message = "'\xE2\x80\xAE' is wrong";
    fault.advice = "no \x07";
    CHECK(render({fault}) == "\\u001B[32m.yaml:1:4: error: '\\u202E' is wrong\n"
                             "    1 | a: \\u001B[31m\n"
                             "      |    ^~~~~~ no \\u0007\n"
                             "1 error in \\u001B[32m.yaml; nothing was calculated\n");
}

TEST_CASE("twenty faults are printed and the others counted") {
    const auto [count, ending] = GENERATE(table<std::size_t, std::string>({
        {1, "right\n1 error in test.yaml; nothing was calculated\n"},
        {2, "right\n2 errors in test.yaml; nothing was calculated\n"},
        {20, "right\n20 errors in test.yaml; nothing was calculated\n"},
        {21, "right\nand 1 more\n21 errors in test.yaml; nothing was calculated\n"},
        {35, "right\nand 15 more\n35 errors in test.yaml; nothing was calculated\n"},
    }));
    INFO(count);
    const std::string text = render(many(count));
    CHECK(text.ends_with(ending));
    std::size_t printed = 0;
    for (std::size_t at = 0; (at = text.find(": error: ", at)) != std::string::npos; ++at) {
        ++printed;
    }
    CHECK(printed == std::min<std::size_t>(count, 20));
}

TEST_CASE("line numbers stand right-aligned and may be long") {
    const auto [line, head] = GENERATE(table<std::size_t, std::string>({
        {9, "    9 | "},
        {12345, "12345 | "},
        {123456, "123456 | "},
    }));
    Diagnostic fault = fault_at("a: 1", 3, 1);
    fault.line = line;
    CHECK(excerpt(fault) ==
          head + "a: 1\n" + std::string(head.size() - 3, ' ') + " |    ^ right\n");
}

TEST_CASE("on a terminal a fault fits the window, its advice below where it has no room") {
    Diagnostic fault = fault_at("slump: 4 kg", 7, 4, 2);
    fault.message = "requirements.slump: kg is a mass, and a length is asked for here";
    fault.advice = "write a length with its unit, in inches or in millimetres";
    CHECK(render({fault}, "nothing was calculated", 60) ==
          "test.yaml:1:8: error: requirements.slump: kg is a mass,\n"
          "    and a length is asked for here\n"
          "    1 | slump: 4 kg\n"
          "      |        ~~^~\n"
          "        write a length with its unit, in inches or in\n"
          "        millimetres\n"
          "1 error in test.yaml; nothing was calculated\n");
}

TEST_CASE("no line of a fault is wider than the window") {
    const auto text = GENERATE(
        as<std::string>{}, std::string(300, 'x'), "title: " + std::string(90, 'y'),
        "砂利砂利砂利砂利砂利砂利砂利砂利砂利砂利砂利砂利砂利砂利砂利砂利砂利砂利砂利砂利: 1");
    const auto [line, width] = GENERATE(table<std::size_t, std::size_t>(
        {{1, 60}, {1, 73}, {1, 100}, {12345678, 60}, {12345678, 100}}));
    for (const std::size_t byte : {std::size_t{0}, std::size_t{48}, text.size() - 3}) {
        Diagnostic fault = fault_at(text, byte, 3);
        fault.line = line;
        const std::string rendered = render({fault}, "nothing was calculated", width);
        std::istringstream lines{rendered};
        for (std::string one; std::getline(lines, one);) {
            INFO(one);
            CHECK(boardmark::text::display_width(one) <= width);
        }
        CHECK(rendered.find('^') != std::string::npos);
    }
}
