#include "exposure_limits.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../code/site_exposure.hpp"
#include "../method/water_cement_ratio.hpp"

namespace boardmark::core {

std::vector<StatedClass> stated_classes(const CheckContext& context) {
    const bool pozzolanic = has_pozzolan_or_slag(binder_materials(context.proportions));
    std::vector<StatedClass> classes;
    for (const std::string& name : context.requirements.exposure) {
        const ExposureClass& exposure = context.tables.exposure_class(name);
        classes.push_back(
            {&exposure, &applicable_limits(exposure, context.requirements.reinforced, pozzolanic)});
    }
    return classes;
}

const ExposureClass* stated_class(const CheckContext& context, char category) {
    const std::string name = class_in_force(context.requirements, category);
    return name.empty() ? nullptr : &context.tables.exposure_class(name);
}

std::vector<const Material*> binder_materials(const Proportions& proportions) {
    std::vector<const Material*> materials;
    for (const Ingredient* binder : of_role(proportions, Role::binder)) {
        materials.push_back(&*binder->material);
    }
    return materials;
}

void append_other_editions(const std::vector<const ExposureClass*>& classes, Phrase& message) {
    for (const ExposureClass* exposure : classes) {
        if (!exposure->other_editions.empty()) {
            message.text += ". {editions_" + exposure->name + "}";
            message.arguments.push_back(
                word("editions_" + exposure->name, exposure->other_editions));
        }
    }
}

std::string joined(const std::vector<std::string>& words) {
    std::string text;
    for (const std::string& word : words) {
        text += (text.empty() ? "" : ", ") + word;
    }
    return text;
}

} // namespace boardmark::core
