#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "checks.hpp"
#include "dosed_slump.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// A reducer whose dose is found by trial: what it takes off is in no table.
const Ingredient* reducer_by_trial(const Proportions& proportions) {
    for (const Ingredient* admixture : of_role(proportions, Role::admixture)) {
        if (admixture->by_trial && reduces_water(admixture->material->kind)) {
            return admixture;
        }
    }
    return nullptr;
}

bool is_less(double water_kg_m3, double usual_kg_m3, const Tables& tables) {
    const double rounding_percent = tables.practice.stated_water_rounding_percent.value;
    return below(water_kg_m3, usual_kg_m3 * (1 - rounding_percent / 100));
}

Phrase message_of(double water_kg_m3, const OptionalNumber& usual_kg_m3,
                  const CheckContext& context) {
    const Selection& selection = context.proportions.selection;
    const Argument value = concentration("value", water_kg_m3);
    const Argument slump = quantity(
        "slump", {selection.slump_before_reducer_mm.value_or(selection.slump_mm), Measure::slump});
    if (!usual_kg_m3) {
        return {"the water {value} is stated; that it gives a slump of {slump} no table tells: "
                "a trial batch shows it",
                {value, slump}};
    }
    Phrase message{"the water {value} is stated; table and reducers give {limit} for a slump of "
                   "{slump}",
                   {value, concentration("limit", *usual_kg_m3), slump}};
    if (is_less(water_kg_m3, *usual_kg_m3, context.tables)) {
        message.text += ": a trial batch shows whether less gives it";
    }
    if (const Ingredient* reducer = reducer_by_trial(context.proportions)) {
        message.text += "; what {reducer} takes off is known with its dose";
        message.arguments.push_back(word("reducer", reducer->name));
    }
    return message;
}

/// Where nothing else is asked of the water: that the doses bring the slump.
void check_dosed_slump(const CheckContext& context, Findings& findings) {
    const auto doubt = slump_in_doubt(context);
    if (!doubt) {
        return;
    }
    findings.add({.id = check_ids::water_slump,
                  .verdict = Verdict::watch,
                  .value = doubt->reached_mm,
                  .measure = Measure::slump},
                 [&](Check& told) {
                     told.requirement = "slump";
                     told.source = Source{"the data of " + std::string{doubt->reducer->name}};
                     told.message = {
                         "a slump of {asked} is asked",
                         {quantity("asked", {context.requirements.slump_mm, Measure::slump})}};
                     append_slump_doubt(*doubt, told.message);
                 });
}

} // namespace

/// A water that the file states in place of the method's: with less the concrete need not have the
/// slump that is asked. Nor with a dose that does not bring it.
void check_water_of_slump(const CheckContext& context, Findings& findings) {
    const Selection& selection = context.proportions.selection;
    if (!selection.water_is_stated) {
        check_dosed_slump(context, findings);
        return;
    }
    const double water_kg_m3 = selection.water_kg_m3;
    const OptionalNumber usual_kg_m3 = selection.water_of_slump_kg_m3;
    Finding found{.id = check_ids::water_slump,
                  .verdict = Verdict::not_checked,
                  .measure = Measure::concentration};
    if (usual_kg_m3) {
        found.verdict =
            is_less(water_kg_m3, *usual_kg_m3, context.tables) ? Verdict::watch : Verdict::holds;
        found.value = water_kg_m3;
        found.limit = Limit{.low = *usual_kg_m3, .high = std::nullopt};
    }
    const auto doubt = slump_in_doubt(context);
    if (doubt) {
        found.verdict = worse(found.verdict, Verdict::watch);
    }
    findings.add(found, [&](Check& told) {
        const MethodTables& method = context.tables.method;
        told.requirement = "slump";
        told.source = Source{method.name, method.absolute_volume.confidence};
        told.message = message_of(water_kg_m3, usual_kg_m3, context);
        if (doubt) {
            told.message.arguments.push_back(
                quantity("asked", {context.requirements.slump_mm, Measure::slump}));
            append_slump_doubt(*doubt, told.message);
        }
    });
}

} // namespace boardmark::core
