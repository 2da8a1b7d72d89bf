#include <boardmark/report/trial/yield_report.hpp>
#include <boardmark/report/writing/words.hpp>
#include <boardmark/units/date.hpp>

#include "../writing/json_values.hpp"
#include "../writing/verdicts.hpp"

namespace boardmark::report {
namespace {

Json json_of_dose(const core::DoseChange& dose) {
    return {{"reducer", dose.reducer},
            {"found_ml_100kg", dose.found_ml_100kg},
            {"next_ml_100kg", dose.next_ml_100kg}};
}

Json json_of_next(const core::NextTrial& next) {
    Json object{{"lever", next.lever == core::Lever::water ? "water" : "dose"},
                {"selection", json_of(next.proportions.selection)},
                {"ingredients", json_of(next.proportions.ingredients)},
                {"totals", json_of(next.proportions.totals)},
                {"dose", next.dose ? json_of_dose(*next.dose) : Json(nullptr)},
                {"batch",
                 {{"volume_m3", next.batch.volume_m3}, {"ingredients", json_of(next.batch.items)}}},
                {"verdict", json_of(core::verdicts_of(next.checks))},
                {"checks", json_of(next.checks)},
                {"adjustments", json_of(next.adjustments)},
                {"steps", json_of(next.proportions.worksheet.steps)},
                {"advice", json_of(next.advice)},
                {"order", json_of(next.batch.order)},
                {"cautions", json_of(next.batch.cautions)}};
    return object;
}

/// What water the aggregates brought, and whose figure that is.
Json json_of_moistures(const core::Trial& trial) {
    Json array = Json::array();
    for (const core::BatchedMaterial& batched : trial.batched) {
        if (const auto& moisture = batched.material.aggregate.moisture_percent) {
            array.push_back({{"name", batched.material.name},
                             {"moisture_percent", *moisture},
                             {"from", batched.moisture_of_the_day ? "trial" : "mix file"}});
        }
    }
    return array;
}

} // namespace

std::string json(const YieldResult& result) {
    const core::Yield& yield = result.yield;
    Json object = json_heading("yield", result.title, verdicts_of(result), result.inputs);
    object["mix"] = result.mix_file;
    object["name"] = result.name.empty() ? Json(nullptr) : Json(result.name);
    object["date"] = result.date ? Json(units::written_date(*result.date)) : Json(nullptr);
    object["batch_mass_kg"] = yield.batch_mass_kg;
    object["density_kg_m3"] = yield.density_kg_m3;
    object["volume_m3"] = yield.volume_m3;
    object["volume_uncertainty_m3"] = yield.volume_uncertainty_m3;
    object["intended_volume_m3"] = yield.intended_volume_m3;
    object["relative_yield"] = yield.relative_yield;
    object["gravimetric_air_percent"] = number_or_null(yield.gravimetric_air_percent);
    object["measured_air_percent"] = number_or_null(yield.measured_air_percent);
    object["air_free_density_kg_m3"] = number_or_null(yield.air_free_density_kg_m3);
    object["slump_mm"] = yield.slump.mm;
    object["target"] = {{"slump_mm", yield.target.slump_mm},
                        {"air_percent", yield.target.air_percent}};
    object["moistures"] = json_of_moistures(result.trial);
    object["water_kg_m3"] = yield.found.totals.water_kg_m3;
    object["binder_kg_m3"] = yield.found.totals.binder_kg_m3;
    object["w_cm"] = yield.found.totals.w_cm;
    object["ingredients"] = json_of(yield.found.ingredients);
    object["next"] = result.next ? json_of_next(*result.next) : Json(nullptr);
    object["unresolved"] =
        result.no_next ? Json(words(result.no_next->what, core::UnitSystem::si)) : Json(nullptr);
    object["checks"] = json_of(result.checks);
    object["steps"] = json_of(yield.worksheet.steps);
    object["cautions"] = json_of(yield.found.worksheet.cautions);
    return written(object);
}

} // namespace boardmark::report
