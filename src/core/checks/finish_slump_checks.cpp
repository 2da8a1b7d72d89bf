#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../mix/high_range_reducer.hpp"
#include "../mix/material_figures.hpp"
#include "../mix/slump_retention.hpp"
#include "finish_checks.hpp"
#include "trial_checks.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

Argument slump(std::string name, double mm) {
    return quantity(std::move(name), {mm, Measure::slump});
}

struct Permitted {
    Limit limit;
    Source source;
};

/// The stated window, else the tolerance of the stated slump.
Permitted permitted_slump(const CheckContext& context) {
    const Requirements& asked = context.requirements;
    if (asked.slump_window) {
        return {{asked.slump_window->low_mm, asked.slump_window->high_mm}, {}};
    }
    const TypicalFigure& within = slump_tolerance(asked.slump_mm, context.tables).within_mm;
    return {{std::max(asked.slump_mm - within.value, 0.0), asked.slump_mm + within.value},
            within.source};
}

std::vector<const Ingredient*> water_reducers(const Proportions& proportions) {
    std::vector<const Ingredient*> reducers = of_role(proportions, Role::admixture);
    std::erase_if(reducers, [](const Ingredient* admixture) {
        return !reduces_water(admixture->material->kind);
    });
    return reducers;
}

Check not_checked(Phrase message) {
    return {.id = "finish.slump_window",
            .verdict = Verdict::not_checked,
            .measure = Measure::slump,
            .requirement = {},
            .message = std::move(message)};
}

/// What the slump is at placing where it is the target at the mixer, and what the mixer needs. The
/// mix file states the slump at placing.
Check arrival_check(const CheckContext& context, double retained_percent) {
    const double asked_mm = context.requirements.slump_mm;
    const double reading_mm = context.tables.trial.adjustments.slump_reading_mm.value;
    const double measures_to_mm = context.tables.practice.slump_measures_to_mm.value;
    const auto as_read = [&](double mm) { return std::round(mm / reading_mm) * reading_mm; };
    const double arriving_mm = asked_mm * retained_percent / 100;
    const double mixer_mm = asked_mm / (retained_percent / 100);
    const Permitted permitted = permitted_slump(context);
    const double read_mm = as_read(arriving_mm);
    const bool inside =
        !below(read_mm, *permitted.limit.low) && !above(read_mm, *permitted.limit.high);

    std::string text = "mixed to {asked} it arrives at {arriving} after {minutes} min ({retained} "
                       "is retained), permitted {low} to {high}";
    if (above(mixer_mm, measures_to_mm)) {
        text += "; placing at {asked} needs more than {measures} at the mixer, which slump no "
                "longer measures: redose on site, or a reducer that holds longer";
    } else if (!same(mixer_mm, asked_mm)) {
        text += "; to place at {asked}, mix to {mixer}";
    }
    return {
        .id = "finish.slump_window",
        .verdict = inside ? Verdict::holds : Verdict::watch,
        .value = arriving_mm,
        .limit = permitted.limit,
        .measure = Measure::slump,
        .requirement = {},
        .source = permitted.source,
        .message = {std::move(text),
                    {slump("asked", asked_mm), slump("arriving", read_mm),
                     quantity("minutes", {*context.requirements.time_to_place_min, Measure::count}),
                     quantity("retained", {retained_percent, Measure::percent}),
                     slump("low", *permitted.limit.low), slump("high", *permitted.limit.high),
                     slump("measures", measures_to_mm), slump("mixer", as_read(mixer_mm))}}};
}

Checks window_check(const CheckContext& context) {
    const auto& minutes = context.requirements.time_to_place_min;
    const auto reducers = water_reducers(context.proportions);
    if (!minutes) {
        return high_range_reducers(context.proportions).empty()
                   ? Checks{}
                   : Checks{not_checked({"'requirements.time_to_place' is not stated: minutes from "
                                         "mixing until the last of a load is in the form",
                                         {}})};
    }
    const Argument time = quantity("minutes", {*minutes, Measure::count});
    std::optional<double> lowest_percent;
    for (const Ingredient* reducer : reducers) {
        const auto& points = reducer->material->admixture.retains;
        if (points.empty()) {
            continue;
        }
        const auto percent = retained_percent(points, *minutes);
        if (!percent) {
            return {not_checked(
                {"'retains' of {name} ends at {last} min, placing takes {minutes} min: ask its "
                 "supplier for a later point",
                 {word("name", reducer->name), time,
                  quantity("last", {points.back().minutes, Measure::count})}})};
        }
        lowest_percent = std::min(lowest_percent.value_or(*percent), *percent);
    }
    if (lowest_percent) {
        return {arrival_check(context, *lowest_percent)};
    }
    return {not_checked(
        {reducers.empty()
             ? "what is left of the slump after {minutes} min is not known: measure it on the "
               "trial batch"
             : "{name}: what is left of the slump after {minutes} min is not known; its supplier "
               "has it for the temperature of the job, add 'retains'",
         {word("name", reducers.empty() ? "" : reducers.front()->name), time}})};
}

/// Whether a second dose on site has room below the highest one.
Check redosing_check(const CheckContext& context, const Ingredient& reducer) {
    const Tables& tables = context.tables;
    const double density_kg_m3 = product_density(*reducer.material, tables).value;
    const auto& maximum = reducer.material->admixture.maximum_dose;
    Check check{.id = "finish.redosing",
                .verdict = Verdict::not_checked,
                .measure = Measure::dose,
                .requirement = {},
                .source = tables.finish.redose_revolutions.source};
    const auto dose = [&](std::string name, double percent) {
        return quantity(std::move(name), {ml_100kg(percent, density_kg_m3), Measure::dose});
    };
    check.message.arguments = {
        word("name", reducer.name),
        quantity("times", {tables.finish.redosings.value, Measure::count}),
        quantity("turns", {tables.finish.redose_revolutions.value, Measure::count})};
    const std::string rules = "; on site redose {times} times at most, {turns} more revolutions "
                              "each time, slump and air tested again, never water";
    if (!maximum || reducer.by_trial) {
        check.message.text =
            (maximum ? "{name} is dosed by trial: its room for redosing is not known"
                     : "{name}: the data sheet has the highest dose, add 'maximum_dose'") +
            rules;
        return check;
    }
    const double percent = 100 * reducer.kg_m3 / context.proportions.totals.binder_kg_m3;
    const double most = dose_percent(*maximum, density_kg_m3);
    const double step = tables.trial.adjustments.dose_step_percent.value / 100 * percent;
    const double room = std::max(most - percent, 0.0);
    const bool enough = !below(room, step);
    check.verdict = enough ? Verdict::holds : Verdict::watch;
    check.value = ml_100kg(percent, density_kg_m3);
    check.limit = Limit{.low = std::nullopt, .high = ml_100kg(most, density_kg_m3)};
    check.message.text = enough
                             ? "{name} at {value} leaves {room} up to its highest dose" + rules
                             : "{name} at {value} leaves no room to its highest dose, {limit}: no "
                               "redosing on site, and never water";
    check.message.arguments.push_back(dose("value", percent));
    check.message.arguments.push_back(dose("limit", most));
    check.message.arguments.push_back(dose("room", room));
    return check;
}

} // namespace

Checks check_finish_slump(const CheckContext& context) {
    Checks checks = window_check(context);
    for (const Ingredient* reducer : high_range_reducers(context.proportions)) {
        checks.push_back(redosing_check(context, *reducer));
    }
    return checks;
}

} // namespace boardmark::core
