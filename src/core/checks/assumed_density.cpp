#include "assumed_density.hpp"

#include "../basis/phrases.hpp"
#include "exposure_limits.hpp"

#include <algorithm>
#include <string>
#include <vector>

namespace boardmark::core {
namespace {

/// Admixtures take up too little for their density to decide.
bool is_assumed(const Ingredient& one) {
    const bool takes_up =
        one.role == Role::binder || one.role == Role::coarse || one.role == Role::fine;
    return takes_up && one.kg_m3 > 0 && one.material && !one.material->relative_density;
}

} // namespace

bool density_is_assumed(const Proportions& proportions) {
    return std::ranges::any_of(proportions.ingredients, is_assumed);
}

void append_assumed_densities(const Proportions& proportions, Phrase& message) {
    std::vector<std::string> names;
    for (const Ingredient& one : proportions.ingredients) {
        if (is_assumed(one)) {
            names.emplace_back(one.name);
        }
    }
    message.text += "; the relative density of {assumed} is not stated and taken as usual";
    message.arguments.push_back(word("assumed", joined(names)));
}

} // namespace boardmark::core
