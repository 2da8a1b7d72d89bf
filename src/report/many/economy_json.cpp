#include <boardmark/report/many/economy_report.hpp>

#include "../writing/json_values.hpp"
#include "../writing/measured.hpp"
#include "economy_words.hpp"
#include "sweep_words.hpp"

namespace boardmark::report {
namespace {

using core::Economy;
using core::UnitSystem;
using report::json_of;

Json json_of_values(const Economy& economy, const std::vector<double>& at) {
    Json values = Json::array();
    for (std::size_t i = 0; i < economy.bounds.size(); ++i) {
        const core::Variable& variable = economy.bounds[i].variable;
        values.push_back({{"key", core::key_of(variable)},
                          {"value", core::shown_value(variable, at[i])},
                          {"unit", variable_unit(variable, UnitSystem::si)}});
    }
    return values;
}

Json json_of_bounds(const Economy& economy) {
    Json bounds = Json::array();
    for (const core::VariableBound& bound : economy.bounds) {
        bounds.push_back({{"key", core::key_of(bound.variable)},
                          {"unit", variable_unit(bound.variable, UnitSystem::si)},
                          {"low", core::shown_value(bound.variable, bound.low)},
                          {"high", core::shown_value(bound.variable, bound.high)},
                          {"stated", bound.stated}});
    }
    return bounds;
}

Json json_of_figures(const core::EconomyFigures& figures) {
    return {{"cost_per_m3", number_or_null(figures.cost_per_m3)},
            {"carbon_kg_m3", number_or_null(figures.carbon_kg_m3)},
            {"binder_kg_m3", figures.binder_kg_m3}};
}

Json json_of_best(const Economy& economy) {
    Json best;
    best["as_written"] = economy.is_as_written;
    best["at"] = json_of_values(economy, economy.at);
    best["selection"] = json_of(economy.proportions.selection);
    best["ingredients"] = json_of(economy.proportions.ingredients);
    best["totals"] = json_of(economy.proportions.totals);
    best["value"] = economy.figures.of(economy.objective);
    best["figures"] = json_of_figures(economy.figures);
    best["verdict"] = json_of(core::verdicts_of(economy.checks));
    best["checks"] = json_of(economy.checks);
    best["checked_as_weighed"] = economy.checked_as_weighed;
    return best;
}

Json json_of_prices(const Economy& economy) {
    Json prices = Json::array();
    for (const core::LimitPrice& price : economy.prices) {
        const Measured step = measured(price.relaxed_by, UnitSystem::si);
        prices.push_back({{"id", price.id},
                          {"relaxed_by", {{"value", step.amount}, {"unit", step.unit}}},
                          {"saves", price.saves}});
    }
    return prices;
}

Json json_of_front(const Economy& economy) {
    Json front = Json::array();
    for (const core::FrontMix& mix : economy.front) {
        Json one;
        one["name"] = mix.name;
        one["at"] = json_of_values(economy, mix.at);
        one.update(json_of_figures(mix.figures));
        front.push_back(std::move(one));
    }
    return front;
}

} // namespace

std::string json(const EconomyResult& result) {
    const Economy& economy = result.economy;
    Json object =
        json_heading("economy", result.title, core::verdicts_of(result.checks), result.inputs);
    object["objective"] = name_of(economy.objective);
    object["currency"] = economy.currency.empty() ? Json(nullptr) : Json(economy.currency);
    object["bounds"] = json_of_bounds(economy);
    object["best"] = json_of_best(economy);
    const bool has_file = economy.file.has_value();
    object["file"] = {
        {"value", has_file ? Json(economy.file->of(economy.objective)) : Json(nullptr)},
        {"fails", economy.file_fails},
        {"within_bounds",
         economy.file_within_bounds ? Json(*economy.file_within_bounds) : Json(nullptr)}};
    object["unrounded"] = {
        {"at", json_of_values(economy, economy.unrounded_at)},
        {"figures", economy.unrounded ? json_of_figures(*economy.unrounded) : Json(nullptr)}};
    object["active"] = economy.active;
    object["prices"] = json_of_prices(economy);
    object["front"] = json_of_front(economy);
    object["search"] = {{"mixes", economy.mixes},
                        {"starts", economy.starts},
                        {"worst_start", number_or_null(economy.worst_start)}};
    object["by_trial"] = economy.by_trial;
    object["checks"] = json_of(result.checks); // of the mix as written, like the verdict
    object["cautions"] = json_of(economy.proportions.worksheet.cautions);
    return written(object);
}

} // namespace boardmark::report
