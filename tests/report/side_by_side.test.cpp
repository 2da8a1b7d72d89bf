// Tables of many columns: they line up, and go on below where the page ends.

#include "report/writing/side_by_side.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "report/writing/wrap.hpp"

#include <catch2/catch.hpp>

#include <sstream>

using boardmark::report::SideBySide;

TEST_CASE("columns line up to the right under their heads, headings stand apart") {
    SideBySide table("", {"one", "two"});
    table.add_heading("amounts");
    table.add("water", {"1.5 lb", "20 lb"});
    table.add("air", {"-", ""});
    CHECK(table.text() == "            one     two\n"
                          "\n"
                          "  amounts\n"
                          "  water  1.5 lb   20 lb\n"
                          "  air         -\n");
}

TEST_CASE("columns that the page cannot take go on in a block below, names repeated") {
    const std::string cell(12, 'x');
    SideBySide table("", std::vector<std::string>(9, cell));
    table.add("a name of twenty....", std::vector<std::string>(9, cell));
    std::istringstream lines(table.text());
    std::size_t cells = 0;
    std::size_t names = 0;
    for (std::string line; std::getline(lines, line);) {
        CHECK(line.size() <= 100);
        for (std::size_t at = line.find(cell); at != std::string::npos;
             at = line.find(cell, at + cell.size())) {
            ++cells;
        }
        names += line.find("a name") != std::string::npos ? 1 : 0;
    }
    CHECK(cells == 18);
    CHECK(names == 2);
}

TEST_CASE("one column is shown however wide") {
    SideBySide table("", {std::string(120, 'x')});
    CHECK(table.text().find(std::string(120, 'x')) != std::string::npos);
}
