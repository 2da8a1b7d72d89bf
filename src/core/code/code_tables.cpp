#include <boardmark/core/code/code_tables.hpp>

#include <algorithm>

namespace boardmark::core {

const ExposureClass* CodeTables::find_class(std::string_view sought) const {
    const auto found = std::ranges::find(classes, sought, &ExposureClass::name);
    return found == classes.end() ? nullptr : &*found;
}

} // namespace boardmark::core
