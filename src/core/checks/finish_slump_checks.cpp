#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../mix/material_figures.hpp"
#include "../mix/slump_retention.hpp"
#include "dosed_slump.hpp"
#include "finish_checks.hpp"
#include "remembered_limit.hpp"
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
    const Source* source; ///< nullptr where the file states the window
};

/// The stated window, else the tolerance of the stated slump.
Permitted permitted_slump(const CheckContext& context) {
    const Requirements& asked = context.requirements;
    if (asked.slump_window) {
        return {{asked.slump_window->low_mm, asked.slump_window->high_mm}, nullptr};
    }
    const TypicalFigure& within = slump_tolerance(asked.slump_mm, context.tables).within_mm;
    return {{std::max(asked.slump_mm - within.value, 0.0), asked.slump_mm + within.value},
            &within.source};
}

bool is_high_range(const Ingredient& admixture) {
    return admixture.material->kind == Kind::high_range_water_reducer;
}

/// What the water reducers leave of the slump when the last of a load is placed.
struct Retention {
    const Ingredient* first = nullptr;      ///< of the reducers
    const Ingredient* ends_early = nullptr; ///< one whose last point is before that
    std::optional<double> lowest_percent = {};
};

Retention retention_of(const Proportions& proportions, double minutes) {
    Retention found;
    for (const Ingredient* admixture : of_role(proportions, Role::admixture)) {
        if (!reduces_water(admixture->material->kind)) {
            continue;
        }
        found.first = found.first ? found.first : admixture;
        const auto& points = admixture->material->admixture.retains;
        if (points.empty()) {
            continue;
        }
        const auto percent = retained_percent(points, minutes);
        if (!percent) {
            found.ends_early = admixture;
            return found;
        }
        found.lowest_percent = std::min(found.lowest_percent.value_or(*percent), *percent);
    }
    return found;
}

constexpr Finding slump_not_known{.id = check_ids::finish_slump_window,
                                  .verdict = Verdict::not_checked,
                                  .measure = Measure::slump};

/// What the slump is at placing where it is the target at the mixer, and what the mixer needs. The
/// mix file states the slump at placing.
void arrival_check(const CheckContext& context, double retained_percent, Findings& findings) {
    const double asked_mm = context.requirements.slump_mm;
    const double reading_mm = context.tables.trial->adjustments.slump_reading_mm.value;
    const double measures_to_mm = context.tables.practice.slump_measures_to_mm.value;
    const double arriving_mm = asked_mm * retained_percent / 100;
    const double mixer_mm = asked_mm / (retained_percent / 100);
    const Permitted permitted = permitted_slump(context);
    const auto as_read = [&](double mm) { return std::round(mm / reading_mm) * reading_mm; };
    const bool too_low = below(arriving_mm, *permitted.limit.low);
    const bool inside = !too_low && !above(arriving_mm, *permitted.limit.high);
    const bool remembered =
        permitted.source && permitted.source->confidence == Confidence::from_memory;
    const auto doubt = slump_in_doubt(context);
    findings.add(
        {.id = check_ids::finish_slump_window,
         .verdict = inside && !doubt && !remembered ? Verdict::holds : Verdict::watch,
         .value = arriving_mm,
         .limit = permitted.limit,
         .measure = Measure::slump},
        [&](Check& told) {
            std::string text =
                "mixed to {asked} it arrives at {arriving} after {minutes} min ({retained} "
                "is retained), permitted {low} to {high}";
            if (above(mixer_mm, measures_to_mm)) {
                text += "; placing at {asked} needs more than {measures} at the mixer, beyond what "
                        "a slump test can measure: redose on site, or use a reducer that holds "
                        "slump longer";
            } else if (!same(mixer_mm, asked_mm)) {
                text += "; to place at {asked}, mix to {mixer}";
            }
            told.requirement = board_marked;
            told.source = permitted.source ? *permitted.source : Source{};
            told.message = {
                std::move(text),
                {slump("asked", asked_mm),
                 slump("arriving", inside ? as_read(arriving_mm) : arriving_mm),
                 slump("arriving_limit", too_low ? *permitted.limit.low : *permitted.limit.high),
                 quantity("minutes", {*context.requirements.time_to_place_min, Measure::count}),
                 percent_of("retained", retained_percent), slump("low", *permitted.limit.low),
                 slump("high", *permitted.limit.high), slump("measures", measures_to_mm),
                 slump("mixer", as_read(mixer_mm))}};
            if (remembered) {
                told.message.text += "; 'requirements.slump_window' is not stated, so that is the "
                                     "tolerance of the slump";
                append_memory(told.source, told.message);
            }
            if (doubt) {
                append_slump_doubt(*doubt, told.message);
            }
        });
}

/// Why the slump at placing is not known.
Phrase unknown_slump(const Retention& retention, double minutes) {
    const Argument time = quantity("minutes", {minutes, Measure::count});
    if (const Ingredient* reducer = retention.ends_early) {
        const double last = reducer->material->admixture.retains.back().minutes;
        return {"'retains' of {name} ends at {last} min, placing takes {minutes} min: ask its "
                "supplier for a later point",
                {word("name", std::string{reducer->name}), time,
                 quantity("last", {last, Measure::count})}};
    }
    return {retention.first ? "{name}: what is left of the slump after {minutes} min is not known; "
                              "its supplier has it for the temperature of the job, add 'retains'"
                            : "what is left of the slump after {minutes} min is not known: measure "
                              "it on the trial batch",
            {word("name", retention.first ? std::string{retention.first->name} : ""), time}};
}

