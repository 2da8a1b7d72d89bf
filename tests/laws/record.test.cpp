// Laws of the record: whatever is saved comes back, through the file and through CSV.

#include <boardmark/input/csv/read_rows.hpp>
#include <boardmark/record/record.hpp>
#include <boardmark/report/strength/record_report.hpp>

#include "laws/law.hpp"

#include <unistd.h>

#include <cmath>
#include <cstdio>
#include <filesystem>

using namespace boardmark;
using namespace boardmark::test;

namespace {

/// A text that a file may hold: not blank, no line ends; much of what CSV and SQL live on.
std::string any_text(const std::string& name) {
    const std::vector<std::string> pieces{"a", "7",  "\"", "'",    ",",  ";",  "=",
                                          "+", "-",  "@",  " ",    "\t", "--", "\xC3\xA9",
                                          "%", "\\", "/",  "NULL", "()", ":"};
    std::string text = "x";
    for (const int piece :
         *rc::gen::container<std::vector<int>>(rc::gen::inRange(0, 20)).as(name)) {
        text += pieces[static_cast<std::size_t>(piece)];
    }
    const bool front = perhaps(name + " begins with x");
    return (front ? text : text.substr(1) + "x").substr(0, 150);
}

/// A number of a range with all its digits, or nothing.
std::optional<double> any_number(double least, double most, const std::string& name) {
    if (!perhaps("has " + name)) {
        return std::nullopt;
    }
    const double low = between(0, 1, name);
    const double fine = between(0, 1, name + ", finer");
    return std::min(most, least + (most - least) * (low + fine / 7919));
}

std::string any_date() {
    const int month = *rc::gen::inRange(1, 13).as("month");
    const int day = *rc::gen::inRange(1, 29).as("day");
    char date[24];
    std::snprintf(date, sizeof date, "2026-%02d-%02d", month, day);
    return date;
}

template <class Row>
Row any_row(int number) {
    Row row;
    for (const auto& column : core::record_columns<Row>()) {
        const std::string name{column.key};
        if (column.kind == core::ColumnKind::date) {
            column.set(row, any_date());
        } else if (column.kind == core::ColumnKind::text) {
            column.set(row, column.required || perhaps("has " + name) ? any_text(name) : "");
        } else {
            const auto value = any_number(column.least, column.most, name);
            column.set(row, column.required && !value ? std::optional{column.most} : value);
        }
    }
    const auto& first = core::record_columns<Row>().front();
    first.set(row, std::get<std::string>(first.of(row)) + std::to_string(number));
    return row;
}

template <class Row>
std::vector<Row> any_rows() {
    std::vector<Row> rows;
    const int count = *rc::gen::inRange(1, 5).as("rows");
    for (int i = 0; i < count; ++i) {
        rows.push_back(any_row<Row>(i));
    }
    return rows;
}

/// Every row is there with the same bits, whatever the order.
template <class Row>
void demand_rows(const std::vector<Row>& found, const std::vector<Row>& wanted) {
    RC_ASSERT(found.size() == wanted.size());
    const auto columns = core::record_columns<Row>();
    for (const Row& row : wanted) {
        const auto same_row = std::find_if(found.begin(), found.end(), [&](const Row& other) {
            return columns.front().of(other) == columns.front().of(row);
        });
        RC_ASSERT(same_row != found.end());
        for (const auto& column : columns) {
            RC_ASSERT(column.of(*same_row) == column.of(row));
        }
    }
}

template <class Row>
std::vector<Row> through_csv(const std::vector<Row>& rows) {
    const std::string written =
        report::csv(report::RecordList<Row>{"quay.record", rows}, core::UnitSystem::si);
    const auto reading = input::read_rows(written, "rows.csv");
    if (!reading.sound) {
        RC_FAIL(written + input::render(reading.diagnostics));
    }
    if constexpr (std::is_same_v<Row, core::RecordedTrial>) {
        return reading.trials;
    } else {
        return reading.specimens;
    }
}

} // namespace

TEST_CASE("rows come back from CSV to the last bit") {
    holds([] {
        const auto trials = any_rows<core::RecordedTrial>();
        demand_rows(through_csv(trials), trials);
        const auto specimens = any_rows<core::RecordedSpecimen>();
        demand_rows(through_csv(specimens), specimens);
    });
}

TEST_CASE("rows come back from a record to the last bit, and once saved are there") {
    const auto path = std::filesystem::temp_directory_path() /
                      ("boardmark-law-" + std::to_string(::getpid()) + ".record");
    holds([&] {
        std::filesystem::remove(path);
        const record::Addition addition{.file = any_text("file"),
                                        .kind = "csv",
                                        .reporting = core::UnitSystem::us,
                                        .trials = any_rows<core::RecordedTrial>(),
                                        .specimens = any_rows<core::RecordedSpecimen>()};
        const std::size_t count = addition.trials.size() + addition.specimens.size();
        RC_ASSERT(record::add(path, addition).saved == count);
        const auto contents = record::read(path);
        demand_rows(contents.trials, addition.trials);
        demand_rows(contents.specimens, addition.specimens);
        RC_ASSERT(contents.files.front().name == addition.file);
        const auto again = record::add(path, addition);
        RC_ASSERT(again.already_there == count);
        RC_ASSERT(again.conflicts.empty());
    });
    std::filesystem::remove(path);
}
