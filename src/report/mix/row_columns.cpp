#include "row_columns.hpp"

#include "../writing/csv_cells.hpp"
#include "../writing/names.hpp"

#include <fmt/format.h>

namespace boardmark::report {
namespace {

using RowRef = const RowSource&;
using RowFigure = std::optional<double>;

const core::Selection& selection_of(RowRef row) {
    return row.result.proportions.selection;
}

const core::Totals& totals_of(RowRef row) {
    return row.result.proportions.totals;
}

std::string ids_in_cell(const std::vector<std::string>& ids) {
    return csv_cell(fmt::format("{}", fmt::join(ids, " ")));
}

/// The materials that a sum lacks.
std::string names_in_cell(const core::PartialSum* sum) {
    return sum ? csv_cell(fmt::format("{}", fmt::join(sum->missing, "; "))) : std::string{};
}

constexpr const char* lb_yd3 = "lb/yd3";
constexpr const char* kg_m3 = "kg/m3";

constexpr RowColumn all_row_columns[] = {
    {{"title", "", "", "of the mix"}, [](RowRef row) { return csv_cell(row.result.title); }},
    {{"state", "", "", "fails, watch, open or holds; empty where there is no mix"},
     [](RowRef row) { return name_of(row.verdict.state()); }},
    {{"failed", "", "", "ids of the checks that fail, blanks between them"},
     [](RowRef row) { return ids_in_cell(row.verdict.failed); }},
    {{"watch", "", "", "ids of the checks to be watched"},
     [](RowRef row) { return ids_in_cell(row.verdict.watched); }},
    {{"not_checked", "", "", "ids of what could not be checked: a figure is missing"},
     [](RowRef row) { return ids_in_cell(row.verdict.not_checked); }},
    {{"held", "", "", "how many checks hold"},
     [](RowRef row) { return std::to_string(row.verdict.held); }},
    {{"estimate", "", "", "yes: usual aggregate figures were used, it must not be batched"},
     [](RowRef row) { return std::string{row.result.proportions.estimate ? "yes" : "no"}; }},
    {{"strength", "psi", "MPa", "specified compressive strength"}, nullptr,
     [](RowRef row) { return RowFigure{selection_of(row).specified_strength_mpa}; }},
    {{"average_strength", "psi", "MPa", "required average strength"}, nullptr,
     [](RowRef row) { return RowFigure{selection_of(row).required_average_strength_mpa}; }},
    {{"slump", "in", "mm", "at placing"}, nullptr,
     [](RowRef row) { return RowFigure{selection_of(row).slump_mm}; }},
    {{"nominal_max_size", "in", "mm", "of the aggregate"}, nullptr,
     [](RowRef row) { return RowFigure{selection_of(row).nominal_max_size_mm}; }},
    {{"air", "%", "%", "in the batch"}, nullptr,
     [](RowRef row) { return RowFigure{selection_of(row).air_percent}; }},
    {{"air_at_placing", "%", "%", "what is left of it"}, nullptr,
     [](RowRef row) { return RowFigure{selection_of(row).air_at_placing_percent}; }},
    {{"w_cm", "", "", "mixing water over all cementitious material, by mass"}, nullptr,
     [](RowRef row) { return RowFigure{totals_of(row).w_cm}; }},
    {{"w_cm_by", "", "", "what decided it: strength, exposure, minimum binder or given"},
     [](RowRef row) { return name_of(selection_of(row).w_cm_governed_by); }},
    {{"w_cm_by_strength", "", "", "that the average strength leads to"}, nullptr,
     [](RowRef row) { return selection_of(row).w_cm_by_strength; }},
    {{"w_cm_by_exposure", "", "", "the highest that the exposure permits"}, nullptr,
     [](RowRef row) { return selection_of(row).w_cm_by_exposure; }},
    {{"water", lb_yd3, kg_m3, "all mixing water, the admixtures' liquid included"}, nullptr,
     [](RowRef row) { return RowFigure{totals_of(row).water_kg_m3}; }},
    {{"water_reduction", "%", "%", "by the reducers, of the table's water"}, nullptr,
     [](RowRef row) { return selection_of(row).water_reduction_percent; }},
    {{"binder", lb_yd3, kg_m3, "all cementitious material"}, nullptr,
     [](RowRef row) { return RowFigure{totals_of(row).binder_kg_m3}; }},
    {{"coarse_volume", "", "", "dry-rodded, of the concrete's volume"}, nullptr,
     [](RowRef row) { return selection_of(row).coarse_volume; }},
    {{"fineness_modulus", "", "", "of the fine aggregate"}, nullptr,
     [](RowRef row) { return selection_of(row).fineness_modulus; }},
    {{"density", "lb/ft3", kg_m3, "of the fresh concrete"}, nullptr,
     [](RowRef row) { return totals_of(row).fresh_density_kg_m3; }},
    {{"volume", "", "", "of what should be 1"}, nullptr,
     [](RowRef row) { return totals_of(row).volume_m3; }},
    {{"paste", "%", "%", "of the volume, without air"}, nullptr,
     [](RowRef row) { return totals_of(row).paste_percent; }},
    {{"mortar", "%", "%", "of the volume"}, nullptr,
     [](RowRef row) { return totals_of(row).mortar_percent; }},
    {{"cost", "per yd3", "per m3", "of the materials"}, nullptr,
     [](RowRef row) { return row.cost ? RowFigure{row.cost->sum.per_m3} : std::nullopt; }},
    {{"currency", "", "", "of the cost"},
     [](RowRef row) { return row.cost ? csv_cell(row.cost->currency) : std::string{}; }},
    {{"cost_without", "", "", "materials whose price or amount is not known: the cost is at least that"},
     [](RowRef row) { return names_in_cell(row.cost ? &row.cost->sum : nullptr); }},
    {{"carbon", lb_yd3, kg_m3, "CO2 equivalent of the materials"}, nullptr,
     [](RowRef row) { return row.carbon ? RowFigure{row.carbon->per_m3} : std::nullopt; }},
    {{"carbon_without", "", "", "materials that do not state it, or have no known amount"},
     [](RowRef row) { return names_in_cell(row.carbon ? &*row.carbon : nullptr); }},
};

} // namespace

std::span<const RowColumn> columns_of_figures() {
    return all_row_columns;
}

} // namespace boardmark::report
