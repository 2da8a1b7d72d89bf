#include <boardmark/report/many/sweep_report.hpp>

#include "../writing/csv_cells.hpp"
#include "../writing/measured.hpp"
#include "../writing/names.hpp"
#include "sweep_words.hpp"

#include <fmt/format.h>

namespace boardmark::report {
namespace {

using core::Measure;
using core::UnitSystem;

std::string in_brackets(const std::string& name, const std::string& unit) {
    return csv_cell(unit == "1" ? name : fmt::format("{} [{}]", name, unit));
}

std::string ids_of(const std::vector<std::string>& ids) {
    return csv_cell(fmt::format("{}", fmt::join(ids, " ")));
}

} // namespace

std::string csv(const SweepResult& result, UnitSystem system) {
    const core::Sweep& sweep = result.sweep;
    const auto figures = swept_figures(sweep, system);
    const std::string mass = measured({0, Measure::concentration}, system).unit;
    std::vector<std::string> header;
    for (const core::SweepAxis& axis : sweep.axes) {
        header.push_back(
            in_brackets(core::key_of(axis.variable), variable_unit(axis.variable, system)));
    }
    header.insert(header.end(), {"mix.w_cm", in_brackets("mix.water", mass)});
    for (const SweptFigure& figure : figures) {
        header.push_back(in_brackets(figure.name, figure.unit));
    }
    header.insert(header.end(), {"at_least", "state", "failed", "watch", "not_checked", "error"});
    std::string text = csv_row(header);
    for (const core::SweepPoint& point : sweep.points) {
        std::vector<std::string> cells;
        for (std::size_t i = 0; i < sweep.axes.size(); ++i) {
            cells.push_back(csv_cell(
                std::optional{variable_amount(sweep.axes[i].variable, point.at[i], system)}));
        }
        const core::SweptMix* mix = point.mix ? &*point.mix : nullptr;
        const auto cell = [&](Measure measure, double value) {
            return csv_cell(std::optional{measured({value, measure}, system).amount});
        };
        cells.push_back(mix ? cell(Measure::w_cm, mix->totals.w_cm) : "");
        cells.push_back(mix ? cell(Measure::concentration, mix->totals.water_kg_m3) : "");
        std::vector<std::string> at_least;
        for (const SweptFigure& figure : figures) {
            const auto value = mix ? figure.of(*mix) : std::nullopt;
            if (mix && figure.is_at_least(*mix)) {
                at_least.push_back(figure.name);
            }
            cells.push_back(value ? csv_cell(std::optional{swept_amount(figure, *value, system)})
                                  : "");
        }
        cells.push_back(ids_of(at_least));
        cells.push_back(mix ? name_of(mix->verdict.state()) : "");
        cells.push_back(mix ? ids_of(mix->verdict.failed) : "");
        cells.push_back(mix ? ids_of(mix->verdict.watched) : "");
        cells.push_back(mix ? ids_of(mix->verdict.not_checked) : "");
        cells.push_back(csv_cell(reason_words(point, system)));
        text += csv_row(cells);
    }
    return text;
}

} // namespace boardmark::report
