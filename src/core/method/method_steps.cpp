#include "method_steps.hpp"

namespace boardmark::core {

const MethodSteps& steps_of(const MethodTables& method) {
    return method.british ? british_steps() : method.indian ? indian_steps() : aci_steps();
}

} // namespace boardmark::core
