#include "reference/embedded_table.hpp"

#include "reference/lookup.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <map>
#include <set>
#include <string>
#include <vector>

using namespace boardmark;
using namespace boardmark::reference;

namespace {

/// The names under `works:` of data/sources.yaml, in file order.
std::vector<std::string> listed_works() {
    const auto path = std::filesystem::path{BOARDMARK_DATA} / "sources.yaml";
    std::ifstream file{path};
    REQUIRE(file);
    const std::string key = "- name: ";
    std::vector<std::string> works;
    for (std::string line; std::getline(file, line);) {
        if (const std::size_t at = line.find(key); at != std::string::npos) {
            works.push_back(line.substr(at + key.size()));
        }
    }
    return works;
}

void check_source(const EmbeddedSource& source, const std::set<std::string>& works) {
    CHECK(works.contains(std::string{source.work}));
    // A rule of the trade names no work, and what names no work is a rule of the trade.
    const bool of_the_trade = source.work == "common practice, no source";
    CHECK((source.confidence == core::Confidence::common_practice) == of_the_trade);
    CHECK((source.citation == source.work) == of_the_trade); // else the place stands behind it
    CHECK(source.citation.starts_with(source.work));
}

/// An axis that a system has at all is whole and increases.
void check_axis(const std::vector<double>& axis, const std::string& what) {
    INFO(what);
    const auto missing = std::ranges::count_if(axis, [](double at) { return std::isnan(at); });
    CHECK((missing == 0 || missing == static_cast<std::ptrdiff_t>(axis.size())));
    for (std::size_t i = 1; i < axis.size() && missing == 0; ++i) {
        CHECK(axis[i] > axis[i - 1]);
    }
}

} // namespace

TEST_CASE("the list of works names each work once") {
    const auto works = listed_works();
    REQUIRE_FALSE(works.empty());
    CHECK(std::set<std::string>(works.begin(), works.end()).size() == works.size());
}

TEST_CASE("every listed work is cited by a table") {
    std::set<std::string> cited;
    for (const EmbeddedTable& table : embedded_tables()) {
        cited.emplace(table.source.work);
        for (const EmbeddedRow& row : table.rows) {
            cited.emplace(row.source.work);
        }
    }
    for (const std::string& work : listed_works()) {
        INFO(work);
        CHECK(cited.contains(work));
    }
}

TEST_CASE("every table and every row has a source among the listed works") {
    const auto list = listed_works();
    const std::set<std::string> works(list.begin(), list.end());
    for (const EmbeddedTable& table : embedded_tables()) {
        INFO(table.name);
        CHECK_FALSE(table.title.empty());
        check_source(table.source, works);
        for (const EmbeddedRow& row : table.rows) {
            INFO("row '" << row.name << "' " << row.group << " " << row.from_us);
            check_source(row.source, works);
        }
    }
}

TEST_CASE("no two tables have one name") {
    std::set<std::string> names;
    REQUIRE_FALSE(embedded_tables().empty());
    for (const EmbeddedTable& table : embedded_tables()) {
        INFO(table.name);
        CHECK(names.emplace(table.name).second);
    }
}

TEST_CASE("every file of the data folder is embedded") {
    const auto folder = std::filesystem::path{BOARDMARK_DATA};
    std::set<std::string> files;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        if (entry.path().extension() == ".yaml" && entry.path().stem() != "sources") {
            files.insert(entry.path().stem());
        }
    }
    std::set<std::string> embedded;
    for (const EmbeddedTable& table : embedded_tables()) {
        embedded.emplace(table.name);
    }
    CHECK(embedded == files);
}

TEST_CASE("every table is a full rectangle and no row is empty") {
    for (const EmbeddedTable& table : embedded_tables()) {
        INFO(table.name);
        CHECK_FALSE(table.rows.empty());
        REQUIRE_FALSE(table.columns.empty());
        for (const EmbeddedRow& row : table.rows) {
            INFO("row '" << row.name << "' " << row.group << " " << row.from_us);
            CHECK(row.cells.size() == table.columns.size());
            // A row without a figure says so itself: its class asks nothing.
            CHECK((note(row, "asks") == "nothing" ||
                   std::ranges::any_of(row.cells, [](double cell) { return !std::isnan(cell); })));
            CHECK(std::ranges::none_of(row.cells, [](double cell) { return std::isinf(cell); }));
        }
    }
}

