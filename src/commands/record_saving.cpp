#include "record_saving.hpp"

#include <boardmark/input/read_rows.hpp>
#include <boardmark/text/utf8.hpp>

#include "delivery.hpp"
#include "opened_file.hpp"
#include "record_adding.hpp"
#include "record_file.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::commands {
namespace {

constexpr std::string_view nothing_saved = "nothing was saved";

/// A value in the words of a message.
template <class Row>
std::string told(const core::RecordColumn<Row>& column, const core::RecordedValue& value) {
    if (const auto* text = std::get_if<std::string>(&value)) {
        return text->empty() ? "none" : fmt::format("'{}'", *text);
    }
    const auto number = std::get<std::optional<double>>(value);
    return number ? fmt::format("{}{}{}", *number, column.unit.empty() ? "" : " ", column.unit)
                  : "none";
}

template <class Row>
std::string told(const record::Conflict& conflict, const Row& row) {
    const auto columns = core::record_columns<Row>();
    const auto column = std::ranges::find(columns, conflict.column, &core::RecordColumn<Row>::key);
    return fmt::format("'{}' is in the record with another {}: {} there, {} here",
                       std::get<std::string>(columns.front().of(row)), column->name,
                       told(*column, conflict.recorded), told(*column, conflict.given));
}

/// What keeps an addition from being saved, each at the place of its row.
input::Diagnostics diagnostics_of(const std::vector<record::Conflict>& conflicts,
                                  const record::Addition& addition,
                                  const std::vector<input::Diagnostic>& places) {
    input::Diagnostics diagnostics;
    for (const record::Conflict& conflict : conflicts) {
        const std::size_t place = conflict.row + (conflict.in_trials ? 0 : addition.trials.size());
        input::Diagnostic diagnostic = places[place];
        diagnostic.message = conflict.in_trials ? told(conflict, addition.trials[conflict.row])
                                                : told(conflict, addition.specimens[conflict.row]);
        diagnostic.advice =
            fmt::format("it came from {}; give this one another name, or export the record, "
                        "correct the row and import it anew",
                        conflict.recorded_from);
        diagnostics.push_back(std::move(diagnostic));
    }
    return diagnostics;
}

report::SavedRows saved(const Arguments& arguments, const record::Addition& addition,
                        const std::vector<input::Diagnostic>& places) {
    const record::Outcome outcome = save(arguments, addition);
    const auto faults = diagnostics_of(outcome.conflicts, addition, places);
    demand_sound(faults.empty(), faults, arguments, nothing_saved);
    return {.title = record_name(arguments),
            .file = addition.file,
            .saved = outcome.saved,
            .already_there = outcome.already_there};
}

} // namespace

report::SavedRows import_rows(const Arguments& arguments) {
    OpenedFile file = open_file(*arguments.value("import"), input::largest_csv_file);
    auto rows = input::read_rows(std::move(file.text), file.name);
    demand_sound(rows.sound, rows.diagnostics, arguments, nothing_saved);
    const record::Addition addition{.file = text::printable(file.name),
                                    .kind = "csv",
                                    .reporting = arguments.reporting().value_or(rows.system),
                                    .trials = std::move(rows.trials),
                                    .specimens = std::move(rows.specimens)};
    return saved(arguments, addition, rows.places);
}

report::SavedRows add_file(const Arguments& arguments) {
    const FiledRows filed = read_filed_rows(arguments);
    return saved(arguments, filed.addition, filed.places);
}

} // namespace boardmark::commands
