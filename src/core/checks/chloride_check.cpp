#include "../phrases.hpp"
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
        } else if (ingredient.material && ingredient.kg_m3 > 0) {
            if (!ingredient.material->chloride_percent) {
                missing.push_back(ingredient.name);
                continue;
            }
            chloride_kg += ingredient.dry_kg_m3.value_or(ingredient.kg_m3) *
                           *ingredient.material->chloride_percent / 100;
        }
    }
    const double counted_kg = counted_binder_kg(context.proportions);
    if (!missing.empty() || counted_kg == 0) {
        check.message = {"chloride is not stated for {missing}: test reports and data sheets have "
                         "it; add 'chloride'",
                         {word("missing", joined(missing))}};
        return {std::move(check)};
    }
    const double percent = 100 * chloride_kg / counted_kg;
    const double limit = *exposure->chloride_percent;
    check.verdict = at_most({percent, limit, chloride_precision_percent});
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
