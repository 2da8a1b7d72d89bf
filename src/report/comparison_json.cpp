#include <boardmark/report/comparison_report.hpp>
#include <boardmark/report/words.hpp>

#include "json_parts.hpp"
#include "names.hpp"

namespace boardmark::report {
namespace {

constexpr auto json_system = core::UnitSystem::si;

Json json_of_missing(const core::PartialSum& sum) {
    Json names = Json::array();
    for (const std::string& name : sum.missing) {
        names.push_back(name);
    }
    return names;
}

Json json_of_cost(const core::Cost& cost) {
    return {{"currency", cost.currency},
            {"per_m3", cost.sum.per_m3},
            {"at_least", !cost.sum.is_whole()},
            {"missing", json_of_missing(cost.sum)}};
}

Json json_of_failures(const std::vector<core::Check>& checks) {
    Json ids = Json::array();
    for (const core::Check& check : checks) {
        if (check.verdict == core::Verdict::fails) {
            ids.push_back(check.id);
        }
    }
    return ids;
}

Json json_of_column(const core::ComparedMix& column, const std::string& file) {
    Json object{{"label", column.label}, {"file", file}};
    const auto& proportions = column.proportions;
    object["selection"] = proportions ? json_of(proportions->selection) : Json(nullptr);
    object["ingredients"] = proportions ? json_of(proportions->ingredients) : Json(nullptr);
    object["totals"] = proportions ? json_of(proportions->totals) : Json(nullptr);
    object["slump_mm"] = proportions ? number_or_null(column.slump.mm) : Json(nullptr);
    object["slump_marked"] =
        column.slump.estimate ? Json::array({name_of(core::Mark::estimate)}) : Json::array();
    object["expected_strength_mpa"] = column.strength ? Json(column.strength->mpa) : Json(nullptr);
    object["temperature_rise_k"] = number_or_null(column.temperature_rise_k);
    object["cost"] = column.cost ? json_of_cost(*column.cost) : Json(nullptr);
    object["reducer_cost_per_m3"] = number_or_null(column.reducer_cost_per_m3);
    object["carbon_kg_m3"] = column.carbon ? Json(column.carbon->per_m3) : Json(nullptr);
    object["carbon_at_least"] = column.carbon && !column.carbon->is_whole();
    object["checks_failed"] = json_of_failures(column.checks);
    object["remarks"] = json_of(column.remarks);
    object["unresolved"] =
        column.unresolved ? Json(words(column.unresolved->what, json_system)) : Json(nullptr);
    return object;
}

} // namespace

std::string json(const ComparisonResult& result) {
    Json object = json_heading("compare", result.title);
    object["mixes"] = Json::array();
    for (std::size_t i = 0; i < result.columns.size(); ++i) {
        object["mixes"].push_back(json_of_column(result.columns[i], result.files[i]));
    }
    object["summary"] = json_of(result.summary);
    object["checks"] = json_of(result.checks);
    object["cautions"] = json_of(result.cautions);
    return written(object);
}

} // namespace boardmark::report
