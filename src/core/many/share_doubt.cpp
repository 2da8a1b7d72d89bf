#include "share_doubt.hpp"

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/method/proportion.hpp>

#include "../basis/tolerance.hpp"

#include <algorithm>
#include <string_view>

namespace boardmark::core {
namespace {

bool is_by_own_strengths(std::string_view id) {
    return id == check_ids::strength_average.name() || id == check_ids::w_cm_strength.name();
}

} // namespace

OwnStrengths::OwnStrengths(const CompleteMix& written, const Tables& tables)
    : written_{*written} {
    Proportions proportions{};
    if (!figures(written, tables, proportions)) {
        air_percent_ = proportions.selection.air_percent;
    }
}

LeftStrengths OwnStrengths::left_by(const Mix& studied) const {
    if (!has_own_strengths(written_.requirements)) {
        return {};
    }
    const bool same_shares = std::ranges::equal(
        written_.binder, studied.binder,
        [](const Share& one, const Share& other) { return same(one.percent, other.percent); });
    // A line of a results file knows the air of its batches: its own check holds the air to that.
    const auto& studied_air = studied.selections.air_percent;
    return {.shares = !same_shares,
            .air = !written_.requirements.strength_line && studied_air && air_percent_ &&
                   above(*studied_air, *air_percent_)};
}

void watch_own_strengths(std::vector<Finding>& findings) {
    for (Finding& finding : findings) {
        if (finding.verdict == Verdict::holds && is_by_own_strengths(finding.id.name())) {
            finding.verdict = Verdict::watch;
        }
    }
}

void watch_own_strengths(std::vector<Check>& checks, const LeftStrengths& left) {
    for (Check& check : checks) {
        if (check.verdict == Verdict::holds && is_by_own_strengths(check.id)) {
            check.verdict = Verdict::watch;
            check.message.text += left.shares
                                      ? "; the own strengths are of the shares as written: prove "
                                        "it by trials at these shares"
                                      : "";
            check.message.text += left.air ? "; the own strengths are of the air as written, and "
                                             "more of it weakens: prove it by trials at this air"
                                           : "";
        }
    }
}

} // namespace boardmark::core
