#include <boardmark/report/many/sweep_report.hpp>
#include <boardmark/report/writing/words.hpp>

#include "../writing/json_values.hpp"
#include "sweep_words.hpp"

namespace boardmark::report {
namespace {

Json json_of_axes(const core::Sweep& sweep) {
    Json axes = Json::array();
    for (const core::SweepAxis& axis : sweep.axes) {
        axes.push_back({{"key", core::key_of(axis.variable)},
                        {"unit", variable_unit(axis.variable, core::UnitSystem::si)},
                        {"from", core::shown_value(axis.variable, axis.from)},
                        {"to", core::shown_value(axis.variable, axis.to)},
                        {"points", axis.points}});
    }
    return axes;
}

Json json_of_place(const core::Sweep& sweep, const core::SweepPoint& point) {
    Json place = Json::array();
    for (std::size_t i = 0; i < sweep.axes.size(); ++i) {
        const core::Variable& variable = sweep.axes[i].variable;
        place.push_back({{"key", core::key_of(variable)},
                         {"value", core::shown_value(variable, point.at[i])},
                         {"unit", variable_unit(variable, core::UnitSystem::si)}});
    }
    return place;
}

Json json_of_point(const core::Sweep& sweep, const core::SweepPoint& point) {
    const auto& mix = point.mix;
    const auto sum = [](const core::PartialSum* one) {
        return one ? Json(one->per_m3) : Json(nullptr);
    };
    Json object;
    object["at"] = json_of_place(sweep, point);
    object["selection"] = mix ? json_of(mix->selection) : Json(nullptr);
    object["totals"] = mix ? json_of(mix->totals) : Json(nullptr);
    object["cost_per_m3"] = sum(mix && mix->cost ? &mix->cost->sum : nullptr);
    object["cost_at_least"] = mix && mix->cost && !mix->cost->sum.is_whole();
    object["carbon_kg_m3"] = sum(mix && mix->carbon ? &*mix->carbon : nullptr);
    object["carbon_at_least"] = mix && mix->carbon && !mix->carbon->is_whole();
    object["verdict"] = mix ? json_of(mix->verdict) : Json(nullptr);
    object["failed"] = mix ? Json(mix->verdict.failed) : Json::array();
    object["unresolved"] = point.unresolved
                               ? Json(words(point.unresolved->what, core::UnitSystem::si))
                               : Json(nullptr);
    return object;
}

} // namespace

std::string json(const SweepResult& result) {
    Json object =
        json_heading("sweep", result.title, core::verdicts_of(result.checks), result.inputs);
    object["vary"] = json_of_axes(result.sweep);
    object["points"] = Json::array();
    std::string currency;
    for (const core::SweepPoint& point : result.sweep.points) {
        object["points"].push_back(json_of_point(result.sweep, point));
        if (currency.empty() && point.mix && point.mix->cost) {
            currency = point.mix->cost->currency;
        }
    }
    object["currency"] = currency.empty() ? Json(nullptr) : Json(currency);
    object["checks"] = json_of(result.checks);
    object["cautions"] = json_of(result.cautions);
    return written(object);
}

} // namespace boardmark::report
