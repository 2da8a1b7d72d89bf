#include "batch_work.hpp"

#include <boardmark/core/batch/mixing_order.hpp>
#include <boardmark/text/utf8.hpp>

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::commands {
namespace {

core::IngredientsOfRole binders_of(const WorkedMix& worked) {
    return core::of_role(worked.proportions, core::Role::binder);
}

std::string main_binder(const WorkedMix& worked) {
    const auto binders = binders_of(worked);
    const auto amount = [](const core::Ingredient* binder) { return binder->kg_m3; };
    return std::string{(*std::ranges::max_element(binders, {}, amount))->name};
}

void demand_binder(const std::string& name, const WorkedMix& worked) {
    std::vector<std::string> names;
    for (const core::Ingredient* binder : binders_of(worked)) {
        names.push_back(text::printable(std::string{binder->name}));
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

/// The categories of exposure that the checks found without a class.
std::vector<std::string> unstated_exposure(const std::vector<core::Check>& checks) {
    std::vector<std::string> categories;
    for (const core::Check& check : checks) {
        if (check.is(core::check_ids::exposure_stated) &&
            check.verdict == core::Verdict::not_checked) {
            categories.push_back(check.requirement);
        }
    }
    return categories;
}

core::HoldBack hold_back_of(const BatchOptions& options, const WorkedMix& worked,
                            const std::vector<core::Check>& checks) {
    const units::Quantity& asked = *options.hold_back;
    core::HoldBack hold_back{.percent = std::nullopt,
                             .kg = std::nullopt,
                             .resolution_kg = options.resolution_kg,
                             .minimum_binder_kg_m3 = worked.requirements().minimum_binder_kg_m3,
                             .most_slump_gain_mm =
                                 core::most_slump_gain_mm(worked.requirements(), worked.tables),
                             .unstated_exposure = unstated_exposure(checks)};
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

core::Outcome<core::Charging> charging_of(const std::vector<core::Sack>& sacks,
                                          const WorkedMix& mix, const BatchOptions& asked) {
    return sacks.empty() ? core::charges_of(asked.volume_m3, asked.vessel)
                         : core::charges_of_whole_sacks(asked.volume_m3, asked.vessel,
                                                        mix.proportions, sacks.front());
}

std::vector<core::Check> assessed(const core::Batch& batch, const WorkedMix& mix) {
    return core::assess(mix.mix, mix.proportions, batch, mix.tables);
}

/// Up to whole sacks, exactly as asked, and down to whole sacks: each with its checks.
core::Outcome<report::SackResult> sacks_studied(const WorkedMix& mix, const core::BatchOrder& order,
                                                const BatchOptions& asked) {
    const double water_density_kg_m3 = mix.tables.water_density_kg_m3;
    const auto study = core::study_sacks(mix.proportions, order, water_density_kg_m3);
    if (!study) {
        return study.why();
    }
    report::SackResult result{*study, assessed(study->rounded, mix), {}, {}};
    const auto batch_of = [&](double volume_m3) {
        return core::batch(mix.proportions,
                           {.volume_m3 = volume_m3, .resolution_kg = asked.resolution_kg},
                           water_density_kg_m3);
    };
    const auto exact = batch_of(order.volume_m3);
    if (!exact) {
        return exact.why();
    }
    result.ordered_checks = assessed(*exact, mix);
    if (study->volume_below_m3) {
        const auto below = batch_of(*study->volume_below_m3);
        if (!below) {
            return below.why();
        }
        result.below_checks = assessed(*below, mix);
    }
    return result;
}

/// Water held back beyond what is usual is more often a slip than a plan.
void ask_back_held(BatchWork& work, const core::Tables& tables) {
    const core::SiteWater& water = *work.site_water;
    const double most_percent = tables.practice.most_held_back_percent.value;
    const double percent = 100 * water.held_back.kg / (water.held_back.kg + water.at_mixer.kg);
    if (percent > most_percent) {
        work.improbable.push_back(
            {"--hold-back: {held}, {percent} of the water, is more than is usual ({most}): what is "
             "left is too little to mix well. It is used as written.",
             {{"held", core::Quantity{water.held_back.kg, core::Measure::mass}},
              {"percent", core::Quantity{percent, core::Measure::percent}},
              {"most", core::Quantity{most_percent, core::Measure::percent}}}});
    }
}

} // namespace

core::Outcome<BatchWork> work(const WorkedMix& mix, const BatchOptions& asked) {
    const core::Proportions& proportions = mix.proportions;
    const double water_density_kg_m3 = mix.tables.water_density_kg_m3;
    const auto sacks = sacks_of(asked.sacks, mix);
    BatchWork work;
    const auto charging = charging_of(sacks, mix, asked);
    if (!charging) {
        return charging.why();
    }
    work.charging = *charging;
    core::BatchOrder order{
        .volume_m3 = work.charging.each_m3, .resolution_kg = asked.resolution_kg, .sacks = sacks};
    auto each = core::batch(proportions, order, water_density_kg_m3);
    if (!each) {
        return std::move(each).why();
    }
    work.each = *std::move(each);
    work.checks = assessed(work.each, mix);
    if (!sacks.empty()) {
        order.volume_m3 = asked.volume_m3 / work.charging.count;
        auto studied = sacks_studied(mix, order, asked);
        if (!studied) {
            return std::move(studied).why();
        }
        work.sacks = *std::move(studied);
    }
    work.improbable = asked.improbable;
    if (asked.hold_back) {
        const auto site_water = core::site_water(proportions, work.each,
                                                 hold_back_of(asked, mix, work.checks), mix.tables);
        if (!site_water) {
            return site_water.why();
        }
        work.site_water = *site_water;
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
