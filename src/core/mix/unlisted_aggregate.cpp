#include "unlisted_aggregate.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

bool lists(const Proportions& proportions, Role role) {
    const auto all = of_role(proportions, role);
    return std::any_of(all.begin(), all.end(),
                       [](const Ingredient* one) { return one->goes_in(); });
}

} // namespace

bool lists_aggregates(const Proportions& proportions) {
    return lists(proportions, Role::coarse) && lists(proportions, Role::fine);
}

std::string unlisted_aggregate(const Proportions& proportions) {
    const bool coarse = lists(proportions, Role::coarse);
    const bool fine = lists(proportions, Role::fine);
    return coarse && fine ? ""
           : coarse       ? "fine aggregate"
           : fine         ? "coarse aggregate"
                          : "coarse and fine aggregate";
}

} // namespace boardmark::core
