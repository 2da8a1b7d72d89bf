#include "long_table.hpp"

#include <boardmark/core/forms/form_pressure.hpp>
#include <boardmark/report/writing/words.hpp>

#include "csv_cells.hpp"
#include "measured.hpp"
#include "names.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace boardmark::report {
namespace {

using core::Measure;

bool is_of_forms(const core::Check& check) {
    using namespace core::check_ids;
    return std::ranges::any_of(
        std::array{forms_pressure, forms_pressure_other_method, forms_tie, forms_tie_other_method},
        [&](core::CheckId id) { return check.is(id); });
}

/// What a check says, of which rule, from where, and whether nobody read the figure again.
std::string note_of(const core::Check& check, core::UnitSystem system) {
    std::string note =
        words(check.message, system) + " [" + check.requirement + "; " + check.source.citation;
    for (const core::Mark mark : marks_of(check)) {
        note += ", " + name_of(mark);
    }
    note += "]";
    return is_of_forms(check) && !presses_on_forms(check.measure) ? with_form_caution(note) : note;
}

} // namespace

bool presses_on_forms(core::Measure measure) {
    return measure == Measure::pressure || measure == Measure::force ||
           measure == Measure::rate_of_rise;
}

std::string with_form_caution(const std::string& note) {
    const std::string caution = words(core::form_caution(), core::UnitSystem::si);
    return note.empty() ? caution : caution + " " + note;
}

void LongTable::row(std::string_view quantity, const std::string& value, const std::string& unit,
                    const std::string& status, const std::string& note) {
    rows_ += csv_row({csv_cell(section_), csv_cell(subject_), csv_cell(std::string{quantity}),
                      value, csv_cell(unit), csv_cell(status), csv_cell(note)});
}

void LongTable::subject(const std::string& name, std::string_view part, std::size_t number) {
    subject_ = fmt::format("{}{}{} {}", name, name.empty() ? "" : ", ", part, number);
}

void LongTable::add(std::string_view quantity, Measure measure, std::optional<double> value,
                    const std::string& status, const std::string& note) {
    const Measured in_units = measured({value.value_or(0), measure}, system_);
    row(quantity, value ? csv_cell(in_units.amount) : "", in_units.unit, status,
        presses_on_forms(measure) ? with_form_caution(note) : note);
}

void LongTable::add_in(std::string_view quantity, double value, const std::string& unit,
                       const std::string& status, const std::string& note) {
    row(quantity, csv_cell(value), unit, status, note);
}

void LongTable::add_count(std::string_view quantity, int count, const std::string& note) {
    row(quantity, std::to_string(count), "1", "", note);
}

void LongTable::add_words(std::string_view quantity, const std::string& status,
                          const std::string& note) {
    row(quantity, "", "", status, note);
}

void LongTable::add(const std::vector<core::Check>& checks) {
    for (const core::Check& check : checks) {
        subject(check.id);
        const std::string verdict = name_of(check.verdict);
        const std::string note = note_of(check, system_);
        add("value", check.measure, check.value, verdict, note);
        if (check.limit && check.limit->low) {
            add("at least", check.measure, check.limit->low, verdict, note);
        }
        if (check.limit && check.limit->high) {
            add("at most", check.measure, check.limit->high, verdict, note);
        }
    }
}

void LongTable::add(std::string_view quantity, const std::vector<core::Phrase>& phrases) {
    for (const core::Phrase& phrase : phrases) {
        add_words(quantity, "", words(phrase, system_));
    }
}

std::string LongTable::text() const {
    return csv_row({"section", "subject", "quantity", "value", "unit", "status", "note"}) + rows_;
}

} // namespace boardmark::report
