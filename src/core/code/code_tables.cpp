#include <boardmark/core/code/code_tables.hpp>

#include <algorithm>

namespace boardmark::core {
namespace {

/// Of two or three letters, told apart by the last one: a call that compares them costs more.
bool is_named(const ExposureClass& one, std::string_view sought) {
    return !sought.empty() &&
           std::equal(one.name.rbegin(), one.name.rend(), sought.rbegin(), sought.rend());
}

} // namespace

const ExposureClass* CodeTables::find_class(std::string_view sought) const {
    const auto found = std::ranges::find_if(
        classes, [&](const ExposureClass& one) { return is_named(one, sought); });
    return found == classes.end() ? nullptr : &*found;
}

} // namespace boardmark::core
