#pragma once

#include <boardmark/core/basis/source.hpp>

#include <span>
#include <string_view>

/// The form in which data/*.yaml is built into the program: written by src/embed, read by this
/// room.
namespace boardmark::reference {

struct EmbeddedSource {
    std::string_view work;
    std::string_view citation; ///< the work and the place in it
    core::Confidence confidence;
};

/// A column: named, or standing at a value of an axis in one or both systems of units. A value that
/// a system does not have is NaN.
struct EmbeddedColumn {
    std::string_view name;
    double at_us;
    double at_si;
};

struct EmbeddedNote {
    std::string_view name;
    std::string_view text;
};

/// A row: named, at a value, or over a range. Everything is in the library's inside units, a gap in
/// the print is NaN.
struct EmbeddedRow {
    std::string_view name;
    std::string_view group;
    double from_us;
    double to_us;
    double from_si;
    double to_si;
    std::span<const double> cells;
    EmbeddedSource source; ///< of the row where it states one, else of the table
    std::span<const EmbeddedNote> notes;
};

struct EmbeddedTable {
    std::string_view name; ///< the file's name without its ending
    std::string_view title;
    EmbeddedSource source;
    std::span<const EmbeddedColumn> columns;
    std::span<const EmbeddedRow> rows;
};

/// Every table of data/, in the order of their names.
std::span<const EmbeddedTable> embedded_tables();

} // namespace boardmark::reference
