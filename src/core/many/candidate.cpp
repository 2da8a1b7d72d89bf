#include "candidate.hpp"

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/mix/footprint.hpp>

#include "../basis/tolerance.hpp"
#include "../checks/compare.hpp"
#include "../mix/door/complete_again.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace boardmark::core {
namespace {

constexpr double no_mix_at_all = 1e6;   // excess of what does not follow
constexpr double no_longer_known = 1e3; // of what became unchecked
constexpr double some = 1e-6;           // of what fails by no figure

EconomyFigures figures_of(const Proportions& proportions) {
    const auto cost = cost_of(proportions);
    const auto carbon = carbon_of(proportions);
    return {.cost_per_m3 = cost ? std::optional{cost->sum.per_m3} : std::nullopt,
            .carbon_kg_m3 = carbon ? std::optional{carbon->per_m3} : std::nullopt,
            .binder_kg_m3 = proportions.totals.binder_kg_m3};
}

/// What the data sheet permits; a dose of another basis cannot be held against it.
bool are_doses_permitted(const Mix& mix) {
    return std::ranges::all_of(mix.admixtures, [](const Dosage& dosage) {
        const auto& most = dosage.material->admixture.maximum_dose;
        return !dosage.dose || !most ||
               (most->basis == dosage.dose->basis &&
                dosage.dose->amount <= most->amount * (1 + relative_rounding));
    });
}

/// Whether no water reducer, or none of high range, is dosed lower.
bool are_reducers_kept(const Mix& written, const Mix& edited, bool high_range_alone = false) {
    return std::ranges::all_of(edited.admixtures, [&](const Dosage& dosage) {
        const Dosage* before = dosage_of(written, dosage.material->name);
        const Kind kind = dosage.material->kind;
        const bool counts =
            high_range_alone ? kind == Kind::high_range_water_reducer : reduces_water(kind);
        return !counts || !dosage.dose || !before || !before->dose ||
               (before->dose->basis == dosage.dose->basis &&
                !below(dosage.dose->amount, before->dose->amount));
    });
}

double relative(double excess, const Finding& finding) {
    const double limit = std::abs(finding.limit.high.value_or(finding.limit.low.value_or(1)));
    return excess / std::max(limit, 1e-3);
}

} // namespace

double EconomyFigures::of(Objective objective) const {
    switch (objective) {
    case Objective::cost:
        assert(cost_per_m3);
        return *cost_per_m3;
    case Objective::carbon:
        assert(carbon_kg_m3);
        return *carbon_kg_m3;
    case Objective::binder:
        break;
    }
    return binder_kg_m3;
}

double excess_of(const Finding& finding) {
    if (!finding.value) {
        return 0;
    }
    const double value = *finding.value;
    const auto [low, high] = finding.limit;
    return high && above(value, *high) ? value - *high
           : low && below(value, *low) ? *low - value
                                       : 0;
}

double precision_of(const Finding& finding, UnitSystem system) {
    switch (finding.measure) {
    case Measure::w_cm:
        return w_cm_precision;
    case Measure::percent:
        return percent_precision;
    case Measure::chloride:
        return chloride_precision_percent;
    case Measure::strength:
        return strength_precision_mpa(system);
    case Measure::concentration:
        return amount_precision_kg_m3(system);
    default:
        break;
    }
    constexpr double part_of_limit = 0.01; // of limits that no precision is stated for
    const double limit = finding.limit.high.value_or(finding.limit.low.value_or(0));
    return part_of_limit * std::abs(limit);
}

CandidateMaker::CandidateMaker(const CompleteMix& mix, const VariedMix& varied,
                               const Tables& tables)
    : mix_{mix}
    , varied_{varied}
    , tables_{tables} {}

std::optional<Candidate> CandidateMaker::as_written() {
    auto candidate = judged(mix_);
    if (candidate) {
        baseline_ = findings_;
        written_water_kg_m3_ = proportions_.selection.water_kg_m3;
        candidate->excess = 0;
        for (const Finding& finding : findings_) {
            candidate->excess += excess(finding, {});
        }
    }
    return candidate;
}