/// Whether the slump goes with the minutes since mixing as a data sheet says, or as that of a
/// high-range reducer does.
bool falls_with_time(const Ingredient& admixture) {
    return is_high_range(admixture) || (reduces_water(admixture.material->kind) &&
                                        !admixture.material->admixture.retains.empty());
}

void window_check(const CheckContext& context, Findings& findings) {
    const auto& minutes = context.requirements.time_to_place_min;
    if (!minutes) {
        const bool asks =
            std::ranges::any_of(context.proportions.ingredients, [](const Ingredient& one) {
                return one.role == Role::admixture && falls_with_time(one);
            });
        if (asks) {
            findings.add(slump_not_known, [](Check& told) {
                told.requirement = board_marked;
                told.message = {"'requirements.time_to_place' is not stated: minutes from "
                                "mixing until the last of a load is in the form",
                                {}};
            });
        }
        return;
    }
    const Retention retention = retention_of(context.proportions, *minutes);
    if (!retention.ends_early && retention.lowest_percent) {
        arrival_check(context, *retention.lowest_percent, findings);
        return;
    }
    findings.add(slump_not_known, [&](Check& told) {
        told.requirement = board_marked;
        told.message = unknown_slump(retention, *minutes);
    });
}

/// Doses of a reducer, percent of the mass of cementitious material.
struct DoseRoom {
    double percent;
    double most_percent;
    double room_percent;
    bool enough; ///< for a second dose on site
};

/// Nothing where the dose or the highest one is not known.
std::optional<DoseRoom> room_of(const Ingredient& reducer, double density_kg_m3,
                                const CheckContext& context) {
    const auto& maximum = reducer.material->admixture.maximum_dose;
    if (!maximum || reducer.by_trial) {
        return std::nullopt;
    }
    const double percent = 100 * reducer.kg_m3 / context.proportions.totals.binder_kg_m3;
    const double most = dose_percent(*maximum, density_kg_m3);
    const double step = context.tables.trial->adjustments.dose_step_percent.value / 100 * percent;
    const double room = std::max(most - percent, 0.0);
    return DoseRoom{percent, most, room, !below(room, step)};
}

/// Whether a second dose on site has room below the highest one.
void redosing_check(const CheckContext& context, const Ingredient& reducer, Findings& findings) {
    const double density_kg_m3 = product_density(*reducer.material, context.tables).value;
    const auto doses = room_of(reducer, density_kg_m3, context);
    Finding found{.id = check_ids::finish_redosing,
                  .verdict = Verdict::not_checked,
                  .measure = Measure::dose};
    if (doses) {
        found.verdict = doses->enough ? Verdict::holds : Verdict::watch;
        found.value = ml_100kg(doses->percent, density_kg_m3);
        found.limit =
            Limit{.low = std::nullopt, .high = ml_100kg(doses->most_percent, density_kg_m3)};
    }
    findings.add(found, [&](Check& told) {
        const FinishTables& finish = context.tables.finish;
        const bool remembered =
            finish.redose_revolutions.source.confidence == Confidence::from_memory;
        const std::string memory = remembered ? " (from memory)" : "";
        const std::string rules =
            "; on site redose {times} times at most, {turns} more revolutions each time" + memory +
            ", slump and air tested again, never water";
        told.requirement = board_marked;
        told.source = {"product data of the mix file", Confidence::read};
        told.message.arguments = {
            word("name", std::string{reducer.name}),
            quantity("times", {finish.redosings.value, Measure::count}),
            quantity("turns", {finish.redose_revolutions.value, Measure::count})};
        if (!doses) {
            const bool has_maximum = reducer.material->admixture.maximum_dose.has_value();
            told.message.text =
                (has_maximum ? "{name} is dosed by trial: its room for redosing is not known"
                             : "{name}: the data sheet has the highest dose, add 'maximum_dose'") +
                rules;
            return;
        }
        told.message.text = doses->enough
                                ? "{name} at {value} leaves {room} up to its highest dose" + rules
                                : "{name} at {value} leaves no room to its highest dose, {limit}: "
                                  "no redosing on site, and never water";
        const auto dose = [&](std::string name, double percent) {
            told.message.arguments.push_back(
                quantity(std::move(name), {ml_100kg(percent, density_kg_m3), Measure::dose}));
        };
        dose("value", doses->percent);
        dose("limit", doses->most_percent);
        dose("room", doses->room_percent);
    });
}

} // namespace

void check_finish_slump(const CheckContext& context, Findings& findings) {
    window_check(context, findings);
    for (const Ingredient* admixture : of_role(context.proportions, Role::admixture)) {
        if (is_high_range(*admixture)) {
            redosing_check(context, *admixture, findings);
        }
    }
}

} // namespace boardmark::core
