#include "stated_classes.hpp"

#include "../method/water_cement_ratio.hpp"

#include <algorithm>
#include <cassert>

namespace boardmark::core {
bool binder_holds_pozzolan_or_slag(const Proportions& proportions) {
    const auto binder = of_role(proportions, Role::binder);
    return std::any_of(binder.begin(), binder.end(), [](const Ingredient* one) {
        return is_or_holds_pozzolan_or_slag(*one->material);
    });
}

StatedClasses::StatedClasses(const Requirements& requirements, const Proportions& proportions,
                             const CodeTables& code) {
    if (requirements.exposure.empty()) {
        return;
    }
    const bool pozzolanic = binder_holds_pozzolan_or_slag(proportions);
    for (const std::string& name : requirements.exposure) {
        if (const ExposureClass* exposure = code.find_class(name)) {
            assert(count_ < most_categories); // at most one class of each category
            classes_[count_++] = {
                exposure, &applicable_limits(*exposure, requirements.reinforced, pozzolanic)};
        }
    }
}

const ExposureClass* StatedClasses::of_category(std::size_t category) const {
    return first([&](const ExposureClass& exposure) { return exposure.category == category; });
}

} // namespace boardmark::core
