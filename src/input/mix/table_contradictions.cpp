#include "table_contradictions.hpp"

#include "row_note.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <string>
#include <vector>

namespace boardmark::input {
namespace {

using core::PrintedRow;
using core::PrintedTable;

double cell_in(const PrintedTable& table, const PrintedRow& row, std::string_view column) {
    const auto found = std::ranges::find(table.columns, column, &core::PrintedColumn::name);
    const auto at = static_cast<std::size_t>(found - table.columns.begin());
    return at < row.cells.size() ? row.cells[at] : std::numeric_limits<double>::quiet_NaN();
}

/// What makes rows of other names the same one; empty: as many may stand there as like to.
std::string identity_of(std::string_view subject, const PrintedRow& row) {
    if (subject == "chloride") {
        const bool bars = note_of(row, "steel") == "bars";
        const std::string name{note_of(row, "class")};
        return "a limit " + std::string{bars ? "with" : "without"} + " bars" +
               (name.empty() ? "" : " of class '" + name + "'");
    }
    static constexpr std::string_view of_one_row[] = {"cement-most", "cement-by-size"};
    return std::ranges::count(of_one_row, subject) > 0 ? "its one row" : "";
}

class Contradictions {
public:
    Contradictions(const Node& tables, const TellFault& tell)
        : tables_{tables}
        , tell_{tell} {}

    void tell_of(const PrintedTable& table) {
        std::vector<std::string> seen;
        for (std::size_t i = 0; i < table.rows.size(); ++i) {
            const PrintedRow& row = table.rows[i];
            const Node& node = tables_.find(table.subject)->value.find("rows")->value.items[i];
            const std::string identity = identity_of(table.subject, row);
            if (!identity.empty() && std::ranges::count(seen, identity) > 0) {
                tell_(node, table.subject + ": " + identity + " stands twice",
                      "keep one: the other would count for nothing");
            }
            seen.push_back(identity);
            if (table.subject == "exposure") {
                tell_of_strength(table, row, node);
            } else if (table.subject == "additions") {
                tell_of_low_k(table, row, node);
            }
        }
    }

private:
    void tell_of_strength(const PrintedTable& table, const PrintedRow& row, const Node& node) {
        const bool as_figure = !std::isnan(cell_in(table, row, "min_strength_us")) ||
                               !std::isnan(cell_in(table, row, "min_strength_si"));
        if (as_figure && !note_of(row, "strength_class").empty()) {
            tell_(node, "row '" + row.name + "' has its strength as a class and as a figure",
                  "keep the one that the code prints");
        }
    }

    void tell_of_low_k(const PrintedTable& table, const PrintedRow& row, const Node& node) {
        const bool low = !std::isnan(cell_in(table, row, "low_k"));
        const bool where = !note_of(row, "low_k_in").empty();
        const bool from = !std::isnan(cell_in(table, row, "low_k_above"));
        if (low != where || (from && !low)) {
            tell_(node,
                  "row '" + row.name + "' has only a part of low_k, low_k_above and 'low_k_in'",
                  "write low_k and the categories where it counts, for example 'low_k_in: XC; "
                  "XF'; low_k_above where it does so only above a ratio");
        }
    }

    const Node& tables_;
    const TellFault& tell_;
};

} // namespace

void tell_contradictions(const core::PrintedCode& code, const Node& tables, const TellFault& tell) {
    Contradictions contradictions{tables, tell};
    for (const PrintedTable& table : code.tables) {
        contradictions.tell_of(table);
    }
}

} // namespace boardmark::input
