#include "report/writing/grid.hpp"

#include "report/writing/wrap.hpp"

#include <catch2/catch.hpp>

#include <sstream>
#include <string>
#include <vector>

using boardmark::report::Align;
using boardmark::report::Grid;
using boardmark::report::shown_width;

namespace {

std::vector<std::string> lines(const std::string& text) {
    std::vector<std::string> result;
    std::istringstream stream{text};
    for (std::string line; std::getline(stream, line);) {
        result.push_back(line);
    }
    return result;
}

/// The column of the terminal at which a text begins in a line.
std::size_t column_of(const std::string& line, const std::string& text) {
    const std::size_t at = line.find(text);
    REQUIRE(at != std::string::npos);
    return shown_width(line.substr(0, at));
}

} // namespace

TEST_CASE("columns line up left and right") {
    Grid grid{{Align::left, Align::right, Align::left}};
    grid.add({"water", "254", "30.4 gal"});
    grid.add({"stone", "1682", ""});
    grid.add({"air", "0", "6.0 %"});
    CHECK(grid.text() == "  water   254  30.4 gal\n"
                         "  stone  1682\n"
                         "  air       0  6.0 %\n");
}

TEST_CASE("the last column may stand at the right") {
    Grid grid{{Align::left, Align::right}};
    grid.add({"cement", "480"});
    grid.add({"total", "3877"});
    CHECK(grid.text() == "  cement   480\n"
                         "  total   3877\n");
}

TEST_CASE("wide letters and combining marks keep the columns in line") {
    Grid grid{{Align::left, Align::right, Align::left}};
    grid.add({"砂利", "1", "mark"});
    grid.add({"be\xCC\x81ton", "22", "mark"});
    grid.add({"plain name", "333", "mark"});
    const auto rows = lines(grid.text());
    REQUIRE(rows.size() == 3);
    for (const std::string& row : rows) {
        INFO(row);
        CHECK(column_of(row, "mark") == 19); // 2 + 10 + 2 + 3 + 2
    }
}

TEST_CASE("colours keep the columns in line") {
    Grid grid{{Align::left, Align::left, Align::left}};
    grid.add({"\x1B[1;31mFAILS\x1B[0m", "w_cm.exposure", "mark"});
    grid.add({"not checked", "finish", "mark"});
    for (const std::string& row : lines(grid.text())) {
        INFO(row);
        CHECK(column_of(row, "mark") == 2 + 11 + 2 + 13 + 2);
    }
}

TEST_CASE("the last column breaks over lines under itself") {
    Grid grid{{Align::left, Align::left}};
    std::string sentence;
    for (int i = 0; i < 30; ++i) {
        sentence += (i == 0 ? "word" : " word");
    }
    grid.add({"air.exposure", sentence});
    grid.add({"finish", "none"});
    const auto rows = lines(grid.text());
    REQUIRE(rows.size() == 3);
    CHECK(rows[0].size() <= 100);
    CHECK(rows[1].substr(0, 16) == std::string(16, ' '));
    CHECK(rows[1][16] == 'w');
    CHECK(rows[2] == "  finish        none");
}

TEST_CASE("no line of a grid ends with a space") {
    Grid grid{{Align::left, Align::left}};
    grid.add({"a", ""});
    grid.add({"long name", "x"});
    for (const std::string& row : lines(grid.text())) {
        CHECK_FALSE(row.ends_with(' '));
    }
}

TEST_CASE("a grid without rows is no text") {
    const Grid grid{{Align::left, Align::left}};
    CHECK(grid.text().empty());
}

TEST_CASE("on a narrow page a last column of words stands under its row") {
    Grid grid{{Align::left, Align::left, Align::left}};
    grid.head({"verdict", "check", "says"});
    grid.add({"not checked", "aggregate.reactivity", "evidence that the aggregates do not react"});
    CHECK(grid.text(50) == "  verdict      check\n"
                           "      says\n"
                           "  not checked  aggregate.reactivity\n"
                           "      evidence that the aggregates do not react\n");
    CHECK(grid.text(100).find("aggregate.reactivity  evidence") != std::string::npos);
}

TEST_CASE("columns that a narrow page cannot take go on below, names repeated") {
    Grid grid{{Align::left, Align::right, Align::right, Align::left}};
    grid.head({"", "found per yd3", "next per yd3", "note"});
    grid.add({"water", "278 lb", "256 lb", "less"});
    grid.add({"stone", "1647 lb", "1682 lb", ""});
    CHECK(grid.text(30) == "         found per yd3\n"
                           "  water         278 lb\n"
                           "  stone        1647 lb\n"
                           "\n"
                           "         next per yd3  note\n"
                           "  water        256 lb  less\n"
                           "  stone       1682 lb\n");
    CHECK(grid.natural_width() == 2 + 5 + 2 + 13 + 2 + 12 + 2 + 4);
}
