#include "paste.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../code/least_cement.hpp"
#include "../mix/material_figures.hpp"
#include "method_steps.hpp"
#include "water_cement_ratio.hpp"
#include "water_reduction.hpp"

#include <algorithm>
#include <cmath>
#include <string>

namespace boardmark::core {
namespace {

Step given_step(StepId id, Quantity value) {
    return {.quantity = id,
            .value = value.value,
            .measure = value.measure,
            .provenance = Provenance::given,
            .reason = {"given under 'selections'", {}},
            .marks = {Mark::given}};
}

/// By own trials, else by the method: its table, or a reading of its chart that the user gives.
Outcome<double> ratio_by_strength(const Mix& mix, const PasteDemand& demand, const Tables& tables,
                                  Worksheet& worksheet) {
    if (mix.requirements.strength_line || !mix.requirements.strength_curve.empty()) {
        return w_cm_by_strength(mix.requirements, {demand.average_mpa, demand.air_entrained},
                                tables, worksheet);
    }
    return steps_of(tables.method).ratio_by_strength(mix, demand, tables, worksheet);
}

/// The ratio by strength, or nothing where the tables do not reach and the ratio is fixed anyway.
Outcome<OptionalNumber> strength_ratio(const Mix& mix, const PasteDemand& demand, bool needed,
                                       const Tables& tables, Worksheet& worksheet) {
    auto ratio = ratio_by_strength(mix, demand, tables, worksheet);
    if (ratio) {
        return OptionalNumber{*ratio};
    }
    if (needed) {
        return std::move(ratio).why();
    }
    return OptionalNumber{};
}

OptionalNumber exposure_ratio(const Mix& mix, const StatedClasses& classes, const Tables& tables,
                              Worksheet& worksheet) {
    const auto limit = w_cm_by_exposure(classes);
    if (!limit) {
        return std::nullopt;
    }
    // Where only a part of the binder counts, less water goes with all of it.
    const double share = count_binder(mix.binder, tables.code, classes).counted_share();
    const double w_cm = limit->w_cm * share;
    worksheet.record([&] {
        Step step{.quantity = "w_cm_by_exposure",
                  .value = w_cm,
                  .measure = Measure::w_cm,
                  .provenance = Provenance::code,
                  .reason = {"the lowest limit of the stated classes: {classes}",
                             {word("classes", classes_at(*limit, classes))}},
                  .source = *limit->source,
                  .marks = with_confidence({}, *limit->source)};
        if (tables.code->binder.by_k) {
            step.reason.text =
                "the lowest limit of the stated classes, {limit} in {classes}, is of "
                "water to cement and counted additions: {share} of the binder";
            step.reason.arguments.push_back(quantity("limit", {limit->w_cm, Measure::w_cm}));
            step.reason.arguments.push_back(percent_of("share", 100 * share));
        }
        return step;
    });
    return w_cm;
}

void record_ratio(double w_cm, const char* text, const Paste& paste, Worksheet& worksheet) {
    worksheet.record([&] {
        Step step{.quantity = step_ids::w_cm,
                  .value = w_cm,
                  .measure = Measure::w_cm,
                  .provenance = Provenance::computed,
                  .reason = {text, {}}};
        const auto found = [&](const char* name, const OptionalNumber& ratio) {
            if (ratio) {
                step.reason.arguments.push_back(quantity(name, {*ratio, Measure::w_cm}));
            }
        };
        found("by_strength", paste.w_cm_by_strength);
        found("by_exposure", paste.w_cm_by_exposure);
        return step;
    });
}

/// The ratio that strength and exposure ask for together.
Outcome<double> selected_ratio(const Mix& mix, Paste& paste, Worksheet& worksheet) {
    if (mix.selections.w_cm) {
        paste.governed_by = Governor::given;
        worksheet.record([&] {
            return given_step(step_ids::w_cm, {*mix.selections.w_cm, Measure::w_cm});
        });
        return *mix.selections.w_cm;
    }
    if (paste.w_cm_by_exposure && !above(*paste.w_cm_by_exposure, 0)) {
        return Unresolved{{"the binder holds no cement that the code counts, beside which an "
                           "addition could count: no ratio follows from the exposure",
                           {}},
                          {{"state a cement in 'mixture.binder'", {}}}};
    }
    if (mix.selections.w_cm_by_exposure) {
        if (!paste.w_cm_by_exposure) {
            return Unresolved{{"'w_cm: by exposure' was asked for, but no stated exposure class "
                               "limits w/cm",
                               {}},
                              {{"state the exposure classes of the wall under "
                                "'requirements.exposure'",
                                {}},
                               {"give the ratio itself as 'selections.w_cm'", {}}}};
        }
        paste.governed_by = Governor::exposure;
        record_ratio(*paste.w_cm_by_exposure,
                     "the exposure limit, as asked for a first trial; the strength is to be "
                     "proven by that trial",
                     paste, worksheet);
        return *paste.w_cm_by_exposure;
    }
    const bool exposure_governs =
        paste.w_cm_by_exposure && !above(*paste.w_cm_by_exposure, *paste.w_cm_by_strength);
    paste.governed_by = exposure_governs ? Governor::exposure : Governor::strength;
    const double w_cm = exposure_governs ? *paste.w_cm_by_exposure : *paste.w_cm_by_strength;
    record_ratio(w_cm,
                 exposure_governs
                     ? "the lower of {by_strength} by strength and {by_exposure} by exposure: "
                       "exposure governs"
                 : paste.w_cm_by_exposure
                     ? "the lower of {by_strength} by strength and {by_exposure} by exposure: "
                       "strength governs"
                     : "by strength; no stated class limits it",
                 paste, worksheet);
    return w_cm;
}

/// Mixing water that pigments ask for at equal slump, as far as their papers state it.
double pigment_water_percent(const Mix& mix) {
    double percent = 0;
    for (const Dosage& dosage : mix.admixtures) {
        percent +=
            dosage.is_none() ? 0 : dosage.material->admixture.added_water_percent.value_or(0);
    }
    return percent;
}

Outcome<double> water_by_table(const Mix& mix, const PasteDemand& demand, const Tables& tables,
                               Paste& paste, Worksheet& worksheet) {
    const Requirements& requirements = mix.requirements;
    const double slump_mm = requirements.slump_before_reducer_mm.value_or(requirements.slump_mm);
    const auto table_water =
        steps_of(tables.method)
            .water_kg_m3(mix, {slump_mm, demand.size_mm, demand.air_entrained}, tables, worksheet);
    if (!table_water) {
        return table_water.why();
    }
    const auto reduction = water_reduction_percent(mix, tables, worksheet);
    if (!reduction) {
        return reduction.why();
    }
    paste.table_water_kg_m3 = *table_water;
    paste.water_reduction_percent = *reduction;
    const double added_percent = pigment_water_percent(mix);
    const double water_kg_m3 = *table_water * (1 - *reduction / 100) * (1 + added_percent / 100);
    worksheet.record([&] {
        Step step{.quantity = step_ids::water,
                  .value = water_kg_m3,
                  .measure = Measure::concentration,
                  .provenance = Provenance::computed,
                  .reason = {*paste.water_reduction_percent > 0
                                 ? "table water {table} less {reduction}"
                                 : "table water {table}; nothing is taken off",
                             {quantity("table", {*paste.table_water_kg_m3, Measure::concentration}),
                              percent_of("reduction", *paste.water_reduction_percent)}}};
        if (added_percent > 0) {
            step.reason.text += "; of that {added} more for the pigment, as its paper says";
            step.reason.arguments.push_back(percent_of("added", added_percent));
        }
        return step;
    });
    return water_kg_m3;
}

/// What a stated water is held against: that of the method, told nowhere. A water that was found
/// for the slump is held against nothing.
void find_water_of_slump(const Mix& mix, const PasteDemand& demand, const Tables& tables,
                         Paste& paste) {
    const Selections& given = mix.selections;
    const bool follows = given.w_cm && given.binder_kg_m3;
    paste.water_is_stated = (given.water_kg_m3 || follows) && !given.water_shows_slump;
    if (paste.water_is_stated) {
        Paste untold{};
        Worksheet nowhere{.steps = {}, .cautions = {}, .is_told = false};
        if (const auto water = water_by_table(mix, demand, tables, untold, nowhere)) {
            paste.water_of_slump_kg_m3 = *water;
        }
    }
}

double given_water(double water_kg_m3, Worksheet& worksheet) {
    worksheet.record([&] {
        return given_step(step_ids::water, {water_kg_m3, Measure::concentration});
    });
    return water_kg_m3;
}

Outcome<double> water_of(const Mix& mix, const PasteDemand& demand, const Tables& tables,
                         Paste& paste, Worksheet& worksheet) {
    const auto& given_kg_m3 = mix.selections.water_kg_m3;
    return given_kg_m3 ? Outcome{given_water(*given_kg_m3, worksheet)}
                       : water_by_table(mix, demand, tables, paste, worksheet);
}

double given_binder(double binder_kg_m3, Worksheet& worksheet) {
    worksheet.record([&] {
        return given_step(step_ids::binder, {binder_kg_m3, Measure::concentration});
    });
    return binder_kg_m3;
}

double water_of_ratio(const Selections& given, Worksheet& worksheet) {
    const double w_cm = *given.w_cm;
    const double binder_kg_m3 = *given.binder_kg_m3;
    worksheet.record([&] {
        return Step{.quantity = step_ids::water,
                    .value = w_cm * binder_kg_m3,
                    .measure = Measure::concentration,
                    .provenance = Provenance::computed,
                    .reason = {"w/cm {w_cm} times {binder}, both given",
                               {quantity("w_cm", {w_cm, Measure::w_cm}),
                                quantity("binder", {binder_kg_m3, Measure::concentration})}}};
    });
    return w_cm * binder_kg_m3;
}

void record_ratio_of_amounts(const Paste& paste, Worksheet& worksheet) {
    worksheet.record([&] {
        return Step{.quantity = step_ids::w_cm,
                    .value = paste.w_cm(),
                    .measure = Measure::w_cm,
                    .provenance = Provenance::computed,
                    .reason = {"mixing water {water} over the given cementitious material, {given}",
                               {quantity("water", {paste.water_kg_m3, Measure::concentration}),
                                quantity("given", {paste.binder_kg_m3, Measure::concentration})}}};
    });
}

/// What asks for at least so much cementitious material: the file, or a class of the code.
struct LeastBinder {
    double kg_m3 = 0;
    const Demand* by = nullptr; ///< nullptr: the file
};

/// The least cementitious material that holds the cement which the stated classes ask for. A ratio
/// that is given stays as it is: then the check tells what is missing.
LeastBinder least_by_code(const Mix& mix, double size_mm, const StatedClasses& classes,
                          const Tables& tables) {
    const auto asks_cement = [](const StatedClass& stated) {
        return stated.limits->min_cement_kg_m3.has_value();
    };
    const Selections& given = mix.selections;
    const bool is_given = given.w_cm && !given.w_cm_is_methods;
    if (is_given || std::none_of(classes.begin(), classes.end(), asks_cement)) {
        return {};
    }
    const Demands demands{classes, tables.code, {tables.system, size_mm, mix.requirements}};
    if (!demands.strictest(Demanded::cement)->has_figure()) {
        return {};
    }
    const CountedBinder counted = count_binder(mix.binder, tables.code, classes);
    LeastBinder most;
    for (const Demand& demand : demands.all()) {
        if (demand.quantity != Demanded::cement) {
            continue;
        }
        const double kg_m3 =
            least_binder_kg_m3(demand, counted, tables.code->binder, mix.requirements.reinforced);
        if (std::isfinite(kg_m3) && kg_m3 > most.kg_m3) {
            most = {kg_m3, &demand};
        }
    }
    return most;
}

Step raised_step(const LeastBinder& least, double w_cm) {
    Step step{.quantity = step_ids::binder,
              .value = least.kg_m3,
              .measure = Measure::concentration,
              .provenance = Provenance::given,
              .reason = {"raised at constant water to the stated minimum; w/cm falls to {w_cm}",
                         {quantity("w_cm", {w_cm, Measure::w_cm})}},
              .marks = {Mark::given}};
    if (least.by) {
        step.provenance = Provenance::code;
        step.reason.text =
            "raised at constant water to hold the least cement of {class}, {cement}; "
            "w/cm falls to {w_cm}";
        step.reason.arguments.push_back(word("class", least.by->by->name));
        step.reason.arguments.push_back(
            quantity("cement", {least.by->low, Measure::concentration}));
        step.source = *least.by->source;
        step.marks = with_confidence({}, step.source);
    }
    return step;
}

/// Cementitious material for a ratio, raised at constant water where a minimum asks for more.
double binder_of_ratio(const Mix& mix, double w_cm, const LeastBinder& by_code, Paste& paste,
                       Worksheet& worksheet) {
    const double by_ratio_kg_m3 = paste.water_kg_m3 / w_cm;
    worksheet.record([&] {
        return Step{.quantity = step_ids::binder,
                    .value = by_ratio_kg_m3,
                    .measure = Measure::concentration,
                    .provenance = Provenance::computed,
                    .reason = {"mixing water {water} over w/cm {w_cm}",
                               {quantity("water", {paste.water_kg_m3, Measure::concentration}),
                                quantity("w_cm", {w_cm, Measure::w_cm})}}};
    });
    LeastBinder least{mix.requirements.minimum_binder_kg_m3.value_or(0)};
    if (above(by_code.kg_m3, least.kg_m3)) {
        least = by_code;
    }
    if (!above(least.kg_m3, by_ratio_kg_m3)) {
        return by_ratio_kg_m3;
    }
    paste.governed_by = Governor::minimum_binder;
    worksheet.record([&] { return raised_step(least, paste.water_kg_m3 / least.kg_m3); });
    return least.kg_m3;
}

} // namespace

Outcome<Paste> select_paste(const Mix& mix, const StatedClasses& classes, const PasteDemand& demand,
                            const Tables& tables, Worksheet& worksheet) {
    const Selections& given = mix.selections;
    const bool ratio_is_fixed = given.w_cm || given.binder_kg_m3;
    const bool strength_needed = !ratio_is_fixed && !given.w_cm_by_exposure;

    auto by_strength = strength_ratio(mix, demand, strength_needed, tables, worksheet);
    if (!by_strength) {
        return std::move(by_strength).why();
    }
    Paste paste{};
    paste.w_cm_by_strength = *by_strength;
    paste.w_cm_by_exposure = exposure_ratio(mix, classes, tables, worksheet);
    find_water_of_slump(mix, demand, tables, paste);

    if (!given.binder_kg_m3) {
        const auto w_cm = selected_ratio(mix, paste, worksheet);
        if (!w_cm) {
            return w_cm.why();
        }
        const auto water = water_of(mix, demand, tables, paste, worksheet);
        if (!water) {
            return water.why();
        }
        paste.water_kg_m3 = *water;
        const LeastBinder by_code = least_by_code(mix, demand.size_mm, classes, tables);
        paste.binder_kg_m3 = binder_of_ratio(mix, *w_cm, by_code, paste, worksheet);
        return paste;
    }
    paste.governed_by = Governor::given;
    paste.binder_kg_m3 = given_binder(*given.binder_kg_m3, worksheet);
    if (given.w_cm) {
        worksheet.record([&] { return given_step(step_ids::w_cm, {*given.w_cm, Measure::w_cm}); });
        paste.water_kg_m3 = water_of_ratio(given, worksheet);
        return paste;
    }
    const auto water = water_of(mix, demand, tables, paste, worksheet);
    if (!water) {
        return water.why();
    }
    paste.water_kg_m3 = *water;
    record_ratio_of_amounts(paste, worksheet);
    return paste;
}

} // namespace boardmark::core
