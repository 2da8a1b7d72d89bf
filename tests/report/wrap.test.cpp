#include "report/writing/wrap.hpp"

#include <boardmark/text/utf8.hpp>

#include <catch2/catch.hpp>

#include <sstream>
#include <string>
#include <vector>

using namespace boardmark;
using report::lines_of;

namespace {

using Lines = std::vector<std::string>;

void check_fits(const Lines& lines, std::size_t width) {
    for (const std::string& line : lines) {
        INFO("'" << line << "'");
        CHECK(text::display_width(line) <= width);
        CHECK(text::first_invalid_byte(line) == std::nullopt);
    }
}

} // namespace

TEST_CASE("a text breaks between words at the width") {
    const auto [text, width, lines] = GENERATE(table<std::string, std::size_t, Lines>({
        {"", 10, {""}},
        {"sand", 10, {"sand"}},
        {"sand stone", 10, {"sand stone"}},
        {"sand stone", 9, {"sand", "stone"}},
        {"a b c d", 3, {"a b", "c d"}},
        {"  a   b  ", 10, {"a b"}},
        {"exactly ten!", 12, {"exactly ten!"}},
        {"砂利 砂利 砂利", 9, {"砂利 砂利", "砂利"}}, // each takes four columns
        {"b\xC3\xA9ton arm\xC3\xA9", 10, {"b\xC3\xA9ton arm\xC3\xA9"}},
    }));
    INFO(text << " at " << width);
    CHECK(lines_of(text, width) == lines);
}

TEST_CASE("a word that is wider than the width is broken so that the line fits") {
    const std::string word =
        GENERATE(as<std::string>{}, std::string(25, 'x'), "砂利砂利砂利砂利砂利砂利",
                 "see " + std::string(25, 'x') + " there");
    INFO(word);
    check_fits(lines_of(word, 10), 10);
}

TEST_CASE("a paragraph has its indents and fits the page") {
    const std::string long_text =
        "Fluid concrete pushes harder on the forms: above 7 in slump, and with a high-range water "
        "reducer, assume the full liquid head unless the formwork's designer has found otherwise.";
    CHECK(report::wrapped(long_text, {.first = "  - ", .other = "    "}) ==
          "  - Fluid concrete pushes harder on the forms: above 7 in slump, and with a high-range "
          "water\n    reducer, assume the full liquid head unless the formwork's designer has "
          "found otherwise.\n");
    CHECK(report::wrapped("short", {}) == "short\n");
}

TEST_CASE("colours take no room on the page") {
    const auto [text, width] = GENERATE(table<std::string, std::size_t>({
        {"", 0},
        {"holds", 5},
        {"\x1B[32mholds\x1B[0m", 5},
        {"\x1B[1;31mFAILS\x1B[0m", 5},
        {"砂\x1B[33m利\x1B[0m", 4},
    }));
    INFO(text);
    CHECK(report::shown_width(text) == width);
    CHECK(report::shown_width(report::padded_right(text, 8)) == 8);
    CHECK(report::shown_width(report::padded_left(text, 8)) == 8);
}

TEST_CASE("a text is filled up on the side that is asked and never cut") {
    CHECK(report::padded_right("sand", 6) == "sand  ");
    CHECK(report::padded_left("sand", 6) == "  sand");
    CHECK(report::padded_right("sand", 4) == "sand");
    CHECK(report::padded_left("sand", 2) == "sand");
    CHECK(report::padded_right("砂利", 6) == "砂利  ");
}
