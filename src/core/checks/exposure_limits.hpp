#pragma once

#include <boardmark/core/code/code_tables.hpp>

#include "checks.hpp"

#include <string>
#include <vector>

namespace boardmark::core {

/// A stated class with the limits that apply to this member and this binder.
struct StatedClass {
    const ExposureClass* exposure;
    const ClassLimits* limits;
};

std::vector<StatedClass> stated_classes(const CheckContext& context);

/// The stated class of a category ('F', 'S', 'W', 'C'), or nullptr.
const ExposureClass* stated_class(const CheckContext& context, char category);

/// The binder ingredients' materials.
std::vector<const Material*> binder_materials(const Proportions& proportions);

/// Adds to a message what other editions of the code say of the classes.
void append_other_editions(const std::vector<const ExposureClass*>& classes, Phrase& message);

/// "F2, C2"
std::string joined(const std::vector<std::string>& words);

} // namespace boardmark::core
