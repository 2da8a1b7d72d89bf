#include "suspect_chloride.hpp"

#include <boardmark/core/mix/designation.hpp>

namespace boardmark::core {
namespace {

/// How much an ingredient asks for a reader's attention; 0 where it holds no calcium chloride.
int rank_of(const Ingredient& ingredient, double trace_percent) {
    if (ingredient.role != Role::admixture || !ingredient.material || !ingredient.goes_in()) {
        return 0;
    }
    const Material& admixture = *ingredient.material;
    const auto& percent = admixture.chloride_percent;
    if (!percent) {
        return admixture.kind == Kind::pigment ? 0 : 1;
    }
    if (*percent == 0) {
        return 0;
    }
    return hastens_setting(admixture) ? 3 : *percent > trace_percent ? 2 : 0;
}

} // namespace

bool hastens_setting(const Material& admixture) {
    return admixture.kind == Kind::accelerator || admixture_type(admixture.standard).accelerates;
}

const Material* suspect_of_chloride(const Proportions& proportions, double trace_percent) {
    const Material* first = nullptr;
    int highest = 0;
    for (const Ingredient& ingredient : proportions.ingredients) {
        const int rank = rank_of(ingredient, trace_percent);
        if (rank > highest) {
            highest = rank;
            first = &*ingredient.material;
        }
    }
    return first;
}

} // namespace boardmark::core
