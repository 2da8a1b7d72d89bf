#pragma once

#include <boardmark/core/basis/quantity.hpp>
#include <boardmark/core/mix/mix.hpp>

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace boardmark::core {

/// A trial batch as a record keeps it: what was measured and what follows from it.
struct RecordedTrial {
    std::string batch; ///< its name; one record has it once
    std::string date;  ///< of batching, 2026-03-02
    std::string mix;   ///< the mix file it was made from
    std::string title; ///< of that mix; may be empty
    std::optional<double> density_kg_m3 = {};
    std::optional<double> yield_m3 = {};
    std::optional<double> relative_yield = {};
    std::optional<double> w_cm = {};
    std::optional<double> slump_mm = {};
    std::optional<double> target_slump_mm = {};
    std::optional<double> air_percent = {}; ///< by meter
    std::optional<double> target_air_percent = {};
    std::optional<double> gravimetric_air_percent = {};
    std::optional<double> temperature_c = {}; ///< of the fresh concrete
    std::string remark = {};
};

/// A strength specimen as a record keeps it.
struct RecordedSpecimen {
    std::string specimen; ///< its name; one record has it once
    std::string batch;    ///< the batch it was cast from
    std::string date;     ///< of casting, 2026-03-02
    std::string mix;      ///< what the batch was made from; may be empty
    std::optional<double> age_d = {};
    std::optional<double> strength_mpa = {};
    std::optional<double> specified_strength_mpa = {};
    std::optional<double> w_cm = {};
    std::string shape = {}; ///< "cylinder", "cube"; may be empty
    std::string remark = {};
};

/// A file that recorded rows came from.
struct RecordedFile {
    std::string name;
    std::string kind; ///< "trial", "strength results", "csv"
    UnitSystem reporting;
    std::size_t trials = 0;    ///< how many rows came from it
    std::size_t specimens = 0; ///< how many rows came from it
};

/// One value of a row, by the kind of its column.
using RecordedValue = std::variant<std::string, std::optional<double>>;

/// What a column holds.
enum class ColumnKind { text, date, number };

/// A column of recorded rows: from this one table come the database's statements, CSV and JSON.
template <class Row>
struct RecordColumn {
    std::string_view key;     ///< with its unit, as JSON and the database name it: "slump_mm"
    std::string_view name;    ///< without it: "slump"
    std::string_view si_unit; ///< of the values; empty for texts and plain numbers
    std::string_view us_unit; ///< in which the others read them
    ColumnKind kind;
    bool required = false;
    std::variant<std::string Row::*, std::optional<double> Row::*> member;
    Measure measure = Measure::ratio; ///< of a number
    double least = 0;                 ///< of a number, ends included
    double most = 0;
    double usual_from = 0; ///< of a number, beyond it one is hardly true; none where both are 0
    double usual_to = 0;

    RecordedValue of(const Row& row) const {
        if (const auto* text = std::get_if<std::string Row::*>(&member)) {
            return row.*(*text);
        }
        return row.*std::get<std::optional<double> Row::*>(member);
    }

    std::string_view unit(UnitSystem system) const {
        return system == UnitSystem::us ? us_unit : si_unit;
    }

    /// The value must be of the column's kind.
    void set(Row& row, RecordedValue value) const {
        if (const auto* text = std::get_if<std::string Row::*>(&member)) {
            row.*(*text) = std::get<std::string>(std::move(value));
        } else {
            row.*std::get<std::optional<double> Row::*>(member) =
                std::get<std::optional<double>>(value);
        }
    }
};

/// The columns in the order in which they are written; the first is the row's name.
template <class Row>
std::span<const RecordColumn<Row>> record_columns();
template <>
std::span<const RecordColumn<RecordedTrial>> record_columns();
template <>
std::span<const RecordColumn<RecordedSpecimen>> record_columns();

/// The longest text of a row, in bytes.
constexpr std::size_t longest_recorded_text = 800;

/// Whether two values are the same to a billionth: what a calculation or a change of units may
/// move.
bool same(const RecordedValue& left, const RecordedValue& right);

/// Whether a value may stand in a column: there where it is required, a text not too long, a number
/// in its range.
template <class Row>
bool fits(const RecordColumn<Row>& column, const RecordedValue& value) {
    if (const auto* text = std::get_if<std::string>(&value)) {
        return column.kind != ColumnKind::number && text->size() <= longest_recorded_text &&
               !(column.required && text->empty());
    }
    const auto number = std::get<std::optional<double>>(value);
    return column.kind == ColumnKind::number &&
           (number ? *number >= column.least && *number <= column.most : !column.required);
}

} // namespace boardmark::core
