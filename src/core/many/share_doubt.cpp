#include "share_doubt.hpp"

#include "../basis/tolerance.hpp"

#include <algorithm>
#include <string_view>

namespace boardmark::core {
namespace {

bool is_by_own_strengths(std::string_view id) {
    return id == check_ids::strength_average.name() || id == check_ids::w_cm_strength.name();
}

} // namespace

bool leaves_own_strengths(const Mix& written, const Mix& studied) {
    return has_own_strengths(written.requirements) &&
           !std::ranges::equal(written.binder, studied.binder,
                               [](const Share& one, const Share& other) {
                                   return same(one.percent, other.percent);
                               });
}

void watch_own_strengths(std::vector<Finding>& findings) {
    for (Finding& finding : findings) {
        if (finding.verdict == Verdict::holds && is_by_own_strengths(finding.id.name())) {
            finding.verdict = Verdict::watch;
        }
    }
}

void watch_own_strengths(std::vector<Check>& checks) {
    for (Check& check : checks) {
        if (check.verdict == Verdict::holds && is_by_own_strengths(check.id)) {
            check.verdict = Verdict::watch;
            check.message.text += "; the own strengths are of the shares as written: prove it by "
                                  "trials at these shares";
        }
    }
}

} // namespace boardmark::core
