#include <boardmark/report/study/comparison_report.hpp>
#include <boardmark/report/writing/words.hpp>

#include "../writing/json_values.hpp"
#include "../writing/names.hpp"
#include "../writing/verdicts.hpp"
#include "comparison_rows.hpp"

namespace boardmark::report {
namespace {

using report::json_of;

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

/// Figures of the materials that cost and carbon are counted with.
Json json_of_materials(const core::Proportions& proportions) {
    Json list = Json::array();
    for (const core::Ingredient& ingredient : proportions.ingredients) {
        if (!ingredient.material) {
            continue;
        }
        const core::Material& material = *ingredient.material;
        const auto& price = material.price;
        Json row{{"name", material.name}, {"price", nullptr}};
        if (price) {
            row["price"] = {{"currency", price->currency},
                            {"amount", price->amount},
                            {"per", price->basis == core::PriceBasis::mass ? "kg" : "m3"},
                            {"written", price->written}};
        }
        row["waste_percent"] = material.waste_percent;
        row["carbon_kg_kg"] = number_or_null(material.carbon_kg_kg);
        row["source"] = material.source.empty() ? Json(nullptr) : Json(material.source);
        list.push_back(std::move(row));
    }
    return list;
}

Json json_of_supply(const core::Supply& supply) {
    const auto& charge = supply.short_load_charge;
    return {{"minimum_load_m3", supply.minimum_load_m3},
            {"currency", charge ? Json(charge->currency) : Json(nullptr)},
            {"short_load_charge_per_m3", charge ? Json(charge->per_m3) : Json(nullptr)}};
}

/// The labels of the best columns of each row that has some, where whole mixes compete.
Json json_of_best(const ComparisonResult& result) {
    Json best = Json::object();
    for (const ComparisonRow& row : comparison_rows(result, json_system)) {
        if (result.is_study || row.key.empty()) {
            continue;
        }
        best[row.key] = Json::array();
        for (const std::size_t column : row.best(result.columns)) {
            best[row.key].push_back(result.columns[column].label);
        }
    }
    return best;
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
    object["cost_reason"] =
        column.no_cost ? Json(words(*column.no_cost, json_system)) : Json(nullptr);
    object["reducer_cost_per_m3"] = number_or_null(column.reducer_cost_per_m3);
    object["carbon_kg_m3"] = column.carbon ? Json(column.carbon->per_m3) : Json(nullptr);
    object["carbon_at_least"] = column.carbon && !column.carbon->is_whole();
    object["carbon_missing"] = column.carbon ? json_of_missing(*column.carbon) : Json::array();
    object["materials"] = proportions ? json_of_materials(*proportions) : Json::array();
    object["supply"] = column.supply ? json_of_supply(*column.supply) : Json(nullptr);
    object["checks_failed"] = json_of_failures(column.checks);
    object["remarks"] = json_of(column.remarks);
    object["reasons"] = json_of(column.reasons);
    object["may_be_chosen"] = column.may_be_chosen();
    object["unresolved"] =
        column.unresolved ? Json(words(column.unresolved->what, json_system)) : Json(nullptr);
    return object;
}

} // namespace

std::string json(const ComparisonResult& result) {
    Json object = json_heading("compare", result.title, verdicts_of(result), result.inputs);
    object["mixes"] = Json::array();
    for (std::size_t i = 0; i < result.columns.size(); ++i) {
        object["mixes"].push_back(json_of_column(result.columns[i], result.files[i]));
    }
    object["best"] = json_of_best(result);
    object["summary"] = json_of(result.summary);
    object["checks"] = json_of(result.checks);
    object["cautions"] = json_of(result.cautions);
    return written(object);
}

} // namespace boardmark::report
