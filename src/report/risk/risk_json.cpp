#include <boardmark/report/risk/risk_report.hpp>

#include "../writing/json_values.hpp"
#include "../writing/measured.hpp"

namespace boardmark::report {
namespace {

using core::Risk;

/// "1" stands for plain numbers.
std::string unit_of(core::Measure measure) {
    return measured({0, measure}, core::UnitSystem::si).unit;
}

Json json_of_scatter(const Risk& risk) {
    Json inputs = Json::array();
    for (const core::ScatteredInput& input : risk.inputs) {
        const bool has_source = !input.source.citation.empty();
        inputs.push_back({{"input", input.key},
                          {"standard_deviation", input.deviation},
                          {"unit", unit_of(input.measure)},
                          {"assumed", input.assumed},
                          {"source", has_source ? Json(input.source.citation) : Json(nullptr)}});
    }
    return inputs;
}

Json json_of_quantities(const Risk& risk) {
    Json quantities = Json::array();
    for (const core::Distribution& one : risk.quantities) {
        quantities.push_back({{"quantity", core::name_of(one.quantity)},
                              {"unit", unit_of(core::measure_of(one.quantity))},
                              {"samples", one.samples},
                              {"mean", one.mean},
                              {"standard_deviation", one.standard_deviation},
                              {"p05", one.p05},
                              {"p50", one.p50},
                              {"p95", one.p95},
                              {"histogram",
                               {{"from", one.histogram.from},
                                {"to", one.histogram.to},
                                {"counts", one.histogram.counts}}}});
    }
    return quantities;
}

Json json_of_limits(const Risk& risk) {
    Json limits = Json::array();
    for (const core::LimitRisk& limit : risk.limits) {
        limits.push_back({{"id", limit.id.name()},
                          {"probability", limit.probability},
                          {"low", limit.low},
                          {"high", limit.high},
                          {"watch", limit.watch},
                          {"not_checked", limit.not_checked}});
    }
    return limits;
}

Json json_of_drivers(const Risk& risk) {
    Json drivers = Json::array();
    for (const core::Driver& driver : risk.drivers) {
        drivers.push_back({{"quantity", core::name_of(driver.quantity)},
                           {"input", risk.inputs[driver.input].key},
                           {"first_order", driver.first_order},
                           {"total", driver.total}});
    }
    return drivers;
}

} // namespace

std::string json(const RiskResult& result) {
    const Risk& risk = result.risk;
    Json object =
        json_heading("risk", result.title, core::verdicts_of(result.checks), result.inputs);
    object["samples"] = risk.samples;
    object["samples_asked"] = risk.samples_asked;
    object["seed"] = risk.seed;
    object["driver_samples"] = risk.driver_samples;
    object["scatter"] = json_of_scatter(risk);
    object["quantities"] = json_of_quantities(risk);
    object["limits"] = json_of_limits(risk);
    object["drivers"] = json_of_drivers(risk);
    object["checks"] = json_of(result.checks);
    object["cautions"] = json_of(risk.cautions);
    for (const Json& caution : json_of(result.cautions)) {
        object["cautions"].push_back(caution);
    }
    return written(object);
}

} // namespace boardmark::report
