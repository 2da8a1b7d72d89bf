#include "dosed_slump.hpp"

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/trial/trial_tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../method/slump_gain.hpp"

#include <cmath>

namespace boardmark::core {
namespace {

/// What a reducer adds to the slump at its dose; nothing where its data do not tell.
std::optional<double> gain_mm(const Ingredient& reducer, const CheckContext& context) {
    const SlumpGain gain{*reducer.material, context.tables};
    if (reducer.by_trial || !gain.is_known()) {
        return std::nullopt;
    }
    return gain.gain_mm(100 * reducer.kg_m3 / context.proportions.totals.binder_kg_m3);
}

/// A slump that a high-range reducer brings beyond that of the water.
std::optional<DosedSlump> brought_by(const Ingredient& reducer, double before_mm,
                                     const CheckContext& context) {
    const auto gain = gain_mm(reducer, context);
    if (!gain) {
        return DosedSlump{&reducer, std::nullopt};
    }
    const double half_a_reading = context.tables.trial->adjustments.slump_reading_mm.value / 2;
    const double reached_mm = before_mm + *gain;
    return above(std::abs(reached_mm - context.requirements.slump_mm), half_a_reading)
               ? std::optional{DosedSlump{&reducer, reached_mm}}
               : std::nullopt;
}

} // namespace

std::optional<DosedSlump> slump_in_doubt(const CheckContext& context) {
    const auto& before_mm = context.proportions.selection.slump_before_reducer_mm;
    for (const Ingredient* admixture : of_role(context.proportions, Role::admixture)) {
        if (!reduces_water(admixture->material->kind)) {
            continue;
        }
        if (before_mm && admixture->material->kind == Kind::high_range_water_reducer) {
            if (const auto doubt = brought_by(*admixture, *before_mm, context)) {
                return doubt;
            }
        } else if (admixture->material->admixture.reduction_dose_assumed) {
            return DosedSlump{admixture, std::nullopt};
        }
    }
    return std::nullopt;
}

void append_slump_doubt(const DosedSlump& doubt, Phrase& message) {
    message.text += doubt.reached_mm ? "; the dose of {dosed} brings it to {reached}"
                                     : "; that the dose of {dosed} brings {asked} is not known: a "
                                       "trial batch shows it";
    message.arguments.push_back(word("dosed", std::string{doubt.reducer->name}));
    message.arguments.push_back(
        quantity("reached", {doubt.reached_mm.value_or(0), Measure::slump}));
}

} // namespace boardmark::core
