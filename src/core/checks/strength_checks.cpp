#include "checks.hpp"

namespace boardmark::core {

void check_strength(const CheckContext& context, Findings& findings) {
    check_demanded_strength(context, findings);
    check_average_strength(context, findings);
    check_own_line(context, findings);
    check_strength_records(context, findings);
}

} // namespace boardmark::core
