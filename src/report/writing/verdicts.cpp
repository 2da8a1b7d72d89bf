#include "verdicts.hpp"

#include "../trial/trial_set_cautions.hpp"

#include <algorithm>
#include <iterator>

namespace boardmark::report {

core::VerdictSummary verdicts_of(const core::WallPlan& plan) {
    core::VerdictSummary summary = core::verdicts_of(plan.checks);
    summary.add(plan.mix_checks);
    return summary;
}

core::VerdictSummary verdicts_of(const core::PourCard& card) {
    core::VerdictSummary summary = core::verdicts_of(card.checks);
    summary.add(card.mix_checks);
    return summary;
}

core::VerdictSummary verdicts_of(const core::PanelProgramme& programme) {
    core::VerdictSummary summary = core::verdicts_of(programme.checks);
    for (const core::PanelMix& mix : programme.mixes) {
        summary.add(mix.checks);
    }
    return summary;
}

core::VerdictSummary verdicts_of(const ComparisonResult& result) {
    if (result.is_study) {
        return core::verdicts_of(result.checks);
    }
    core::VerdictSummary summary{.each_owes_a_mix = result.each_owes_a_mix};
    for (const core::ComparedMix& column : result.columns) {
        summary.add(column.checks);
        if (column.unresolved) {
            summary.without_mix.push_back(column.label);
        }
    }
    return summary;
}

core::VerdictSummary verdicts_of(const core::TrialSet& set) {
    core::VerdictSummary summary;
    for (const core::TrialMix& mix : set.mixes) {
        if (mix.solved()) {
            summary.add(mix.solved()->checks);
        } else {
            summary.without_mix.push_back(label_of(mix));
        }
    }
    return summary;
}

core::VerdictSummary verdicts_of(const YieldResult& result) {
    std::vector<core::Check> checks = result.checks;
    if (result.next) {
        std::ranges::copy_if(
            result.next->checks, std::back_inserter(checks),
            [](const core::Check& check) { return check.verdict == core::Verdict::fails; });
    }
    return core::verdicts_of(checks);
}

} // namespace boardmark::report
