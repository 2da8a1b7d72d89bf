#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/mix/any_mix.hpp>
#include <boardmark/front/worked_mix.hpp>
#include <boardmark/report/writing/words.hpp>

#include "faults.hpp"

#include <algorithm>

namespace boardmark {
namespace {

bool holds_some(const core::Proportions& proportions, core::Role role) {
    return std::ranges::any_of(proportions.ingredients, [&](const core::Ingredient& ingredient) {
        return ingredient.role == role;
    });
}

/// What no batch is weighed of, whatever the figures of its aggregates are.
std::vector<std::string> never_batched(const core::Proportions& proportions, double volume_m3) {
    std::vector<std::string> reasons;
    if (!(volume_m3 >= core::least_batch_m3 && volume_m3 <= core::most_batch_m3)) {
        reasons.push_back("the volume of a batch lies from a tenth of a litre to 10,000 m3");
    }
    if (proportions.estimate) {
        reasons.push_back("an aggregate has usual figures only: an estimate must not be batched");
    }
    for (const core::Role role : {core::Role::coarse, core::Role::fine}) {
        if (!holds_some(proportions, role)) {
            reasons.push_back(std::string{"the mix holds no "} +
                              (role == core::Role::coarse ? "coarse" : "fine") +
                              " aggregate; batch weights need it");
        }
    }
    return reasons;
}

/// What a batch needs of the aggregates, and some volume.
std::vector<Fault> batch_faults(const std::string& title, const core::Proportions& proportions,
                                double volume_m3) {
    std::vector<Fault> faults;
    for (std::string& reason : never_batched(proportions, volume_m3)) {
        faults.push_back({.file = title, .message = std::move(reason)});
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
