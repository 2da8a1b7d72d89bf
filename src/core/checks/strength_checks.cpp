#include "checks.hpp"

#include <algorithm>
#include <iterator>

namespace boardmark::core {

Checks check_strength(const CheckContext& context) {
    Checks checks = check_average_strength(context);
    std::ranges::move(check_own_line(context), std::back_inserter(checks));
    std::ranges::move(check_strength_records(context), std::back_inserter(checks));
    return checks;
}

} // namespace boardmark::core
