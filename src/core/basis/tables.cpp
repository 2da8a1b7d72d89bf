#include <boardmark/core/basis/tables.hpp>

#include <cassert>

namespace boardmark::core {

const ExposureClass& Tables::exposure_class(const std::string& name) const {
    const ExposureClass* found = code.find_class(name);
    assert(found);
    return *found;
}

} // namespace boardmark::core