TEST_CASE("a column is named or stands at a value and never both") {
    for (const EmbeddedTable& table : embedded_tables()) {
        INFO(table.name);
        std::set<std::string> names;
        for (const EmbeddedColumn& column : table.columns) {
            const bool at_a_value = !std::isnan(column.at_us) || !std::isnan(column.at_si);
            INFO("column '" << column.name << "' " << column.at_us << " " << column.at_si);
            CHECK(at_a_value == column.name.empty());
            if (!column.name.empty()) {
                CHECK(names.emplace(column.name).second);
            }
        }
    }
}

TEST_CASE("the axis of the columns increases in both systems") {
    for (const EmbeddedTable& table : embedded_tables()) {
        std::vector<double> us;
        std::vector<double> si;
        for (const EmbeddedColumn& column : table.columns) {
            us.push_back(column.at_us);
            si.push_back(column.at_si);
        }
        check_axis(us, std::string{table.name} + " us");
        check_axis(si, std::string{table.name} + " si");
    }
}

TEST_CASE("the axis of the rows increases in both systems") {
    for (const EmbeddedTable& table : embedded_tables()) {
        std::map<std::string, std::vector<double>> axes;
        for (const EmbeddedRow& row : table.rows) {
            const std::string group{row.group};
            axes["us from " + group].push_back(row.from_us);
            axes["us to " + group].push_back(row.to_us);
            axes["si from " + group].push_back(row.from_si);
            axes["si to " + group].push_back(row.to_si);
        }
        for (const auto& [group, axis] : axes) {
            check_axis(axis, std::string{table.name} + " " + group);
        }
    }
}

TEST_CASE("a range of a row does not end before it begins and overlaps no other of its group") {
    for (const EmbeddedTable& table : embedded_tables()) {
        std::map<std::string, double> end_us;
        std::map<std::string, double> end_si;
        for (const EmbeddedRow& row : table.rows) {
            INFO(table.name << " row '" << row.name << "' " << row.group << " " << row.from_us);
            CHECK_FALSE(row.to_us < row.from_us);
            CHECK_FALSE(row.to_si < row.from_si);
            CHECK(std::isnan(row.from_us) == std::isnan(row.to_us));
            CHECK(std::isnan(row.from_si) == std::isnan(row.to_si));
            const std::string group{row.group};
            if (const auto before = end_us.find(group); before != end_us.end()) {
                CHECK_FALSE(row.from_us <= before->second);
            }
            if (const auto before = end_si.find(group); before != end_si.end()) {
                CHECK_FALSE(row.from_si <= before->second);
            }
            end_us[group] = row.to_us;
            end_si[group] = row.to_si;
        }
    }
}

TEST_CASE("a row is named or stands at a value and no two are alike") {
    for (const EmbeddedTable& table : embedded_tables()) {
        std::set<std::pair<std::string, std::string>> names;
        for (const EmbeddedRow& row : table.rows) {
            INFO(table.name << " row '" << row.name << "' " << row.group << " " << row.from_us);
            CHECK(row.name.empty() != std::isnan(row.from_us));
            if (!row.name.empty()) {
                CHECK(names.emplace(row.name, row.group).second);
            }
        }
    }
}

TEST_CASE("both systems print the same sizes and strengths within a tenth") {
    // 3/8 in and 9.5 mm, 1 1/2 in and 37.5 mm, 2000 psi and 15 MPa: twins of the print differ by a
    // few percent; a slip of unit or place would differ by far more.
    for (const EmbeddedTable& table : embedded_tables()) {
        for (const EmbeddedColumn& column : table.columns) {
            if (std::isnan(column.at_us) || std::isnan(column.at_si)) {
                continue;
            }
            INFO(table.name << " column " << column.at_us << " and " << column.at_si);
            CHECK(std::abs(column.at_us / column.at_si - 1) < 0.1);
        }
        for (const EmbeddedRow& row : table.rows) {
            if (std::isnan(row.from_us) || std::isnan(row.from_si)) {
                continue;
            }
            INFO(table.name << " row " << row.from_us << " and " << row.from_si);
            CHECK(std::abs(row.from_us / row.from_si - 1) < 0.1);
        }
    }
}
