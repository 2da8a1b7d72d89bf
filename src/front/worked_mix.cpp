#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/mix/any_mix.hpp>
#include <boardmark/front/worked_mix.hpp>
#include <boardmark/report/writing/words.hpp>

#include "faults.hpp"

#include <cmath>

namespace boardmark {
namespace {

/// What a batch needs of the aggregates, and some volume.
std::vector<Fault> batch_faults(const std::string& title, const core::Proportions& proportions,
                                double volume_m3) {
    std::vector<Fault> faults;
    if (!std::isfinite(volume_m3) || volume_m3 <= 0) {
        faults.push_back({.file = title, .message = "the volume of a batch is above 0"});
    }
    for (const core::Ingredient& ingredient : proportions.ingredients) {
        const bool aggregate =
            ingredient.role == core::Role::coarse || ingredient.role == core::Role::fine;
        if (!aggregate) {
            continue;
        }
        const core::Material& material = *ingredient.material;
        if (!material.aggregate.moisture_percent || !material.aggregate.absorption_percent) {
            faults.push_back({.file = title,
                              .message = material.name + ": moisture_percent or absorption_percent "
                                                         "is missing; batch weights need them"});
        }
    }
    return faults;
}

} // namespace

WorkedMix::WorkedMix(core::AnyCompleteMix mix, core::Tables tables, core::Proportions proportions,
                     report::InputFiles inputs)
    : mix_{std::move(mix)}
    , tables_{std::move(tables)}
    , proportions_{std::move(proportions)}
    , checks_{core::assess(mix_, proportions_, tables_)}
    , inputs_{std::move(inputs)} {}

const std::string& WorkedMix::title() const {
    return core::title_of(mix_);
}

const core::Requirements& WorkedMix::requirements() const {
    return core::requirements_of(mix_);
}

Opened<core::Batch> WorkedMix::batch(double volume_m3) const {
    auto faults = batch_faults(title(), proportions_, volume_m3);
    if (!faults.empty()) {
        std::string told = front::lines_of(faults);
        return {std::move(faults), std::move(told)};
    }
    auto batch = core::batch(proportions_, {.volume_m3 = volume_m3}, tables_.water_density_kg_m3);
    if (!batch) {
        return {batch.why(), report::text(batch.why(), title(), system())};
    }
    return {*std::move(batch), std::vector<Fault>{}};
}

report::MixResult WorkedMix::result() const {
    return {.command = proportions_.submitted ? "check" : "proportion",
            .title = title(),
            .requirements = requirements(),
            .proportions = proportions_,
            .checks = checks_,
            .grading = &tables_.grading,
            .aggregate = core::aggregate_together(proportions_, tables_.grading,
                                                  tables_.method.fineness_sieves_mm),
            .inputs = inputs_};
}

std::string WorkedMix::text(bool explain) const {
    return report::text(result(), {.system = system(), .explain = explain});
}

std::string WorkedMix::json() const {
    return report::json(result());
}

std::string WorkedMix::csv() const {
    return report::csv(result(), system());
}

std::string WorkedMix::html() const {
    report::MixResult page = result();
    page.strength = core::strength_over_ratio(requirements(), proportions_, tables_);
    return report::html(page, {.system = system()});
}

} // namespace boardmark
