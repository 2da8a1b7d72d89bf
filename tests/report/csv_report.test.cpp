#include "report/printed.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <string>
#include <vector>

using namespace boardmark;
using Catch::Matchers::WithinAbs;
using core::UnitSystem;
using test::Printed;

namespace {

using Cells = std::vector<std::string>;

/// Reads by RFC 4180 and nothing looser: lines end with CR LF, a quote inside a quoted cell is
/// doubled, a cell with a comma, a quote or a line end is quoted.
std::vector<Cells> read_csv(const std::string& text) {
    std::vector<Cells> rows{{""}};
    bool quoted = false;
    for (std::size_t at = 0; at < text.size(); ++at) {
        std::string& cell = rows.back().back();
        const char character = text[at];
        if (quoted) {
            if (character == '"' && at + 1 < text.size() && text[at + 1] == '"') {
                cell += text[at++];
            } else if (character == '"') {
                quoted = false;
                REQUIRE(at + 1 < text.size());
                REQUIRE((text[at + 1] == ',' || text[at + 1] == '\r'));
            } else {
                cell += character;
            }
        } else if (character == '"') {
            REQUIRE(cell.empty());
            quoted = true;
        } else if (character == ',') {
            rows.back().emplace_back();
        } else if (character == '\r') {
            REQUIRE(at + 1 < text.size());
            REQUIRE(text[at + 1] == '\n');
            ++at;
            rows.push_back({""});
        } else {
            REQUIRE(character != '\n');
            cell += character;
        }
    }
    REQUIRE_FALSE(quoted);
    REQUIRE(rows.back() == Cells{""}); // the last line ends too
    rows.pop_back();
    return rows;
}

void check_rectangle(const std::vector<Cells>& rows) {
    REQUIRE(rows.size() >= 2);
    for (const Cells& row : rows) {
        INFO(row.front());
        CHECK(row.size() == rows.front().size());
    }
}

std::vector<std::string> outputs(const Printed& printed) {
    return {printed.csv(UnitSystem::us), printed.csv(UnitSystem::si),
            printed.batch_csv(UnitSystem::us), printed.batch_csv(UnitSystem::si)};
}

} // namespace

TEST_CASE("every row has a cell for each column of the header whatever the names are") {
    const std::string name =
        GENERATE(as<std::string>{}, "sand", "sand, coarse", "3/4\" stone", "a\nb", "a\r\nb", "\"",
                 "\"\"", ",", "", " leading", "砂利", "=1+1", "a;b");
    INFO(name);
    for (const std::string& text : outputs(Printed{test::terrace}.rename(name, "t"))) {
        check_rectangle(read_csv(text));
    }
}

TEST_CASE("a name comes back from the CSV as it was") {
    const std::string name = GENERATE(as<std::string>{}, "sand", "sand, coarse", "3/4\" stone",
                                      "a\nb", "\"", ",", " leading", "砂利", "a=b", "a-b");
    INFO(name);
    for (const std::string& text : outputs(Printed{test::terrace}.rename(name, "t"))) {
        CHECK(read_csv(text)[2].front() == name + "a"); // header, water, first binder
    }
}

TEST_CASE("what a spreadsheet would run as a formula begins with an apostrophe") {
    const std::string name = GENERATE(as<std::string>{}, "=1+1", "+1", "-1", "@SUM(A1)", "\tx",
                                      "\rx", "=HYPERLINK(\"x.csv\",\"x\")");
    INFO(name);
    for (const std::string& text : outputs(Printed{test::terrace}.rename(name, "t"))) {
        CHECK(read_csv(text)[2].front() == "'" + name + "a");
    }
}

TEST_CASE("the header names each column once with its unit") {
    const Printed printed{test::terrace};
    for (const std::string& text : outputs(printed)) {
        const Cells header = read_csv(text).front();
        for (std::size_t i = 0; i < header.size(); ++i) {
            CHECK_FALSE(header[i].empty());
            CHECK(std::count(header.begin(), header.end(), header[i]) == 1);
        }
    }
    CHECK(printed.csv(UnitSystem::us).find("lb/yd3") != std::string::npos);
    CHECK(printed.csv(UnitSystem::us).find("kg") == std::string::npos);
    CHECK(printed.csv(UnitSystem::si).find("kg/m3") != std::string::npos);
    CHECK(printed.csv(UnitSystem::si).find("lb") == std::string::npos);
}

TEST_CASE("a CSV has a row for each ingredient and the masses of its system") {
    const Printed printed{test::terrace};
    const auto& ingredients = printed.result().proportions.ingredients;
    const auto us = read_csv(printed.csv(UnitSystem::us));
    const auto si = read_csv(printed.csv(UnitSystem::si));
    REQUIRE(us.size() == ingredients.size() + 1);
    REQUIRE(si.size() == ingredients.size() + 1);
    for (std::size_t i = 0; i < ingredients.size(); ++i) {
        INFO(ingredients[i].name);
        CHECK(us[i + 1][0] == ingredients[i].name);
        CHECK(us[i + 1][1] == std::string{core::name_of(ingredients[i].role)});
        CHECK_THAT(std::stod(si[i + 1][2]), WithinAbs(ingredients[i].kg_m3, 1e-9));
        // 1 lb/yd3 = 0.593276421257783 kg/m3; twelve digits are written
        const double lb_yd3 = ingredients[i].kg_m3 / 0.593276421257783;
        CHECK_THAT(std::stod(us[i + 1][2]), WithinAbs(lb_yd3, 1e-11 * lb_yd3));
    }
}
