#include <boardmark/core/checks/verdict_summary.hpp>

#include "../basis/phrases.hpp"
#include "exposure_limits.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

void add_once(const std::string& id, std::vector<std::string>& ids) {
    if (std::ranges::count(ids, id) == 0) {
        ids.push_back(id);
    }
}

/// A sentence with the count of some names and the names themselves.
void tell_named(const std::vector<std::string>& names, const char* name, const char* one,
                const char* many, Phrase& headline) {
    if (names.empty()) {
        return;
    }
    const std::string count = std::string{name} + "_count";
    headline.text += (headline.text.empty() ? "{" : " {") + count + "} " +
                     (names.size() == 1 ? one : many) + ": {" + name + "}.";
    headline.arguments.push_back(quantity(count, {double(names.size()), Measure::count}));
    headline.arguments.push_back(word(name, joined(names)));
}

} // namespace

VerdictState VerdictSummary::state() const {
    if (!failed.empty() || !without_mix.empty()) {
        return VerdictState::fails;
    }
    if (!watched.empty()) {
        return VerdictState::watch;
    }
    const bool open = !not_checked.empty() || held == 0;
    return open ? VerdictState::open : VerdictState::holds;
}

void VerdictSummary::add(const std::vector<Check>& checks) {
    for (const Check& check : checks) {
        switch (check.verdict) {
        case Verdict::fails:
            add_once(check.id, failed);
            break;
        case Verdict::watch:
            add_once(check.id, watched);
            break;
        case Verdict::not_checked:
            add_once(check.id, not_checked);
            break;
        case Verdict::holds:
            ++held;
            break;
        }
    }
}

VerdictSummary verdicts_of(const std::vector<Check>& checks) {
    VerdictSummary summary;
    summary.add(checks);
    return summary;
}

Phrase headline_of(const VerdictSummary& summary, const std::string& refusal) {
    Phrase headline;
    if (summary.state() == VerdictState::holds) {
        headline.text = summary.held == 1 ? "The one check holds." : "All {held} checks hold.";
        headline.arguments = {quantity("held", {double(summary.held), Measure::count})};
        return headline;
    }
    tell_named(summary.without_mix, "without_mix", "without a mix", "without a mix", headline);
    tell_named(summary.failed, "failed", "fails", "fail", headline);
    if (!summary.failed.empty()) {
        headline.text += " {refusal}.";
        headline.arguments.push_back(word("refusal", refusal));
    } else {
        const bool nothing_checked = summary.watched.empty() && summary.held == 0;
        const std::string nothing = nothing_checked               ? "Nothing was checked."
                                    : summary.without_mix.empty() ? "Nothing fails."
                                                                  : "Nothing else fails.";
        headline.text += (headline.text.empty() ? "" : " ") + nothing;
    }
    tell_named(summary.watched, "watch", "to watch", "to watch", headline);
    tell_named(summary.not_checked, "not_checked", "not checked", "not checked", headline);
    return headline;
}

} // namespace boardmark::core
