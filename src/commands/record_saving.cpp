#include "record_saving.hpp"

#include <boardmark/input/csv/read_rows.hpp>
#include <boardmark/input/values/improbable.hpp>
#include <boardmark/text/utf8.hpp>
#include <boardmark/units/date.hpp>
#include <boardmark/units/unit.hpp>

#include "delivery.hpp"
#include "opened_file.hpp"
#include "record_adding.hpp"
#include "record_file.hpp"
#include "today.hpp"
#include "waiting_line.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <span>

namespace boardmark::commands {
namespace {

/// A value in the words of a message, in a system's unit, digits enough to tell values apart.
template <class Row>
std::string told(const core::RecordColumn<Row>& column, const core::RecordedValue& value,
                 core::UnitSystem system) {
    if (const auto* text = std::get_if<std::string>(&value)) {
        return text->empty() ? "none" : fmt::format("'{}'", *text);
    }
    const auto number = std::get<std::optional<double>>(value);
    const std::string_view unit = column.unit(system);
    return !number        ? "none"
           : unit.empty() ? fmt::format("{:.10g}", *number)
                          : fmt::format("{:.10g} {}", units::unit(unit).from_inside(*number), unit);
}

/// "slump 3 in there, 4 in here"
template <class Row>
std::string told(const record::Conflict& conflict, core::UnitSystem system) {
    const auto columns = core::record_columns<Row>();
    const auto column = std::ranges::find(columns, conflict.column, &core::RecordColumn<Row>::key);
    return fmt::format("{} {} there, {} here", column->name,
                       told(*column, conflict.recorded, system),
                       told(*column, conflict.given, system));
}

/// The conflicts of one row as one message.
template <class Row>
std::string told(std::span<const record::Conflict> conflicts, const Row& row,
                 core::UnitSystem system) {
    constexpr std::size_t most_told = 2;
    const auto name = std::get<std::string>(core::record_columns<Row>().front().of(row));
    std::string text = fmt::format("'{}' is in the record otherwise: ", name);
    for (std::size_t i = 0; i < std::min(conflicts.size(), most_told); ++i) {
        text += (i == 0 ? "" : "; ") + told<Row>(conflicts[i], system);
    }
    return conflicts.size() <= most_told
               ? text
               : text + fmt::format("; {} more differ", conflicts.size() - most_told);
}

/// What keeps an addition from being saved: for each row that conflicts one message at its place.
input::Diagnostics diagnostics_of(std::span<const record::Conflict> conflicts,
                                  const record::Addition& addition,
                                  const std::vector<input::Diagnostic>& places) {
    input::Diagnostics diagnostics;
    while (!conflicts.empty()) {
        const record::Conflict& first = conflicts.front();
        const auto of_row = std::ranges::find_if(conflicts, [&](const record::Conflict& other) {
            return other.row != first.row || other.in_trials != first.in_trials;
        });
        const auto count = static_cast<std::size_t>(of_row - conflicts.begin());
        const auto same_row = conflicts.first(count);
        input::Diagnostic diagnostic =
            places[first.row + (first.in_trials ? 0 : addition.trials.size())];
        diagnostic.message =
            first.in_trials ? told(same_row, addition.trials[first.row], addition.reporting)
                            : told(same_row, addition.specimens[first.row], addition.reporting);
        diagnostic.advice =
            fmt::format("recorded from {}; another row needs another name", first.recorded_from);
        diagnostics.push_back(std::move(diagnostic));
        conflicts = conflicts.subspan(count);
    }
    return diagnostics;
}

/// A record holds what was done: nothing of it lies after today.
void demand_past(const Arguments& arguments, const record::Addition& addition,
                 const std::vector<input::Diagnostic>& places) {
    const std::string today = units::written_date(today_of(arguments));
    input::Diagnostics faults;
    const auto hold = [&](const std::string& name, const std::string& date, std::size_t row) {
        if (date > today) { // both are YEAR-MONTH-DAY
            faults.push_back(places[row]);
            faults.back().message =
                fmt::format("'{}' is of {}, after today, {}", name, date, today);
            faults.back().advice = "correct the date; '--today' sets another day";
        }
    };
    for (std::size_t i = 0; i < addition.trials.size(); ++i) {
        hold(addition.trials[i].batch, addition.trials[i].date, i);
    }
    for (std::size_t i = 0; i < addition.specimens.size(); ++i) {
        hold(addition.specimens[i].specimen, addition.specimens[i].date,
             addition.trials.size() + i);
    }
    demand_sound(faults.empty(), faults, arguments, nothing_saved);
}

report::SavedRows saved(const Arguments& arguments, const record::Addition& addition,
                        const std::vector<input::Diagnostic>& places) {
    demand_past(arguments, addition, places);
    const record::Outcome outcome = save(arguments, addition);
    const auto faults = diagnostics_of(outcome.conflicts, addition, places);
    demand_sound(faults.empty(), faults, arguments, nothing_saved);
    return {.title = record_name(arguments),
            .file = addition.file,
            .saved = outcome.saved,
            .already_there = outcome.already_there};
}

} // namespace

report::SavedRows import_rows(const Arguments& arguments, FilesRead& files_read) {
    OpenedFile file = open_file(*arguments.value("import"), input::largest_csv_file, files_read);
    auto rows = while_waiting("reading the rows", arguments,
                              [&] { return input::read_rows(std::move(file.text), file.name); });
    demand_sound(rows.sound, rows.diagnostics, arguments, nothing_saved);
    const record::Addition addition{.file = text::printable(file.name),
                                    .kind = "csv",
                                    .reporting = arguments.reporting().value_or(rows.system),
                                    .trials = std::move(rows.trials),
                                    .specimens = std::move(rows.specimens)};
    report::SavedRows result = saved(arguments, addition, rows.places);
    result.cautions = input::improbable_figures(rows.diagnostics);
    return result;
}

report::SavedRows add_file(const Arguments& arguments, FilesRead& files_read) {
    const FiledRows filed = read_filed_rows(arguments, files_read);
    return saved(arguments, filed.addition, filed.places);
}

} // namespace boardmark::commands
