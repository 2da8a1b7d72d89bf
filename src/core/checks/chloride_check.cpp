#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "compare.hpp"
#include "exposure_limits.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// Cementitious mass that the limit counts: supplementary materials up to the mass of cement.
double counted_binder_kg(const Proportions& proportions) {
    double cement_kg = 0;
    double other_kg = 0;
    for (const Ingredient* binder : of_role(proportions, Role::binder)) {
        (is_cement(binder->material->kind) ? cement_kg : other_kg) += binder->kg_m3;
    }
    return cement_kg + std::min(cement_kg, other_kg);
}

} // namespace

Checks check_chloride(const CheckContext& context) {
    const ExposureClass* exposure = stated_class(context, 'C');
    if (!exposure || !exposure->chloride_percent || !context.requirements.reinforced) {
        return {};
    }
    Check check{.id = "chloride.exposure",
                .verdict = Verdict::not_checked,
                .measure = Measure::percent,
                .requirement = exposure->name,
                .source = exposure->limits.source};
    const TypicalFigure& water = context.tables.practice.drinking_water_chloride_percent;
    double chloride_kg = 0;
    std::vector<std::string> missing;
    for (const Ingredient& ingredient : context.proportions.ingredients) {
        if (ingredient.role == Role::water) {
            chloride_kg += ingredient.kg_m3 * water.value / 100;
        }
        if (!ingredient.material) {
            continue;
        }
        const auto& stated_percent = ingredient.material->chloride_percent;
        if (!stated_percent || (ingredient.by_trial && *stated_percent > 0)) {
            missing.push_back(ingredient.name + (stated_percent ? " (dosed by trial)" : ""));
            continue;
        }
        chloride_kg += ingredient.dry_kg_m3.value_or(ingredient.kg_m3) * *stated_percent / 100;
    }
    const double counted_kg = counted_binder_kg(context.proportions);
    if (counted_kg == 0) {
        check.message = {"the binder holds no cement: there is nothing to count chloride against",
                         {}};
        return {std::move(check)};
    }
    const double percent = 100 * chloride_kg / counted_kg;
    const double limit = *exposure->chloride_percent;
    const Verdict verdict = at_most({percent, limit, chloride_precision_percent});
    if (!missing.empty() && verdict != Verdict::fails) {
        check.message = {
            "chloride is not known for {missing}: test reports and data sheets have it; "
            "add 'chloride'",
            {word("missing", joined(missing))}};
        return {std::move(check)};
    }
    check.verdict = verdict;
    check.value = percent;
    check.limit = Limit{.low = std::nullopt, .high = limit};
    check.measure = Measure::chloride;
    check.message = {"chloride {value} of cementitious material, all of it counted as "
                     "water-soluble and the mixing water at the drinking-water maximum; at most "
                     "{limit} in {class}, reinforced and not prestressed",
                     {quantity("value", {percent, Measure::chloride}),
                      quantity("limit", {limit, Measure::chloride}),
                      word("class", exposure->name)}};
    return {std::move(check)};
}

} // namespace boardmark::core
