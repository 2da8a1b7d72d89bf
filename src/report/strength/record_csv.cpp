#include <boardmark/report/strength/record_report.hpp>
#include <boardmark/units/unit.hpp>

#include "../writing/csv_cells.hpp"
#include "record_counts.hpp"

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

/// A number as it is kept, or to where its change of units is exact.
std::string number_cell(std::optional<double> value, std::string_view unit, UnitSystem system,
                        bool to_the_bit) {
    const bool kept = unit.empty() || system == UnitSystem::si;
    if (kept && to_the_bit) {
        return value ? fmt::format("{}", *value) : "";
    }
    return kept ? csv_cell(value) : csv_cell_in(value, unit);
}

template <class Row>
std::string rows_as_csv(const RecordList<Row>& list, UnitSystem system) {
    std::vector<std::string> header;
    for (const auto& column : core::record_columns<Row>()) {
        header.push_back(in_unit(column.name, column.unit(system)));
    }
    std::string text = csv_row(header);
    for (const Row& row : list.rows) {
        std::vector<std::string> cells;
        for (const auto& column : core::record_columns<Row>()) {
            const core::RecordedValue value = column.of(row);
            const auto* words = std::get_if<std::string>(&value);
            cells.push_back(words ? guarded(*words)
                                  : number_cell(std::get<std::optional<double>>(value),
                                                column.unit(system), system, list.to_the_bit));
        }
        text += csv_row(cells);
    }
    return text;
}

} // namespace

std::string csv(const RecordList<core::RecordedTrial>& list, UnitSystem system) {
    return rows_as_csv(list, system);
}

std::string csv(const RecordList<core::RecordedSpecimen>& list, UnitSystem system) {
    return rows_as_csv(list, system);
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
    std::string text = csv_row({"mix", "title", "trials", "specimens"});
    for (const MixCount& mix : counts_by_mix(summary)) {
        text += csv_row({csv_cell(mix.mix), csv_cell(mix.title), std::to_string(mix.trials),
                         std::to_string(mix.specimens)});
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
    const auto cell = [&](std::optional<double> value) {
        return number_cell(value, unit, system, false);
    };
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
