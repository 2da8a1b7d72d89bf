#include "suspect_chloride.hpp"

#include <boardmark/core/mix/designation.hpp>

namespace boardmark::core {
namespace {

/// How much an admixture asks for a reader's attention: what hastens setting and states chloride
/// most, then what states none.
int rank_of(SuspectChloride suspect, const Material& admixture) {
    return suspect == SuspectChloride::no                                      ? 0
           : suspect == SuspectChloride::hastens && admixture.chloride_percent ? 3
           : admixture.chloride_percent                                        ? 2
                                                                               : 1;
}

} // namespace

bool hastens_setting(const Material& admixture) {
    return admixture.kind == Kind::accelerator || admixture_type(admixture.standard).accelerates;
}

SuspectChloride suspect_chloride(const Ingredient& ingredient, double trace_percent) {
    const bool is_there = ingredient.by_trial || ingredient.kg_m3 > 0;
    if (ingredient.role != Role::admixture || !ingredient.material || !is_there ||
        ingredient.material->chloride_percent == 0.0) {
        return SuspectChloride::no;
    }
    const Material& admixture = *ingredient.material;
    if (hastens_setting(admixture)) {
        return SuspectChloride::hastens;
    }
    if (admixture.chloride_percent) {
        return *admixture.chloride_percent > trace_percent ? SuspectChloride::more_than_trace
                                                           : SuspectChloride::no;
    }
    return admixture.kind == Kind::pigment ? SuspectChloride::no : SuspectChloride::not_told;
}

const Material* suspect_of_chloride(const Proportions& proportions, double trace_percent) {
    const Material* first = nullptr;
    int highest = 0;
    for (const Ingredient& ingredient : proportions.ingredients) {
        const SuspectChloride suspect = suspect_chloride(ingredient, trace_percent);
        const int rank =
            suspect == SuspectChloride::no ? 0 : rank_of(suspect, *ingredient.material);
        if (rank > highest) {
            highest = rank;
            first = &*ingredient.material;
        }
    }
    return first;
}

} // namespace boardmark::core
