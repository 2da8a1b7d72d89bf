#include <boardmark/core/code/code_tables.hpp>

#include <algorithm>

namespace boardmark::core {
namespace {

/// Of two or three letters: told apart by the last one before a call compares them all.
bool is_named(const ExposureClass& one, std::string_view sought) {
    return !sought.empty() && !one.name.empty() && one.name.back() == sought.back() &&
           one.name == sought;
}

} // namespace

const ExposureClass* CodeTables::find_class(std::string_view sought) const {
    const auto found = std::ranges::find_if(
        classes, [&](const ExposureClass& one) { return is_named(one, sought); });
    return found == classes.end() ? nullptr : &*found;
}

} // namespace boardmark::core
