#include "batch_work.hpp"

#include <boardmark/core/batch/mixing_order.hpp>
#include <boardmark/text/utf8.hpp>

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::commands {
namespace {

std::vector<const core::Ingredient*> binders_of(const WorkedMix& worked) {
    return core::of_role(worked.proportions, core::Role::binder);
}

std::string main_binder(const WorkedMix& worked) {
    const auto binders = binders_of(worked);
    const auto amount = [](const core::Ingredient* binder) { return binder->kg_m3; };
    return (*std::ranges::max_element(binders, {}, amount))->name;
}

void demand_binder(const std::string& name, const WorkedMix& worked) {
    std::vector<std::string> names;
    for (const core::Ingredient* binder : binders_of(worked)) {
        names.push_back(text::printable(binder->name));
    }
    const bool found = std::ranges::any_of(
        binders_of(worked), [&](const core::Ingredient* binder) { return binder->name == name; });
    if (!found) {
        throw wrong_command_line(
            fmt::format("--sacks: '{}' is no cementitious material of this mix",
                        text::printable(name)),
            fmt::format("write one of {}", fmt::join(names, ", ")));
    }
}

std::vector<core::Sack> sacks_of(const std::vector<AskedSack>& asked, const WorkedMix& worked) {
    std::vector<core::Sack> sacks;
    for (const AskedSack& sack : asked) {
        const std::string name = sack.material ? *sack.material : main_binder(worked);
        demand_binder(name, worked);
        sacks.push_back({name, sack.kg});
    }
    return core::main_first(std::move(sacks), worked.proportions);
}

core::HoldBack hold_back_of(const BatchOptions& options, const WorkedMix& worked) {
    const units::Quantity& asked = *options.hold_back;
    core::HoldBack hold_back{.percent = std::nullopt,
                             .kg = std::nullopt,
                             .resolution_kg = options.resolution_kg,
                             .minimum_binder_kg_m3 = worked.requirements.minimum_binder_kg_m3};
    switch (asked.unit->dimension) {
    case units::Dimension::percentage:
        hold_back.percent = asked.inside();
        break;
    case units::Dimension::volume:
        hold_back.kg = asked.inside() * worked.tables.water_density_kg_m3;
        break;
    default:
        hold_back.kg = asked.inside();
    }
    return hold_back;
}

core::Charging charging_of(const std::vector<core::Sack>& sacks, const WorkedMix& mix,
                           const BatchOptions& asked) {
    return sacks.empty() ? core::charges_of(asked.volume_m3, asked.vessel)
                         : core::charges_of_whole_sacks(asked.volume_m3, asked.vessel,
                                                        mix.proportions, sacks.front());
}

/// Water held back beyond what is usual is more often a slip than a plan.
void ask_back_held(BatchWork& work, const core::Tables& tables) {
    const core::SiteWater& water = *work.site_water;
    const double most_percent = tables.practice.most_held_back_percent.value;
    const double percent = 100 * water.held_back.kg / (water.held_back.kg + water.at_mixer.kg);
    if (percent > most_percent) {
        work.improbable.push_back(
            {"--hold-back: {held}, {percent} of the water, is more than is usual ({most}): the "
             "rest "
             "hardly mixes. It is used as written.",
             {{"held", core::Quantity{water.held_back.kg, core::Measure::mass}},
              {"percent", core::Quantity{percent, core::Measure::percent}},
              {"most", core::Quantity{most_percent, core::Measure::percent}}}});
    }
}

} // namespace

BatchWork work(const WorkedMix& mix, const BatchOptions& asked) {
    const core::Proportions& proportions = mix.proportions;
    const double water_density_kg_m3 = mix.tables.water_density_kg_m3;
    const auto assessed = [&](const core::Batch& batch) {
        return core::assess(mix.requirements, proportions, batch, mix.tables);
    };
    const auto sacks = sacks_of(asked.sacks, mix);
    BatchWork work;
    work.charging = charging_of(sacks, mix, asked);
    core::BatchOrder order{
        .volume_m3 = work.charging.each_m3, .resolution_kg = asked.resolution_kg, .sacks = sacks};
    work.each = core::batch(proportions, order, water_density_kg_m3);
    work.checks = assessed(work.each);
    if (!sacks.empty()) {
        order.volume_m3 = asked.volume_m3 / work.charging.count;
        const core::SackStudy study = core::study_sacks(proportions, order, water_density_kg_m3);
        const auto assessed_at = [&](double volume_m3) {
            return assessed(core::batch(
                proportions, {.volume_m3 = volume_m3, .resolution_kg = asked.resolution_kg},
                water_density_kg_m3));
        };
        work.sacks =
            report::SackResult{study, assessed(study.rounded), assessed_at(order.volume_m3),
                               study.volume_below_m3 ? assessed_at(*study.volume_below_m3)
                                                     : std::vector<core::Check>{}};
    }
    work.improbable = asked.improbable;
    if (asked.hold_back) {
        work.site_water =
            core::site_water(proportions, work.each, hold_back_of(asked, mix), mix.tables);
        work.each.order =
            core::mixing_order(proportions, work.each, asked.resolution_kg, &*work.site_water);
        work.each.held_back_kg = work.site_water->held_back.kg;
        ask_back_held(work, mix.tables);
    }
    work.each.cautions.insert(work.each.cautions.begin(), work.improbable.begin(),
                              work.improbable.end());
    const auto cautions = core::cautions_of(work.charging);
    work.each.cautions.insert(work.each.cautions.begin(), cautions.begin(), cautions.end());
    work.whole = core::sum_of(work.each, work.charging.count);
    return work;
}

} // namespace boardmark::commands
