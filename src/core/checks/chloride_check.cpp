#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "checks.hpp"
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

/// Whether an ingredient may bring chloride that nobody stated.
bool is_unknown(const Ingredient& ingredient) {
    const auto& percent = ingredient.material->chloride_percent;
    return !percent || (ingredient.by_trial && *percent > 0);
}

/// Chloride as far as it is known.
struct ChlorideSum {
    double kg = 0;
    bool any_unknown = false;
};

ChlorideSum chloride_of(const CheckContext& context) {
    const double water_percent = context.tables.practice.drinking_water_chloride_percent.value;
    ChlorideSum sum;
    for (const Ingredient& ingredient : context.proportions.ingredients) {
        if (ingredient.role == Role::water) {
            sum.kg += ingredient.kg_m3 * water_percent / 100;
        }
        if (!ingredient.material) {
            continue;
        }
        if (is_unknown(ingredient)) {
            sum.any_unknown = true;
            continue;
        }
        sum.kg += ingredient.dry_kg_m3.value_or(ingredient.kg_m3) *
                  *ingredient.material->chloride_percent / 100;
    }
    return sum;
}

std::string unknown_of(const Proportions& proportions) {
    std::vector<std::string> names;
    for (const Ingredient& ingredient : proportions.ingredients) {
        if (ingredient.material && is_unknown(ingredient)) {
            names.push_back(std::string{ingredient.name} +
                            (ingredient.material->chloride_percent ? " (dosed by trial)" : ""));
        }
    }
    return joined(names);
}

} // namespace

void check_chloride(const CheckContext& context, Findings& findings) {
    const Demand* asked = context.demands.first(Demanded::chloride);
    if (!asked || !context.requirements.reinforced) {
        return;
    }
    const ChlorideSum sum = chloride_of(context);
    const double counted_kg = counted_binder_kg(context.proportions);
    const bool counts = counted_kg != 0;
    const double percent = counts ? 100 * sum.kg / counted_kg : 0;
    const Verdict verdict = held(*asked, percent);
    Finding found{.id = check_ids::chloride_exposure,
                  .verdict = Verdict::not_checked,
                  .measure = Measure::percent};
    const bool known = counts && (!sum.any_unknown || verdict == Verdict::fails);
    if (known) {
        found = {.id = check_ids::chloride_exposure,
                 .verdict = verdict,
                 .value = percent,
                 .limit = asked->limit(),
                 .measure = Measure::chloride};
    }
    findings.add(found, [&](Check& told) {
        told.requirement = asked->by->name;
        told.source = *asked->source;
        if (!counts) {
            told.message = {
                "the binder holds no cement: there is nothing to count chloride against", {}};
        } else if (!known) {
            told.message = {
                "chloride is not known for {missing}: test reports and data sheets have it; "
                "add 'chloride'",
                {word("missing", unknown_of(context.proportions))}};
        } else {
            told.message = {
                "chloride {value} of cementitious material, all of it counted as water-soluble "
                "and the mixing water at the drinking-water maximum; at most {limit} in {class}, "
                "reinforced and not prestressed",
                {quantity("value", {percent, Measure::chloride}),
                 quantity("limit", {asked->high, Measure::chloride}),
                 word("class", asked->by->name)}};
        }
    });
}

} // namespace boardmark::core
