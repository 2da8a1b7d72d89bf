#include <boardmark/text/utf8.hpp>
#include <boardmark/text/wrap.hpp>

#include <catch2/catch.hpp>

#include <sstream>
#include <string>
#include <vector>

using namespace boardmark;
using text::lines_of;

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
        {"exactly ten! more", 12, {"exactly ten!", "more"}}, // no empty line before a full one
        {"unbreakable", 5, {"unbre", "akabl", "e"}},
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
    CHECK(text::wrapped(long_text, {.first = "  - ", .other = "    "}, 100) ==
          "  - Fluid concrete pushes harder on the forms: above 7 in slump, and with a high-range "
          "water\n    reducer, assume the full liquid head unless the formwork's designer has "
          "found otherwise.\n");
    CHECK(text::wrapped("short", {}, 100) == "short\n");
}

// "  - FAILS: " takes 11 columns, "    " 4: 19 are left of 30 on the first line, 26 on the others.
TEST_CASE("a first indent that is wider than the others leaves its line less room") {
    const text::Indent indent{.first = "  - FAILS: ", .other = "    "};
    CHECK(text::wrapped("forms bear 850 psf by design", indent, 30) ==
          "  - FAILS: forms bear 850 psf\n    by design\n");
    CHECK(text::wrapped("forms bear 850 psf, no more", indent, 29) ==
          "  - FAILS: forms bear 850\n    psf, no more\n");
    CHECK(text::wrapped("four words just fit it", indent, 33) ==
          "  - FAILS: four words just fit it\n");
    CHECK(text::wrapped(std::string(24, 'x'), indent, 30) ==
          "  - FAILS: " + std::string(19, 'x') + "\n    " + std::string(5, 'x') + "\n");
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
    CHECK(boardmark::text::shown_width(text) == width);
    CHECK(boardmark::text::shown_width(boardmark::text::padded_right(text, 8)) == 8);
    CHECK(boardmark::text::shown_width(boardmark::text::padded_left(text, 8)) == 8);
}

TEST_CASE("a text is filled up on the side that is asked and never cut") {
    CHECK(boardmark::text::padded_right("sand", 6) == "sand  ");
    CHECK(boardmark::text::padded_left("sand", 6) == "  sand");
    CHECK(boardmark::text::padded_right("sand", 4) == "sand");
    CHECK(boardmark::text::padded_left("sand", 2) == "sand");
    CHECK(boardmark::text::padded_right("砂利", 6) == "砂利  ");
}

TEST_CASE("lines that are too wide are broken, the others stand as they are") {
    const auto [written, fitted] = GENERATE(table<std::string, std::string>({
        {"", ""},
        {"no end", "no end\n"},
        {"a narrow line\n\n", "a narrow line\n\n"},
        {"  1.  twenty-four columns for it\n", "  1.  twenty-four columns for it\n"},
        // an indent stands before what is broken off
        {"twelve words of one line are broken behind forty\n",
         "twelve words of one line are broken\n    behind forty\n"},
        // columns stay columns
        {"  --out FILE  write the result to a file of its own\n",
         "  --out FILE  write the result to a file\n              of its own\n"},
        // a first column that leaves no room is a word like others
        {"  --format text|json|csv|html  form of the result\n",
         "  --format text|json|csv|html form\n      of the result\n"},
    }));
    INFO(written);
    CHECK(text::fitted(written, 40) == fitted);
}
