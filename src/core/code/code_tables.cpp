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

const ExposureClass* CodeTables::find_class(std::string_view sought,
                                            const ExposureClass* from) const {
    const ExposureClass* begin = classes.data();
    const ExposureClass* end = begin + classes.size();
    const ExposureClass* middle = from ? from : begin;
    const auto is_sought = [&](const ExposureClass& one) { return is_named(one, sought); };
    const ExposureClass* behind = std::find_if(middle, end, is_sought);
    if (behind != end) {
        return behind;
    }
    const ExposureClass* before = std::find_if(begin, middle, is_sought);
    return before == middle ? nullptr : before;
}

} // namespace boardmark::core
