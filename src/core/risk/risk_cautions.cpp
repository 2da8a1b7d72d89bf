#include "risk_cautions.hpp"

#include "../basis/phrases.hpp"

#include <algorithm>
#include <string>

namespace boardmark::core {
namespace {

template <class Selects>
std::string keys_of(const Risk& risk, Selects selects) {
    std::string keys;
    for (const ScatteredInput& input : risk.inputs) {
        if (selects(input)) {
            keys += (keys.empty() ? "" : ", ") + input.key;
        }
    }
    return keys;
}

std::size_t samples_of(const Risk& risk, RiskQuantity quantity) {
    const auto found = std::ranges::find(risk.quantities, quantity, &Distribution::quantity);
    return found == risk.quantities.end() ? 0 : found->samples;
}

Argument count_of(std::string name, std::size_t count) {
    return quantity(std::move(name), {static_cast<double>(count), Measure::count});
}

void caution_about_inputs(const Risk& risk, std::vector<Phrase>& cautions) {
    const std::string exact =
        keys_of(risk, [](const ScatteredInput& input) { return input.deviation == 0; });
    if (!exact.empty()) {
        cautions.push_back(
            {"no scatter is known of {keys}: they count as exact, so what depends on "
             "them scatters more than shown; state them under 'scatter'",
             {word("keys", exact)}});
    }
    const std::string assumed = keys_of(
        risk, [](const ScatteredInput& input) { return input.assumed && input.deviation > 0; });
    if (!assumed.empty()) {
        cautions.push_back({"the scatter of {keys} is assumed: a tolerance as 1.96 standard "
                            "deviations, a moisture by practice; the plant's own records tell",
                            {word("keys", assumed)}});
    }
}

void caution_about_strength(const Risk& risk, const Requirements& requirements,
                            std::vector<Phrase>& cautions) {
    const std::size_t known = samples_of(risk, RiskQuantity::strength);
    if (known == 0) {
        cautions.push_back({"no strength is expected at this w/cm by table or own results: nothing "
                            "is told of strength",
                            {}});
        return;
    }
    if (known < risk.samples) {
        cautions.push_back(
            {"{missing} of {samples} batches have no expected strength and are left "
             "out of its figures",
             {count_of("missing", risk.samples - known), count_of("samples", risk.samples)}});
    }
    cautions.push_back({requirements.records
                            ? "a strength is that expected at the ratio, an estimate until it is "
                              "tested, and the scatter of tests; a record's scatter holds that of "
                              "w/cm already, so strengths scatter somewhat less in truth"
                            : "a strength is that expected at the ratio, an estimate until it is "
                              "tested, and the scatter of tests; beyond the ends of its table or "
                              "curve it stays at what they give there",
                        {}});
}

} // namespace

std::vector<Phrase> cautions_of(const Risk& risk, const Requirements& requirements) {
    std::vector<Phrase> cautions;
    if (risk.was_stopped()) {
        cautions.push_back(
            {"stopped after {samples} of {asked} batches; what drives them was not asked",
             {count_of("samples", risk.samples), count_of("asked", risk.samples_asked)}});
    }
    cautions.push_back(
        {"all of this speaks of the batching scatter stated here and of nothing else: it is no "
         "promise about the plant. A scale or a probe that is off all day, a wrong bin, water "
         "added on site are not in it",
         {}});
    cautions.push_back({"every weighing and every figure scatters by itself, normally distributed "
                        "around the value of the mix",
                        {}});
    caution_about_inputs(risk, cautions);
    caution_about_strength(risk, requirements, cautions);
    if (samples_of(risk, RiskQuantity::relative_yield) == 0) {
        cautions.push_back({"the yield does not follow: a relative density or an aggregate is not "
                            "stated; amounts count as those of the volume ordered",
                            {}});
    }
    return cautions;
}

} // namespace boardmark::core
