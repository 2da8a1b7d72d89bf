#pragma once

#include <boardmark/units/dimension.hpp>

#include <optional>
#include <span>
#include <string_view>

namespace boardmark::input {

/// What a figure measures, and from where to where it may be in the inside unit. Shares and ratios
/// are mass ratios: a bare number and '%', a hundredth, write them too. All others need a unit.
struct FigureForm {
    units::Dimension dimension;
    double least;
    double most;
};

struct ColumnForm {
    std::string_view name;
    FigureForm figure;
    bool needed = false;
    std::optional<FigureForm> by_concrete = {}; ///< where the code counts chloride by concrete
};

/// How a note beside a row is written.
enum class NoteText {
    free,
    word,       ///< one of a list
    words_or,   ///< one of a list or several: "spray or tidal"
    whole_days, ///< "28 d"
};

struct NoteForm {
    std::string_view name;
    std::span<const std::string_view> words = {};
    NoteText text = NoteText::free;
};

/// A row that a table may have, where the program knows its rows by name.
struct RowForm {
    std::string_view name;
    std::optional<FigureForm> figure = {}; ///< in place of the columns'
    bool needed = false;
    std::string_view beside = {}; ///< a row without which it says nothing
};

/// The form of one table of a code.
struct TableForm {
    std::string_view subject;
    std::span<const ColumnForm> columns; ///< that it may have; none where they are sizes
    std::span<const NoteForm> notes;     ///< that may stand beside a row
    std::span<const RowForm> rows;       ///< none: rows of any name
    std::string_view example_of_columns;
    std::optional<FigureForm> by_size =
        {};                  ///< of its figures, where its columns are sizes of stone
    bool has_groups = false; ///< whether a row may name a group
    bool in_turn = false;    ///< rows are tried in turn: two of one name may say different things
};

/// Every table that a code may have.
std::span<const TableForm> table_forms();

/// The form of a subject, or nullptr.
const TableForm* find_table_form(std::string_view subject);

} // namespace boardmark::input
