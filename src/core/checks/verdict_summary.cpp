#include <boardmark/core/checks/check_title.hpp>
#include <boardmark/core/checks/verdict_summary.hpp>

#include "../basis/phrases.hpp"
#include "exposure_limits.hpp"

#include <algorithm>
#include <string_view>
#include <utility>

namespace boardmark::core {
namespace {

void add_once(std::string_view id, std::vector<std::string>& ids) {
    if (std::ranges::find(ids, id) == ids.end()) {
        ids.emplace_back(id);
    }
}

void add_verdict(Verdict verdict, std::string_view id, VerdictSummary& summary) {
    switch (verdict) {
    case Verdict::fails:
        add_once(id, summary.failed);
        break;
    case Verdict::watch:
        add_once(id, summary.watched);
        break;
    case Verdict::not_checked:
        add_once(id, summary.not_checked);
        break;
    case Verdict::holds:
        ++summary.held;
        break;
    }
}

/// Counts one after the other; the first is set off from the others by a semicolon.
class CountsTold {
public:
    void say(const std::string& words) {
        told_.text += std::string{separator()} + words;
        ++told_parts_;
    }

    void count(const char* name, std::size_t number, const std::string& words) {
        if (number > 0) {
            say("{" + std::string{name} + "_count} " + words);
            told_.arguments.push_back(
                quantity(std::string{name} + "_count", {double(number), Measure::count}));
        }
    }

    /// What follows is told behind a semicolon.
    void end_of_lead() { lead_parts_ = told_parts_; }

    Phrase told() && { return std::move(told_); }

private:
    const char* separator() const {
        return told_parts_ == 0 ? "" : told_parts_ == lead_parts_ ? "; " : ", ";
    }

    Phrase told_;
    int told_parts_ = 0;
    int lead_parts_ = -1;
};

void count_failures(const VerdictSummary& summary, CountsTold& counts) {
    counts.count("without_mix", summary.without_mix.size(), "without a mix");
    counts.count("failed", summary.failed.size(), summary.failed.size() == 1 ? "fails" : "fail");
    if (summary.failed.empty()) {
        const bool nothing_checked = summary.watched.empty() && summary.held == 0;
        counts.say(!summary.without_mix.empty() ? "nothing else fails"
                   : nothing_checked            ? "Nothing was checked"
                                                : "Nothing fails");
    }
    counts.end_of_lead();
}

void add_named(const char* heading, Verdict verdict, const std::vector<std::string>& checks,
               std::vector<NamedVerdict>& named) {
    if (checks.empty()) {
        return;
    }
    NamedVerdict& added = named.emplace_back(NamedVerdict{heading, verdict, {}});
    for (const std::string& id : checks) {
        added.checks.push_back({title_of(id), id});
    }
}

} // namespace

VerdictState VerdictSummary::state() const {
    if (!failed.empty() || (each_owes_a_mix && !without_mix.empty())) {
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
        add_verdict(check.verdict, check.id, *this);
    }
}

void VerdictSummary::add(const std::vector<Finding>& findings) {
    for (const Finding& finding : findings) {
        add_verdict(finding.verdict, finding.id.name(), *this);
    }
}

VerdictSummary verdicts_of(const std::vector<Check>& checks) {
    VerdictSummary summary;
    summary.add(checks);
    return summary;
}

Phrase counts_of(const VerdictSummary& summary, const std::string& refusal) {
    if (summary.state() == VerdictState::holds) {
        return {summary.held == 1 ? "The one check holds." : "All {held} checks hold.",
                {quantity("held", {double(summary.held), Measure::count})}};
    }
    CountsTold counts;
    count_failures(summary, counts);
    counts.count("watch", summary.watched.size(), "to watch");
    counts.count("not_checked", summary.not_checked.size(), "not checked");
    counts.count("held", summary.held, summary.held == 1 ? "holds" : "hold");
    Phrase told = std::move(counts).told();
    told.text += ".";
    if (!summary.failed.empty()) {
        told.text += " {refusal}.";
        told.arguments.push_back(word("refusal", refusal));
    }
    return told;
}

std::vector<NamedVerdict> named_in(const VerdictSummary& summary) {
    std::vector<NamedVerdict> named;
    if (!summary.without_mix.empty()) {
        NamedVerdict& parts = named.emplace_back(NamedVerdict{"Without a mix", Verdict::fails, {}});
        for (const std::string& part : summary.without_mix) {
            parts.checks.push_back({part, ""});
        }
    }
    add_named(summary.failed.size() == 1 ? "Fails" : "Fail", Verdict::fails, summary.failed, named);
    add_named("To watch", Verdict::watch, summary.watched, named);
    add_named("Not checked", Verdict::not_checked, summary.not_checked, named);
    return named;
}

Phrase headline_of(const VerdictSummary& summary, const std::string& refusal) {
    Phrase headline = counts_of(summary, refusal);
    for (const NamedVerdict& verdict : named_in(summary)) {
        std::vector<std::string> titles;
        for (const NamedCheck& check : verdict.checks) {
            titles.push_back(check.title);
        }
        const std::string name = numbered("named", headline);
        headline.text += " " + verdict.heading + ": {" + name + "}.";
        headline.arguments.push_back(word(name, joined(titles)));
    }
    return headline;
}

} // namespace boardmark::core
