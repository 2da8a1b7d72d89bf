#include <boardmark/core/basis/unresolved.hpp>
#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/trial/yield.hpp>

#include "../basis/phrases.hpp"
#include "../batch/charged.hpp"
#include "../mix/door/complete_again.hpp"
#include "yield_uncertainty.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

double density_of(const DensityTest& test) {
    if (const auto* density = std::get_if<Reading>(&test)) {
        return density->value;
    }
    const auto& measure = std::get<FilledMeasure>(test);
    return (measure.full_kg.value - measure.empty_kg.value) / measure.volume_m3.value;
}

Step computed(std::string name, Quantity value, Phrase reason, std::string citation = "") {
    return {.quantity = std::move(name),
            .value = value.value,
            .measure = value.measure,
            .provenance = Provenance::computed,
            .reason = std::move(reason),
            .source = {std::move(citation), Confidence::read}};
}

constexpr const char* density_standard = "ASTM C138";

void record_density(const Trial& trial, double density_kg_m3, Worksheet& worksheet) {
    const auto* measure = std::get_if<FilledMeasure>(&trial.tests.density);
    worksheet.steps.push_back(
        measure ? computed("density", {density_kg_m3, Measure::fresh_density},
                           {"measure of {volume}: full {full} less empty {empty}, over its volume",
                            {quantity("volume", {measure->volume_m3.value, Measure::volume}),
                             quantity("full", {measure->full_kg.value, Measure::mass}),
                             quantity("empty", {measure->empty_kg.value, Measure::mass})}},
                           density_standard)
                : Step{.quantity = "density",
                       .value = density_kg_m3,
                       .measure = Measure::fresh_density,
                       .provenance = Provenance::given,
                       .reason = {"measured", {}},
                       .source = {density_standard, Confidence::read},
                       .marks = {Mark::given}});
}

/// The batch as a mix of 1 m3 of the concrete that it became.
SubmittedMix mix_found(const Trial& trial, double volume_m3, double air_percent,
                       const Tables& tables) {
    SubmittedMix mix = std::visit(
        [](const auto& either) {
            return SubmittedMix{.title = either->title,
                                .system = either->system,
                                .requirements = either->requirements,
                                .air_percent = 0,
                                .amounts = {},
                                .nominal_max_size_mm = 0};
        },
        trial.mix);
    mix.air_percent = air_percent;
    double water_kg = charged_water_kg(trial.water, tables);
    for (const BatchedMaterial& batched : trial.batched) {
        const SaturatedAmount amount = saturated(batched, tables);
        water_kg += amount.free_water_kg;
        mix.amounts.push_back({.material = batched.material, .kg_m3 = amount.kg / volume_m3});
        if (role_of(batched.material.kind) == Role::coarse) {
            mix.nominal_max_size_mm =
                std::max(mix.nominal_max_size_mm,
                         batched.material.aggregate.nominal_max_size_mm.value_or(0));
        }
    }
    mix.water_kg_m3 = water_kg / volume_m3;
    return mix;
}

/// That mix accepted. Unresolved where no figures follow from it.
Outcome<Proportions> as_found(const Trial& trial, double volume_m3, double air_percent,
                              const Tables& tables) {
    const auto mix = complete_again(mix_found(trial, volume_m3, air_percent, tables));
    if (!mix) {
        return mix.why();
    }
    return accept(*mix, tables);
}

/// Volume of everything but the air in 1 m3, where every relative density is known.
Outcome<std::optional<double>> air_free_volume_m3(const Trial& trial, double volume_m3,
                                                  const Tables& tables) {
    const auto found = as_found(trial, volume_m3, 0, tables);
    if (!found) {
        return found.why();
    }
    return found->totals.volume_m3;
}

/// Aggregates may take up more water than the batch brings: then nothing of it is concrete.
std::optional<Unresolved> demand_water(const Trial& trial, const Tables& tables) {
    double water_kg = charged_water_kg(trial.water, tables);
    for (const BatchedMaterial& batched : trial.batched) {
        water_kg += saturated(batched, tables).free_water_kg;
    }
    if (water_kg <= 0) {
        return Unresolved{{"no water is left to mix with: the aggregates take up all that was "
                           "weighed",
                           {}},
                          {{"check the moistures and the absorptions", {}},
                           {"enter all water that went into the mixer", {}}}};
    }
    return std::nullopt;
}

/// The air that counts. Gravimetric air stands in for a meter only where it can be air at all.
Outcome<double> known_air_percent(const Yield& yield) {
    if (yield.measured_air_percent) {
        return *yield.measured_air_percent;
    }
    constexpr double reading_error = -0.5;
    constexpr double most_percent = 20; // what a file may state
    const auto& gravimetric = yield.gravimetric_air_percent;
    if (gravimetric && *gravimetric >= reading_error && *gravimetric <= most_percent) {
        return std::max(*gravimetric, 0.0);
    }
    return Unresolved{
        {gravimetric ? "air was not measured, and by the density it would be {gravimetric}: a "
                       "weight, a moisture, a relative density or the density test is wrong"
                     : "air was not measured, and it does not follow from the density: an "
                       "aggregate states no relative density",
         {percent_of("gravimetric", gravimetric.value_or(0))}},
        {{"measure the air of the trial and add 'trial.air'", {}},
         {"check the weights, the moistures, the relative densities and the density test", {}}}};
}

/// A ratio that no concrete has comes from a wrong weight.
std::optional<Unresolved> demand_possible_ratio(double w_cm) {
    constexpr double least = 0.1;
    constexpr double most = 3;
    if (w_cm < least || w_cm > most) {
        return Unresolved{{"w/cm would be {w_cm}, which no concrete has",
                           {quantity("w_cm", {w_cm, Measure::w_cm})}},
                          {{"check the weights of water and cementitious material", {}},
                           {"check the moistures: the free water counts", {}}}};
    }
    return std::nullopt;
}

