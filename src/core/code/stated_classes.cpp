#include "stated_classes.hpp"

#include "../mix/material_figures.hpp"

#include <algorithm>
#include <cassert>

namespace boardmark::core {
namespace {

/// The limits of a class that apply to this member and this binder.
const ClassLimits& applicable_limits(const ExposureClass& exposure, bool reinforced,
                                     bool pozzolanic) {
    if (!reinforced && exposure.plain_limits) {
        return *exposure.plain_limits;
    }
    if (pozzolanic && exposure.pozzolanic_limits) {
        return *exposure.pozzolanic_limits;
    }
    return exposure.limits;
}

} // namespace

bool binder_holds_pozzolan_or_slag(const Proportions& proportions) {
    const auto binder = of_role(proportions, Role::binder);
    return std::any_of(binder.begin(), binder.end(), [](const Ingredient* one) {
        return one->kg_m3 > 0 && is_or_holds_pozzolan_or_slag(*one->material);
    });
}

StatedClasses::StatedClasses(const Requirements& requirements, bool pozzolanic,
                             const CodeTables& code) {
    for (const std::string& name : requirements.exposure) {
        const ExposureClass* before = count_ > 0 ? classes_[count_ - 1].exposure : nullptr;
        const ExposureClass* exposure = code.find_class(name, before);
        assert(exposure);
        assert(count_ < most_classes); // the door refuses more
        classes_[count_++] = {exposure,
                              &applicable_limits(*exposure, requirements.reinforced, pozzolanic)};
    }
}

const ExposureClass* StatedClasses::of_category(std::size_t category) const {
    const ExposureClass* severest = nullptr; // a code's classes rise in severity
    for (const StatedClass& stated : *this) {
        if (stated.exposure->category == category && (!severest || stated.exposure > severest)) {
            severest = stated.exposure;
        }
    }
    return severest;
}

} // namespace boardmark::core
