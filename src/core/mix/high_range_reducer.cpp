#include "high_range_reducer.hpp"

namespace boardmark::core {

std::vector<const Ingredient*> high_range_reducers(const Proportions& proportions) {
    std::vector<const Ingredient*> reducers;
    for (const Ingredient* admixture : of_role(proportions, Role::admixture)) {
        if (admixture->material->kind == Kind::high_range_water_reducer) {
            reducers.push_back(admixture);
        }
    }
    return reducers;
}

} // namespace boardmark::core
