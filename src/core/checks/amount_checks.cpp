#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "checks.hpp"
#include "compare.hpp"

#include <cmath>

namespace boardmark::core {
namespace {

constexpr double closes_within_percent = 0.5; // common practice, no source
constexpr double watch_within_percent = 2;    // common practice, no source

Checks minimum_check(const CheckContext& context) {
    const auto& minimum_kg_m3 = context.requirements.minimum_binder_kg_m3;
    if (!minimum_kg_m3) {
        return {};
    }
    const double binder_kg_m3 = context.proportions.totals.binder_kg_m3;
    return {{.id = "binder.minimum",
             .verdict = at_least(
                 {binder_kg_m3, *minimum_kg_m3, amount_precision_kg_m3(context.tables.system)}),
             .value = binder_kg_m3,
             .limit = Limit{.low = *minimum_kg_m3, .high = std::nullopt},
             .measure = Measure::concentration,
             .requirement = "minimum_binder",
             .message = {"cementitious material {value}, at least {limit} as stated",
                         {quantity("value", {binder_kg_m3, Measure::concentration}),
                          quantity("limit", {*minimum_kg_m3, Measure::concentration})}}}};
}

Verdict closure(const Proportions& proportions, double volume_m3) {
    const double off_percent = 100 * std::abs(volume_m3 - 1);
    if (!proportions.submitted) {
        return same(volume_m3, 1) ? Verdict::holds : Verdict::fails;
    }
    if (!above(off_percent, closes_within_percent)) {
        return Verdict::holds;
    }
    return above(off_percent, watch_within_percent) ? Verdict::fails : Verdict::watch;
}

Check volume_check(const CheckContext& context) {
    Check check{.id = "volume.closes",
                .verdict = Verdict::not_checked,
                .measure = Measure::absolute_volume,
                .requirement = "absolute volumes"};
    const auto& volume_m3 = context.proportions.totals.volume_m3;
    if (!volume_m3) {
        check.message = {"amounts and relative densities of all aggregates are needed: the "
                         "submittal and the aggregate test reports have them",
                         {}};
        return check;
    }
    check.verdict = closure(context.proportions, *volume_m3);
    check.value = *volume_m3;
    const double within = closes_within_percent / 100;
    check.limit = Limit{.low = 1 - within, .high = 1 + within};
    check.message = {check.verdict == Verdict::holds
                         ? "the absolute volumes add up to {value} of the volume"
                         : "the absolute volumes add up to {value} of the volume: the yield will "
                           "differ by that; ask for the densities and the air",
                     {quantity("value", {100 * *volume_m3, Measure::percent})}};
    return check;
}

Check heat_check(const CheckContext& context) {
    const TypicalFigure& watch = context.tables.practice.heat_watch_kg_m3;
    const double binder_kg_m3 = context.proportions.totals.binder_kg_m3;
    return {.id = "binder.heat",
            .verdict = above(binder_kg_m3, watch.value) ? Verdict::watch : Verdict::holds,
            .value = binder_kg_m3,
            .limit = Limit{.low = std::nullopt, .high = watch.value},
            .measure = Measure::concentration,
            .requirement = "heat and shrinkage",
            .source = watch.source,
            .message = {"cementitious material {value}; above {limit} look at heat, shrinkage and "
                        "cost",
                        {quantity("value", {binder_kg_m3, Measure::concentration}),
                         quantity("limit", {watch.value, Measure::concentration})}}};
}

Checks sand_share_check(const CheckContext& context) {
    double coarse_m3 = 0;
    double fine_m3 = 0;
    for (const Ingredient& ingredient : context.proportions.ingredients) {
        if (ingredient.role != Role::coarse && ingredient.role != Role::fine) {
            continue;
        }
        if (!ingredient.volume_m3) {
            return {};
        }
        (ingredient.role == Role::fine ? fine_m3 : coarse_m3) += *ingredient.volume_m3;
    }
    if (coarse_m3 == 0 || fine_m3 == 0) {
        return {};
    }
    const PracticeTables& practice = context.tables.practice;
    const double low = practice.lowest_sand_share_percent.value;
    const double high = practice.highest_sand_share_percent.value;
    const double percent = 100 * fine_m3 / (coarse_m3 + fine_m3);
    const bool usual = !below(percent, low) && !above(percent, high);
    return {{.id = "sand.share",
             .verdict = usual ? Verdict::holds : Verdict::watch,
             .value = percent,
             .limit = Limit{.low = low, .high = high},
             .measure = Measure::percent,
             .requirement = "workability and finish",
             .source = practice.lowest_sand_share_percent.source,
             .message = {"fine aggregate is {value} of the aggregate volume; usual is {low} to "
                         "{high}",
                         {quantity("value", {percent, Measure::percent}),
                          quantity("low", {low, Measure::percent}),
                          quantity("high", {high, Measure::percent})}}}};
}

} // namespace

Checks check_amounts(const CheckContext& context) {
    Checks checks = minimum_check(context);
    checks.push_back(volume_check(context));
    checks.push_back(heat_check(context));
    for (Check& check : sand_share_check(context)) {
        checks.push_back(std::move(check));
    }
    return checks;
}

} // namespace boardmark::core
