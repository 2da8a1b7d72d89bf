// What an own code's file may print, kept a second time in code_forms.list: each column with what
// its figures measure and from where to where they may be, each row and each note with its words.
// The ranges are wide, common practice, no source: they part a figure from one in another unit.

#include "input/mix/note_words.hpp"
#include "input/mix/table_figure.hpp"
#include "input/mix/table_form.hpp"

#include <catch2/catch.hpp>
#include <fmt/format.h>
#include <fmt/ranges.h>

#include <cmath>
#include <fstream>
#include <optional>
#include <string>
#include <variant>
#include <vector>

using namespace boardmark;
using input::FigureForm;
using Lines = std::vector<std::string>;

namespace {

std::string described(const FigureForm& form) {
    const std::string_view dimension = units::describe(form.dimension);
    return fmt::format("{}, {} to {}", dimension.substr(0, dimension.find(" (")), form.least,
                       form.most);
}

std::string described(const input::NoteForm& note) {
    const std::string words = fmt::format("{}", fmt::join(note.words, " | "));
    switch (note.text) {
    case input::NoteText::free:
        return "any text";
    case input::NoteText::word:
        return "one of " + words;
    case input::NoteText::words_or:
        return "some of " + words;
    case input::NoteText::whole_days:
        return "whole days";
    }
    return "";
}

void add_row(const std::string& table, const input::RowForm& row, Lines& lines) {
    lines.push_back(fmt::format("{} row {}{}{}{}", table, row.name, row.needed ? ", needed" : "",
                                row.beside.empty() ? "" : fmt::format(", with {}", row.beside),
                                row.figure ? ": " + described(*row.figure) : ""));
}

void add_column(const std::string& table, const input::ColumnForm& column, Lines& lines) {
    lines.push_back(fmt::format("{} column {}{}: {}", table, column.name,
                                column.needed ? ", needed" : "", described(column.figure)));
    if (column.by_concrete) {
        lines.push_back(fmt::format("{} column {}, by the concrete: {}", table, column.name,
                                    described(*column.by_concrete)));
    }
}

Lines lines_of(const input::TableForm& form) {
    const std::string table{form.subject};
    Lines lines{fmt::format("{}{}{}", table, form.has_groups ? ", in groups" : "",
                            form.in_turn ? ", in turn" : "")};
    if (form.by_size) {
        lines.push_back(table + " by size of stone: " + described(*form.by_size));
    }
    for (const input::ColumnForm& column : form.columns) {
        add_column(table, column, lines);
    }
    for (const input::RowForm& row : form.rows) {
        add_row(table, row, lines);
    }
    for (const input::NoteForm& note : form.notes) {
        lines.push_back(fmt::format("{} note {}: {}", table, note.name, described(note)));
    }
    return lines;
}

Lines kept() {
    std::ifstream list{BOARDMARK_SOURCE "/tests/input/code_forms.list"};
    Lines lines;
    for (std::string line; std::getline(list, line);) {
        lines.push_back(line);
    }
    return lines;
}

bool is_taken(double value, const FigureForm& form) {
    const auto read = input::read_figure(fmt::format("{:.17g} MPa", value), "", form);
    return std::holds_alternative<double>(read);
}

std::optional<input::FigureFault> fault_of_age(const std::string& written) {
    return input::fault_of_note(written, {"strength_age", {}, input::NoteText::whole_days});
}

} // namespace

TEST_CASE("the tables of an own code are of the forms that are kept beside") {
    Lines told;
    for (const input::TableForm& form : input::table_forms()) {
        const Lines more = lines_of(form);
        told.insert(told.end(), more.begin(), more.end());
    }
    CHECK(told == kept());
}

TEST_CASE("a form takes what lies within its ends, both included") {
    const FigureForm form{units::Dimension::stress, 1, 250};
    CHECK(is_taken(1, form));
    CHECK(is_taken(250, form));
    CHECK_FALSE(is_taken(std::nextafter(1.0, 0.0), form));
    CHECK_FALSE(is_taken(std::nextafter(250.0, 300.0), form));
}

TEST_CASE("a unit of a column is one that is known and measures what the column holds") {
    const FigureForm form{units::Dimension::mass_per_volume, 0, 1000};
    CHECK_FALSE(input::fault_of_unit("", form));
    CHECK_FALSE(input::fault_of_unit("lb/yd3", form));
    const auto unknown = input::fault_of_unit("stone/yd3", form);
    REQUIRE(unknown);
    CHECK(unknown->message == "'stone/yd3' is not a unit known here");
    const auto other = input::fault_of_unit("MPa", form);
    REQUIRE(other);
    CHECK(other->message == "'MPa' is a stress (psi, MPa); a mass per volume (lb/ft3, lb/yd3, "
                            "kg/m3) is expected");
}

TEST_CASE("an age of strength is one in whole days, from a day to a year") {
    for (const char* age : {"1 d", "28 d", "365 d"}) {
        INFO(age);
        CHECK_FALSE(fault_of_age(age));
    }
    for (const char* age : {"0 d", "366 d", "28", "28.5 d", "4 weeks", "028 d", "28 d d"}) {
        INFO(age);
        CHECK(fault_of_age(age));
    }
}

TEST_CASE("of words joined by 'or' each is one of the list") {
    constexpr std::string_view words[] = {"open", "no", "yes"};
    const input::NoteForm form{"deicer", words, input::NoteText::words_or};
    CHECK_FALSE(input::fault_of_note("yes", form));
    CHECK_FALSE(input::fault_of_note("open or no", form));
    CHECK_FALSE(input::fault_of_note("open or no or yes", form));
    CHECK(input::fault_of_note("open or", form));
    CHECK(input::fault_of_note("open or ", form));
    CHECK(input::fault_of_note("or no", form));
    CHECK(input::fault_of_note("no, yes", form));
    CHECK(input::fault_of_note("yes or never", form));
}
