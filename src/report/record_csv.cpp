#include <boardmark/report/record_report.hpp>
#include <boardmark/units/unit.hpp>

#include "csv_parts.hpp"
#include "record_parts.hpp"

#include <fmt/format.h>

namespace boardmark::report {
namespace {

using core::UnitSystem;

std::string in_unit(std::string_view name, std::string_view unit) {
    return unit.empty() ? std::string{name} : fmt::format("{} ({})", name, unit);
}

/// A text that a reader takes back as it is: the mark against formulas is itself marked.
std::string guarded(const std::string& text) {
    return csv_cell(text.starts_with('\'') ? "'" + text : text);
}

/// A number in SI to the last bit; in other units to where its change of units is exact.
std::string number_cell(std::optional<double> value, std::string_view unit, UnitSystem system) {
    if (!value || unit.empty() || system == UnitSystem::si) {
        return value ? fmt::format("{}", *value) : "";
    }
    return fmt::format("{:.12g}", units::unit(unit).from_inside(*value));
}

std::string cell_of(const core::RecordedValue& value, std::string_view unit, UnitSystem system) {
    if (const auto* text = std::get_if<std::string>(&value)) {
        return guarded(*text);
    }
    return number_cell(std::get<std::optional<double>>(value), unit, system);
}

template <class Row>
std::string rows_as_csv(const std::vector<Row>& rows, UnitSystem system) {
    std::vector<std::string> header;
    for (const auto& column : core::record_columns<Row>()) {
        header.push_back(in_unit(column.name, column.unit(system)));
    }
    std::string text = csv_row(header);
    for (const Row& row : rows) {
        std::vector<std::string> cells;
        for (const auto& column : core::record_columns<Row>()) {
            cells.push_back(cell_of(column.of(row), column.unit(system), system));
        }
        text += csv_row(cells);
    }
    return text;
}

} // namespace

std::string csv(const RecordList<core::RecordedTrial>& list, UnitSystem system) {
    return rows_as_csv(list.rows, system);
}

std::string csv(const RecordList<core::RecordedSpecimen>& list, UnitSystem system) {
    return rows_as_csv(list.rows, system);
}

std::string csv(const RecordList<core::RecordedFile>& list, UnitSystem) {
    std::string text = csv_row({"file", "kind", "trials", "specimens"});
    for (const core::RecordedFile& file : list.rows) {
        text += csv_row({csv_cell(file.name), csv_cell(file.kind), std::to_string(file.trials),
                         std::to_string(file.specimens)});
    }
    return text;
}

std::string csv(const RecordSummary& summary, UnitSystem) {
    std::string text = csv_row({"mix", "trials", "specimens"});
    for (const MixCount& mix : counts_by_mix(summary)) {
        text +=
            csv_row({csv_cell(mix.mix), std::to_string(mix.trials), std::to_string(mix.specimens)});
    }
    return text;
}

std::string csv(const SavedRows& saved, UnitSystem) {
    return csv_row({"file", "saved", "already there"}) +
           csv_row({csv_cell(saved.file), std::to_string(saved.saved),
                    std::to_string(saved.already_there)});
}

std::string csv(const ChartResult& result, UnitSystem system) {
    const std::string_view unit = result.charted.unit(system);
    const auto cell = [&](std::optional<double> value) { return number_cell(value, unit, system); };
    std::string text = csv_row({"date", "batch", in_unit(result.charted.heading, unit),
                                in_unit("mean", unit), in_unit("low limit", unit),
                                in_unit("high limit", unit), in_unit("target", unit), "signal"});
    for (std::size_t i = 0; i < result.points.size(); ++i) {
        const core::ChartPoint& point = result.points[i];
        text += csv_row({point.date, csv_cell(point.batch), cell(point.value),
                         cell(result.chart.mean), cell(result.chart.low), cell(result.chart.high),
                         cell(point.target), name_of(result.chart.signals[i])});
    }
    return text;
}

} // namespace boardmark::report
