#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../mix/fine_share.hpp"
#include "../mix/unlisted_aggregate.hpp"
#include "assumed_density.hpp"
#include "checks.hpp"
#include "compare.hpp"
#include "mass_heat.hpp"
#include "supplementary.hpp"

#include <cmath>

namespace boardmark::core {
namespace {

constexpr double closes_within_percent = 0.5; // common practice, no source
constexpr double watch_within_percent = 2;    // common practice, no source

void minimum_check(const CheckContext& context, Findings& findings) {
    const auto& minimum_kg_m3 = context.requirements.minimum_binder_kg_m3;
    if (!minimum_kg_m3) {
        return;
    }
    const double binder_kg_m3 = context.proportions.totals.binder_kg_m3;
    const double bare_kg_m3 = binder_kg_m3 - ground_limestone_kg_m3(context.proportions);
    const auto held = [&](double kg_m3) {
        return at_least({kg_m3, *minimum_kg_m3, amount_precision_kg_m3(context.tables.system)});
    };
    const bool by_limestone =
        held(binder_kg_m3) != Verdict::fails && held(bare_kg_m3) == Verdict::fails;
    findings.add({.id = check_ids::binder_minimum,
                  .verdict = by_limestone ? Verdict::watch : held(binder_kg_m3),
                  .value = binder_kg_m3,
                  .limit = Limit{.low = *minimum_kg_m3, .high = std::nullopt},
                  .measure = Measure::concentration},
                 [&](Check& told) {
                     told.requirement = "minimum_binder";
                     told.message = {by_limestone
                                         ? "cementitious material {value}, at least {limit} as "
                                           "stated; without the ground limestone, which may not "
                                           "count, {bare}"
                                         : "cementitious material {value}, at least {limit} as "
                                           "stated",
                                     {concentration("value", binder_kg_m3),
                                      concentration("limit", *minimum_kg_m3),
                                      concentration("bare", bare_kg_m3)}};
                 });
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

void volume_check(const CheckContext& context, Findings& findings) {
    const auto& volume_m3 = context.proportions.totals.volume_m3;
    const bool is_assumed =
        context.proportions.submitted && density_is_assumed(context.proportions);
    Finding found{.id = check_ids::volume_closes,
                  .verdict = Verdict::not_checked,
                  .measure = Measure::absolute_volume};
    if (volume_m3) {
        const double within = closes_within_percent / 100;
        found.verdict = closure(context.proportions, *volume_m3);
        if (found.verdict == Verdict::holds && is_assumed) {
            found.verdict = Verdict::watch;
        }
        found.value = *volume_m3;
        found.limit = Limit{.low = 1 - within, .high = 1 + within};
    }
    findings.add(found, [&](Check& told) {
        told.requirement = "absolute volumes";
        if (!volume_m3) {
            told.message = {"amounts and relative densities of all aggregates are needed: the "
                            "submittal and the aggregate test reports have them",
                            {}};
            return;
        }
        const bool closes = closure(context.proportions, *volume_m3) == Verdict::holds;
        told.message = {closes ? "the absolute volumes add up to {value} of the volume"
                               : "the absolute volumes add up to {value} of the volume: the yield "
                                 "will differ by that; ask for the densities and the air",
                        {percent_of("value", 100 * *volume_m3)}};
        if (is_assumed) {
            append_assumed_densities(context.proportions, told.message);
        }
    });
}

/// The estimate of the heat in a thick section decides nothing, so it waits for who reads it.
void heat_check(const CheckContext& context, Findings& findings) {
    const TypicalFigure& watch = context.tables.practice.heat_watch_kg_m3;
    const double binder_kg_m3 = context.proportions.totals.binder_kg_m3;
    const auto& thickness_mm = context.requirements.section.thickness_mm;
    const bool hot =
        above(binder_kg_m3, watch.value) || is_mass_concrete(thickness_mm, context.tables);
    findings.add({.id = check_ids::binder_heat,
                  .verdict = hot ? Verdict::watch : Verdict::holds,
                  .value = binder_kg_m3,
                  .limit = Limit{.low = std::nullopt, .high = watch.value},
                  .measure = Measure::concentration},
                 [&](Check& told) {
                     const auto& temperature = context.proportions.temperature;
                     tell_heat({.thickness_mm = thickness_mm,
                                .placed_c = temperature ? temperature->placed_c : std::nullopt,
                                .keys_of_placed =
                                    "'temperature' of all materials, 'water_temperature', "
                                    "'requirements.placing.air_temperature' and 'haul'"},
                               context.proportions, context.tables, told);
                 });
}

void tell_unlisted_share(const CheckContext& context, Findings& findings) {
    if (lists_aggregates(context.proportions)) {
        return;
    }
    findings.add({.id = check_ids::sand_share, .verdict = Verdict::not_checked}, [&](Check& told) {
        told.requirement = "workability and finish";
        told.message = {"the amounts list no {missing}",
                        {word("missing", unlisted_aggregate(context.proportions))}};
    });
}

void sand_share_check(const CheckContext& context, Findings& findings) {
    const auto percent = fine_share_percent(context.proportions);
    if (!percent) {
        tell_unlisted_share(context, findings);
        return;
    }
    const PracticeTables& practice = context.tables.practice;
    const double low = practice.lowest_sand_share_percent.value;
    const double high = practice.highest_sand_share_percent.value;
    const bool usual = !below(*percent, low) && !above(*percent, high);
    const bool is_assumed = density_is_assumed(context.proportions);
    findings.add(
        {.id = check_ids::sand_share,
         .verdict = usual && !is_assumed ? Verdict::holds : Verdict::watch,
         .value = *percent,
         .limit = Limit{.low = low, .high = high},
         .measure = Measure::percent},
        [&](Check& told) {
            told.requirement = "workability and finish";
            told.source = practice.lowest_sand_share_percent.source;
            told.message = {
                "fine aggregate is {value} of the aggregate volume; usual is {low} to {high}",
                {percent_of("value", *percent), percent_of("low", low), percent_of("high", high)}};
            if (is_assumed) {
                append_assumed_densities(context.proportions, told.message);
            }
        });
}

} // namespace

void check_amounts(const CheckContext& context, Findings& findings) {
    minimum_check(context, findings);
    volume_check(context, findings);
    heat_check(context, findings);
    sand_share_check(context, findings);
}

} // namespace boardmark::core