Candidate CandidateMaker::make(std::span<const double> at, const Relaxed& relaxed) {
    ++made_;
    const auto edited = complete_again(varied_.at(at), tables_);
    auto candidate = edited && are_doses_permitted(**edited) ? judged(*edited) : std::nullopt;
    if (!candidate) {
        findings_.clear();
        return {.figures = {}, .excess = no_mix_at_all};
    }
    keeps_water_ = !below(proportions_.selection.water_kg_m3, written_water_kg_m3_) &&
                   are_reducers_kept(*mix_, **edited);
    for (const Finding& finding : findings_) {
        candidate->excess += excess(finding, relaxed);
    }
    // The flow that is asked beyond the water's slump is the reducer's, at its dose as written.
    if (mix_->requirements.slump_before_reducer_mm && !are_reducers_kept(*mix_, **edited, true)) {
        candidate->excess += no_longer_known;
    }
    return *candidate;
}

std::optional<Candidate> CandidateMaker::judged(const CompleteMix& mix) {
    if (figures(mix, tables_, proportions_)) {
        return std::nullopt;
    }
    judge(mix_, proportions_, tables_, findings_);
    return Candidate{figures_of(proportions_), 0};
}

const Finding* CandidateMaker::in_baseline(CheckId id) const {
    if (!baseline_) {
        return nullptr;
    }
    const auto found = std::ranges::find(*baseline_, id, &Finding::id);
    return found == baseline_->end() ? nullptr : &*found;
}

/// Whether more checks of its kind came to that verdict, or to a graver one, than in the mix as
/// written.
bool CandidateMaker::is_new(const Finding& finding) const {
    const auto alike = [&](const std::vector<Finding>& findings) {
        return std::ranges::count_if(findings, [&](const Finding& other) {
            return other.id == finding.id &&
                   (other.verdict == finding.verdict ||
                    (other.verdict == Verdict::fails && finding.verdict == Verdict::watch));
        });
    };
    return baseline_ && alike(findings_) > alike(*baseline_);
}

/// How much farther a value lies beyond its limit than in the mix as written.
double CandidateMaker::beyond_written(const Finding& finding) const {
    const double beyond = excess_of(finding);
    const Finding* written = in_baseline(finding.id);
    const double permitted = written ? excess_of(*written) : 0;
    return beyond > permitted && !same(beyond, permitted)
               ? some + relative(beyond - permitted, finding)
               : 0;
}

/// A value just beyond its limit would be a `watch`, and no search may live on rounding; nor may it
/// leave the reach of what proves a mix, or win by what the mix as written need not be looked at
/// for.
double CandidateMaker::excess(const Finding& finding, const Relaxed& relaxed) const {
    const double beyond = excess_of(finding);
    if (relaxed.check && *relaxed.check == finding.id && beyond > 0) {
        const double more = beyond - precision_of(finding, tables_.system);
        return more > 0 ? some + relative(more, finding) : 0;
    }
    const bool of_slump = finding.id == check_ids::water_slump;
    switch (finding.verdict) {
    case Verdict::fails:
        return some + (beyond > 0 ? relative(beyond, finding) : 1);
    case Verdict::not_checked:
        return is_new(finding) || (of_slump && !keeps_water_) ? no_longer_known : 0;
    case Verdict::watch: {
        const double farther = beyond_written(finding);
        return farther > 0 || !is_new(finding) ? farther : some + 1;
    }
    case Verdict::holds:
        break;
    }
    return of_slump ? beyond_written(finding) : 0; // it holds with a little less
}

std::string_view CandidateMaker::broken() const {
    const auto fails = std::ranges::find(findings_, Verdict::fails, &Finding::verdict);
    const auto found = fails != findings_.end()
                           ? fails
                           : std::ranges::find_if(findings_, [&](const Finding& finding) {
                                 return excess(finding, {}) > 0;
                             });
    return found == findings_.end() ? std::string_view{} : found->id.name();
}

} // namespace boardmark::core
