#include "air_entraining.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// Cements whose designation ends in A after the type (IA, IIA, IIIA) are air-entraining.
bool is_air_entraining_cement(const Material& material) {
    const std::string& standard = material.standard;
    return is_cement(material.kind) && standard.size() >= 2 && standard.ends_with("IA");
}

bool entrains_air(const Ingredient& ingredient) {
    return ingredient.goes_in() && ingredient.material &&
           (ingredient.material->kind == Kind::air_entraining_admixture ||
            is_air_entraining_cement(*ingredient.material));
}

} // namespace

bool can_entrain_air(const Proportions& proportions) {
    return std::ranges::any_of(proportions.ingredients, entrains_air);
}

} // namespace boardmark::core
