#include "typed_tables.hpp"

#include <boardmark/units/number.hpp>
#include <boardmark/units/quantity.hpp>

#include "reference/embedded_table.hpp"
#include "reference/lookup.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <set>
#include <string>
#include <utility>
#include <vector>

using namespace boardmark;
using namespace boardmark::reference;

namespace {

const std::vector<typed::Table>& typed_tables() {
    static const auto all = typed::tables(BOARDMARK_TYPED);
    return all;
}

const EmbeddedTable& embedded(const std::string& name) {
    const auto found = std::ranges::find(embedded_tables(), name, &EmbeddedTable::name);
    INFO("no table '" << name << "' in data/");
    REQUIRE(found != embedded_tables().end());
    return *found;
}

/// A bare number in the unit given, or a quantity, as an inside value; a dash is a gap.
double value_of(std::string text, const std::string& unit) {
    if (text == "-") {
        return std::numeric_limits<double>::quiet_NaN();
    }
    if (text.ends_with('*')) {
        text.pop_back();
    }
    if (const auto bare = units::read_number(text); std::holds_alternative<double>(bare)) {
        if (unit.empty()) {
            return std::get<double>(bare);
        }
        text += " " + unit;
    }
    const auto read = units::read_quantity(text);
    INFO("'" << text << "' cannot be read");
    REQUIRE(std::holds_alternative<units::Quantity>(read));
    return std::get<units::Quantity>(read).inside();
}

bool same(double typed, double embedded) {
    if (std::isnan(typed) || std::isnan(embedded)) {
        return std::isnan(typed) && std::isnan(embedded);
    }
    return std::abs(typed - embedded) <= 1e-12 * std::max(1.0, std::abs(typed));
}

bool stands_at(const EmbeddedRow& row, const std::string& place) {
    if (place.empty()) {
        return std::isnan(row.from_us) && std::isnan(row.from_si);
    }
    auto us = typed::parts(place, " & ");
    const std::string of_si = us.size() == 2 ? us[1] : us[0];
    const auto from_to_us = typed::parts(us[0], " to ");
    const auto from_to_si = typed::parts(of_si, " to ");
    return same(value_of(from_to_us.front(), ""), row.from_us) &&
           same(value_of(from_to_us.back(), ""), row.to_us) &&
           same(value_of(from_to_si.front(), ""), row.from_si) &&
           same(value_of(from_to_si.back(), ""), row.to_si);
}

const EmbeddedRow* row_of(const EmbeddedTable& table, const typed::Row& typed) {
    const auto found = std::ranges::find_if(table.rows, [&](const EmbeddedRow& row) {
        return row.name == typed.name && row.group == typed.group && stands_at(row, typed.place);
    });
    return found == table.rows.end() ? nullptr : &*found;
}

void check_columns(const typed::Table& typed, const EmbeddedTable& table) {
    if (typed.axes.empty()) {
        std::vector<std::string> names;
        for (const EmbeddedColumn& column : table.columns) {
            names.emplace_back(column.name);
        }
        CHECK(names == typed.columns);
        return;
    }
    const auto check_axis = [&](const std::string& system, double EmbeddedColumn::*at) {
        const auto one = typed.axes.find(system);
        const auto both = typed.axes.find("both");
        const auto& axis = one == typed.axes.end() ? both : one;
        for (std::size_t i = 0; i < table.columns.size(); ++i) {
            INFO(system << " column " << i);
            const double place = table.columns[i].*at;
            CHECK((axis == typed.axes.end()
                       ? std::isnan(place)
                       : i < axis->second.size() && same(value_of(axis->second[i], ""), place)));
        }
    };
    check_axis("us", &EmbeddedColumn::at_us);
    check_axis("si", &EmbeddedColumn::at_si);
}

void check_row(const typed::Table& typed, const typed::Row& typed_row, const EmbeddedTable& table) {
    INFO(typed_row.line);
    const EmbeddedRow* row = row_of(table, typed_row);
    REQUIRE(row);
    REQUIRE(row->cells.size() == typed_row.cells.size());
    for (std::size_t i = 0; i < row->cells.size(); ++i) {
        const bool own = i < typed.units.size() && !typed.units[i].empty();
        const bool differs = typed_row.cells[i].starts_with('~');
        INFO("cell " << i + 1 << " of data/: " << row->cells[i]);
        const double printed =
            value_of(typed_row.cells[i].substr(differs ? 1 : 0), own ? typed.units[i] : typed.unit);
        CHECK(same(printed, row->cells[i]) != differs);
    }
    for (const auto& [name, text] : typed_row.notes) {
        CHECK(note(*row, name) == text);
    }
}

/// A table that only counts its rows: how they stand, no figure.
bool only_counts(const EmbeddedTable& table) {
    return table.columns.size() == 1 && table.columns.front().name == "order";
}

} // namespace

TEST_CASE("every figure of data/ is the one typed a second time from its print") {
    for (const typed::Table& typed : typed_tables()) {
        CHECK_FALSE(typed.source.empty());
        for (const std::string& name : typed.names) {
            INFO(name << ": " << typed.source);
            const EmbeddedTable& table = embedded(name);
            check_columns(typed, table);
            for (const typed::Row& row : typed.rows) {
                check_row(typed, row, table);
            }
        }
    }
}

TEST_CASE("no row of data/ with a figure is without its second copy") {
    std::map<std::string, std::set<const EmbeddedRow*>> held;
    std::set<std::pair<const EmbeddedRow*, std::string>> from_print;
    for (const typed::Table& typed : typed_tables()) {
        for (const std::string& name : typed.names) {
            for (const typed::Row& row : typed.rows) {
                const EmbeddedRow* held_row = row_of(embedded(name), row);
                held[name].insert(held_row);
                CHECK(from_print.emplace(held_row, typed.source).second); // once from each print
            }
        }
    }
    for (const EmbeddedTable& table : embedded_tables()) {
        for (const EmbeddedRow& row : table.rows) {
            INFO(table.name << " '" << row.name << "' " << row.group);
            const bool figures =
                std::ranges::any_of(row.cells, [](double cell) { return !std::isnan(cell); });
            CHECK((!figures || only_counts(table) || held[std::string{table.name}].contains(&row)));
        }
    }
}

TEST_CASE("a table that only counts its rows counts them one by one in each group") {
    for (const EmbeddedTable& table : embedded_tables()) {
        std::map<std::string_view, double> last;
        for (const EmbeddedRow& row : table.rows) {
            if (only_counts(table)) {
                INFO(table.name << " '" << row.name << "' " << row.group);
                CHECK(row.cells.front() == ++last[row.group]);
            }
        }
    }
}
