#include <boardmark/core/basis/tables.hpp>

#include <algorithm>
#include <cassert>

namespace boardmark::core {

const ExposureClass& Tables::exposure_class(const std::string& name) const {
    const auto found = std::ranges::find(code.classes, name, &ExposureClass::name);
    assert(found != code.classes.end());
    return *found;
}

} // namespace boardmark::core
