#include "paste.hpp"

#include <boardmark/core/basis/unresolved.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "mixing_water.hpp"
#include "water_cement_ratio.hpp"
#include "water_reduction.hpp"

#include <string>

namespace boardmark::core {
namespace {

Step given_step(std::string name, Quantity value) {
    return {.quantity = std::move(name),
            .value = value.value,
            .measure = value.measure,
            .provenance = Provenance::given,
            .reason = {"given under 'selections'", {}},
            .marks = {Mark::given}};
}

std::string names_of(const std::vector<const ExposureClass*>& classes) {
    std::string names;
    for (const ExposureClass* exposure : classes) {
        names += (names.empty() ? "" : ", ") + exposure->name;
    }
    return names;
}

std::vector<const Material*> binder_materials(const Mix& mix) {
    std::vector<const Material*> materials;
    for (const Share& share : mix.binder) {
        materials.push_back(&share.material);
    }
    return materials;
}

/// The ratio by strength, or nothing where the tables do not reach and the ratio is fixed anyway.
std::optional<double> strength_ratio(const Mix& mix, PasteDemand demand, bool needed,
                                     const Tables& tables, Worksheet& worksheet) {
    try {
        return w_cm_by_strength(mix.requirements, {demand.average_mpa, demand.air_entrained},
                                tables, worksheet);
    } catch (const Unresolved&) {
        if (needed) {
            throw;
        }
        return std::nullopt;
    }
}

std::optional<double> exposure_ratio(const Mix& mix, const Tables& tables, Worksheet& worksheet) {
    const auto limit =
        w_cm_by_exposure(mix.requirements, has_pozzolan_or_slag(binder_materials(mix)), tables);
    if (!limit) {
        return std::nullopt;
    }
    worksheet.steps.push_back({.quantity = "w_cm_by_exposure",
                               .value = limit->w_cm,
                               .measure = Measure::w_cm,
                               .provenance = Provenance::code,
                               .reason = {"the lowest limit of the stated classes: {classes}",
                                          {word("classes", names_of(limit->classes))}},
                               .source = limit->source,
                               .marks = with_confidence({}, limit->source)});
    return limit->w_cm;
}

void record_ratio(double w_cm, std::string text, Worksheet& worksheet) {
    worksheet.steps.push_back({.quantity = "w_cm",
                               .value = w_cm,
                               .measure = Measure::w_cm,
                               .provenance = Provenance::computed,
                               .reason = {std::move(text), {}}});
}

/// The ratio that strength and exposure ask for together.
double selected_ratio(const Mix& mix, Paste& paste, Worksheet& worksheet) {
    if (mix.selections.w_cm) {
        paste.governed_by = Governor::given;
        worksheet.steps.push_back(given_step("w_cm", {*mix.selections.w_cm, Measure::w_cm}));
        return *mix.selections.w_cm;
    }
    if (mix.selections.w_cm_by_exposure) {
        if (!paste.w_cm_by_exposure) {
            throw Unresolved{{"'w_cm: by exposure' was asked for, but no stated exposure class "
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
                     worksheet);
        return *paste.w_cm_by_exposure;
    }
    const bool exposure_governs =
        paste.w_cm_by_exposure && !above(*paste.w_cm_by_exposure, *paste.w_cm_by_strength);
    paste.governed_by = exposure_governs ? Governor::exposure : Governor::strength;
    const double w_cm = exposure_governs ? *paste.w_cm_by_exposure : *paste.w_cm_by_strength;
    record_ratio(w_cm,
                 exposure_governs         ? "the lower of strength and exposure: exposure governs"
                 : paste.w_cm_by_exposure ? "the lower of strength and exposure: strength governs"
                                          : "by strength; no stated class limits it",
                 worksheet);
    return w_cm;
}

double water_by_table(const Mix& mix, PasteDemand demand, const Tables& tables, Paste& paste,
                      Worksheet& worksheet) {
    const Requirements& requirements = mix.requirements;
    const double slump_mm = requirements.slump_before_reducer_mm.value_or(requirements.slump_mm);
    paste.table_water_kg_m3 =
        table_water_kg_m3({slump_mm, demand.size_mm, demand.air_entrained}, tables, worksheet);
    paste.water_reduction_percent = water_reduction_percent(mix, tables, worksheet);
    const double water_kg_m3 =
        *paste.table_water_kg_m3 * (1 - *paste.water_reduction_percent / 100);
    worksheet.steps.push_back(
        {.quantity = "water",
         .value = water_kg_m3,
         .measure = Measure::concentration,
         .provenance = Provenance::computed,
         .reason = {*paste.water_reduction_percent > 0
                        ? "table water {table} less {reduction}"
                        : "table water {table}; nothing is taken off",
                    {quantity("table", {*paste.table_water_kg_m3, Measure::concentration}),
                     quantity("reduction", {*paste.water_reduction_percent, Measure::percent})}}});
    return water_kg_m3;
}

double given_water(double water_kg_m3, Worksheet& worksheet) {
    worksheet.steps.push_back(given_step("water", {water_kg_m3, Measure::concentration}));
    return water_kg_m3;
}

double given_binder(double binder_kg_m3, Worksheet& worksheet) {
    worksheet.steps.push_back(given_step("binder", {binder_kg_m3, Measure::concentration}));
    return binder_kg_m3;
}

double water_of_ratio(const Selections& given, Worksheet& worksheet) {
    const double w_cm = *given.w_cm;
    const double binder_kg_m3 = *given.binder_kg_m3;
    worksheet.steps.push_back(
        {.quantity = "water",
         .value = w_cm * binder_kg_m3,
         .measure = Measure::concentration,
         .provenance = Provenance::computed,
         .reason = {"w/cm {w_cm} times {binder}, both given",
                    {quantity("w_cm", {w_cm, Measure::w_cm}),
                     quantity("binder", {binder_kg_m3, Measure::concentration})}}});
    return w_cm * binder_kg_m3;
}

void record_ratio_of_amounts(const Paste& paste, Worksheet& worksheet) {
    record_ratio(paste.w_cm(), "mixing water over the given cementitious material", worksheet);
}

/// Cementitious material for a ratio, raised at constant water where a minimum asks for more.
double binder_of_ratio(const Mix& mix, double w_cm, Paste& paste, Worksheet& worksheet) {
    const double by_ratio_kg_m3 = paste.water_kg_m3 / w_cm;
    const auto& minimum_kg_m3 = mix.requirements.minimum_binder_kg_m3;
    worksheet.steps.push_back(
        {.quantity = "binder",
         .value = by_ratio_kg_m3,
         .measure = Measure::concentration,
         .provenance = Provenance::computed,
         .reason = {"mixing water {water} over w/cm {w_cm}",
                    {quantity("water", {paste.water_kg_m3, Measure::concentration}),
                     quantity("w_cm", {w_cm, Measure::w_cm})}}});
    if (!minimum_kg_m3 || !above(*minimum_kg_m3, by_ratio_kg_m3)) {
        return by_ratio_kg_m3;
    }
    paste.governed_by = Governor::minimum_binder;
    worksheet.steps.push_back(
        {.quantity = "binder",
         .value = *minimum_kg_m3,
         .measure = Measure::concentration,
         .provenance = Provenance::given,
         .reason = {"raised at constant water to the stated minimum; w/cm falls to {w_cm}",
                    {quantity("w_cm", {paste.water_kg_m3 / *minimum_kg_m3, Measure::w_cm})}},
         .marks = {Mark::given}});
    return *minimum_kg_m3;
}

} // namespace

Paste select_paste(const Mix& mix, PasteDemand demand, const Tables& tables, Worksheet& worksheet) {
    const Selections& given = mix.selections;
    const bool ratio_is_fixed = given.w_cm || given.binder_kg_m3;
    const bool strength_needed = !ratio_is_fixed && !given.w_cm_by_exposure;

    Paste paste{};
    paste.w_cm_by_strength = strength_ratio(mix, demand, strength_needed, tables, worksheet);
    paste.w_cm_by_exposure = exposure_ratio(mix, tables, worksheet);

    if (given.binder_kg_m3) {
        paste.governed_by = Governor::given;
        paste.binder_kg_m3 = given_binder(*given.binder_kg_m3, worksheet);
        if (given.w_cm) {
            worksheet.steps.push_back(given_step("w_cm", {*given.w_cm, Measure::w_cm}));
            paste.water_kg_m3 = water_of_ratio(given, worksheet);
        } else {
            paste.water_kg_m3 = given.water_kg_m3
                                    ? given_water(*given.water_kg_m3, worksheet)
                                    : water_by_table(mix, demand, tables, paste, worksheet);
            record_ratio_of_amounts(paste, worksheet);
        }
    } else {
        const double w_cm = selected_ratio(mix, paste, worksheet);
        paste.water_kg_m3 = given.water_kg_m3
                                ? given_water(*given.water_kg_m3, worksheet)
                                : water_by_table(mix, demand, tables, paste, worksheet);
        paste.binder_kg_m3 = binder_of_ratio(mix, w_cm, paste, worksheet);
    }
    return paste;
}

} // namespace boardmark::core