void record_air(const Yield& yield, Worksheet& worksheet) {
    if (!yield.air_free_density_kg_m3) {
        return;
    }
    const Argument air_free =
        quantity("air_free", {*yield.air_free_density_kg_m3, Measure::fresh_density});
    worksheet.steps.push_back(
        computed("air_free_density", {*yield.air_free_density_kg_m3, Measure::fresh_density},
                 {"mass of the batch over the absolute volume of everything in it but air", {}},
                 density_standard));
    worksheet.steps.push_back(computed(
        "gravimetric_air", {*yield.gravimetric_air_percent, Measure::percent},
        {"by how much the density {density} falls short of the air-free density {air_free}",
         {quantity("density", {yield.density_kg_m3, Measure::fresh_density}), air_free}},
        density_standard));
}

double intended_volume_m3(const Trial& trial, const Proportions& designed, double binder_kg,
                          Worksheet& worksheet) {
    if (trial.intended_volume_m3) {
        worksheet.steps.push_back({.quantity = "intended_volume",
                                   .value = *trial.intended_volume_m3,
                                   .measure = Measure::volume,
                                   .provenance = Provenance::given,
                                   .reason = {"stated in the trial file", {}},
                                   .marks = {Mark::given}});
        return *trial.intended_volume_m3;
    }
    const double per_m3_kg = designed.totals.binder_kg_m3;
    worksheet.steps.push_back(
        computed("intended_volume", {binder_kg / per_m3_kg, Measure::volume},
                 {"cementitious material batched, {batched}, over {designed} of the mix",
                  {quantity("batched", {binder_kg, Measure::mass}),
                   quantity("designed", {per_m3_kg, Measure::concentration})}}));
    return binder_kg / per_m3_kg;
}

void record_paste(const Yield& yield, Worksheet& worksheet) {
    const Totals& found = yield.found.totals;
    worksheet.steps.push_back(
        computed("water", {found.water_kg_m3, Measure::concentration},
                 {"water added, free water of the aggregates and the admixtures' liquid, over the "
                  "yield {volume}",
                  {quantity("volume", {yield.volume_m3, Measure::volume})}}));
    worksheet.steps.push_back(computed("binder", {found.binder_kg_m3, Measure::concentration},
                                       {"cementitious material batched over the yield {volume}",
                                        {quantity("volume", {yield.volume_m3, Measure::volume})}},
                                       density_standard));
    worksheet.steps.push_back(
        computed("w_cm", {found.w_cm, Measure::w_cm},
                 {"water {water} over cementitious material {binder}",
                  {quantity("water", {found.water_kg_m3, Measure::concentration}),
                   quantity("binder", {found.binder_kg_m3, Measure::concentration})}}));
}

} // namespace

Outcome<Yield> yield_of(const CompleteTrial& complete_trial, const Proportions& designed,
                        const Tables& tables) {
    const Trial& trial = *complete_trial;
    if (auto why = demand_water(trial, tables)) {
        return std::move(*why);
    }
    Yield yield{};
    Worksheet& worksheet = yield.worksheet;
    yield.weighed_kg = weighed_kg(trial, tables);
    for (const auto& [name, kg] : yield.weighed_kg) {
        yield.batch_mass_kg += kg;
    }
    yield.density_kg_m3 = density_of(trial.tests.density);
    yield.volume_m3 = yield.batch_mass_kg / yield.density_kg_m3;
    record_density(trial, yield.density_kg_m3, worksheet);
    worksheet.steps.push_back(
        computed("yield", {yield.volume_m3, Measure::volume},
                 {"mass of the batch {mass} over its density {density}",
                  {quantity("mass", {yield.batch_mass_kg, Measure::mass}),
                   quantity("density", {yield.density_kg_m3, Measure::fresh_density})}},
                 density_standard));

    yield.intended_volume_m3 =
        intended_volume_m3(trial, designed, charged_binder_kg(trial), worksheet);
    yield.relative_yield = yield.volume_m3 / yield.intended_volume_m3;
    worksheet.steps.push_back(
        computed("relative_yield", {yield.relative_yield, Measure::ratio},
                 {"yield {yield} over the intended {intended}",
                  {quantity("yield", {yield.volume_m3, Measure::volume}),
                   quantity("intended", {yield.intended_volume_m3, Measure::volume})}},
                 density_standard));
    yield.volume_uncertainty_m3 = volume_uncertainty_m3(trial, yield);

    const auto air_free_m3 = air_free_volume_m3(trial, yield.volume_m3, tables);
    if (!air_free_m3) {
        return air_free_m3.why();
    }
    if (*air_free_m3) {
        yield.air_free_density_kg_m3 = yield.density_kg_m3 / **air_free_m3;
        yield.gravimetric_air_percent = 100 * (1 - **air_free_m3);
    }
    yield.measured_air_percent = trial.tests.air_percent;
    const auto air = known_air_percent(yield);
    if (!air) {
        return air.why();
    }
    yield.air_percent = *air;
    record_air(yield, worksheet);

    yield.slump = trial.tests.at_placing();
    yield.target = {.slump_mm = trial.target_slump_mm.value_or(designed.selection.slump_mm),
                    .air_percent =
                        trial.target_air_percent.value_or(designed.selection.air_percent)};
    auto found = as_found(trial, yield.volume_m3, yield.air_percent, tables);
    if (!found) {
        return std::move(found).why();
    }
    yield.found = *std::move(found);
    yield.found.is_load = true;
    if (auto why = demand_possible_ratio(yield.found.totals.w_cm)) {
        return std::move(*why);
    }
    record_paste(yield, worksheet);
    return yield;
}

} // namespace boardmark::core
