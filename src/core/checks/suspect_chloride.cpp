#include "suspect_chloride.hpp"

#include <boardmark/core/mix/designation.hpp>

namespace boardmark::core {

bool may_hold_calcium_chloride(const Ingredient& ingredient) {
    if (ingredient.role != Role::admixture || !ingredient.material ||
        ingredient.material->chloride_percent == 0.0) {
        return false;
    }
    const Material& admixture = *ingredient.material;
    return admixture.kind == Kind::accelerator || admixture_type(admixture.standard).accelerates;
}

} // namespace boardmark::core
