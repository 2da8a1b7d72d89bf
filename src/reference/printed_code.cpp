#include "printed_code.hpp"

#include "code_tables.hpp"
#include "site_rules.hpp"

#include <algorithm>
#include <deque>
#include <limits>
#include <string>
#include <vector>

namespace boardmark::reference {
namespace {

constexpr std::string_view prefix = "own";

core::Confidence confidence_of(bool from_memory) {
    return from_memory ? core::Confidence::from_memory : core::Confidence::read;
}

/// Holds what the tables, which are views, refer to.
class Views {
public:
    explicit Views(const core::PrintedCode& code) {
        for (const core::PrintedTable& table : code.tables) {
            add(code, table);
        }
    }

    void borrow(const EmbeddedTable& table, std::string_view subject) {
        tables_.push_back(table);
        tables_.back().name = name_of(subject);
    }

    bool has(std::string_view subject) const {
        const std::string name = std::string{prefix} + "-" + std::string{subject};
        return std::ranges::count(tables_, name, &EmbeddedTable::name) > 0;
    }

    const std::vector<EmbeddedTable>& tables() const { return tables_; }

private:
    std::string_view name_of(std::string_view subject) {
        return names_.emplace_back(std::string{prefix} + "-" + std::string{subject});
    }

    EmbeddedRow row_of(const core::PrintedCode& code, const core::PrintedRow& printed) {
        constexpr double nowhere = std::numeric_limits<double>::quiet_NaN();
        auto& notes = notes_.emplace_back();
        for (const auto& [name, text] : printed.notes) {
            notes.push_back({name, text});
        }
        return {.name = printed.name,
                .group = printed.group,
                .from_us = nowhere,
                .to_us = nowhere,
                .from_si = nowhere,
                .to_si = nowhere,
                .cells = printed.cells,
                .source = {code.name, printed.citation, confidence_of(printed.from_memory)},
                .notes = notes};
    }

    void add(const core::PrintedCode& code, const core::PrintedTable& table) {
        auto& columns = columns_.emplace_back();
        for (const core::PrintedColumn& column : table.columns) {
            columns.push_back({column.name, column.at_mm, column.at_mm});
        }
        auto& rows = rows_.emplace_back();
        for (const core::PrintedRow& row : table.rows) {
            rows.push_back(row_of(code, row));
        }
        tables_.push_back({name_of(table.subject),
                           "",
                           {code.name, table.citation, confidence_of(table.from_memory)},
                           columns,
                           rows});
    }

    std::deque<std::string> names_;
    std::deque<std::vector<EmbeddedNote>> notes_;
    std::deque<std::vector<EmbeddedColumn>> columns_;
    std::deque<std::vector<EmbeddedRow>> rows_;
    std::vector<EmbeddedTable> tables_;
};

/// A table of data/ for one that the file leaves out.
void borrow_missing(Views& views, std::string_view subject, std::string_view name) {
    const auto tables = embedded_tables();
    const auto found = std::ranges::find(tables, name, &EmbeddedTable::name);
    if (!views.has(subject) && found != tables.end()) {
        views.borrow(*found, subject);
    }
}

} // namespace

core::CodeTables code_of_print(const core::PrintedCode& code, core::UnitSystem system) {
    Views views{code};
    const bool has_sizes = views.has("aggregate-size");
    const std::string first = embedded_codes().front().prefix;
    borrow_missing(views, "aggregate-size", first + "-aggregate-size");
    borrow_missing(views, "strength-class", "en206-strength-class");
    const CodeData data{views.tables(), std::string{prefix}};
    core::CodeTables tables = code_tables(data, system, site_rules(data));
    tables.size.borrowed = !has_sizes;
    tables.of_user = true;
    if (code_note(data, "additions").empty()) {
        tables.binder.all_counts = core::Source{}; // nowhere said
    }
    return tables;
}

} // namespace boardmark::reference
