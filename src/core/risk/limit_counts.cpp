#include "limit_counts.hpp"

#include "../basis/binomial.hpp"
#include "../basis/tolerance.hpp"

#include <algorithm>
#include <cassert>

namespace boardmark::core {
namespace {

bool differ(const std::optional<double>& left, const std::optional<double>& right) {
    return left && right ? !same(*left, *right) : left.has_value() != right.has_value();
}

} // namespace

LimitCounts::LimitCounts(const std::vector<Finding>& exact) {
    for (const Finding& finding : exact) {
        counts_.push_back(
            {.id = finding.id, .exact_verdict = finding.verdict, .exact_value = finding.value});
    }
}

/// Checks nearly always come in the same order; one that only some batches have comes last.
LimitCounts::Count& LimitCounts::count_of(CheckId id, std::size_t expected_at) {
    if (expected_at < counts_.size() && counts_[expected_at].id == id) {
        return counts_[expected_at];
    }
    const auto found = std::ranges::find(counts_, id, &Count::id);
    if (found != counts_.end()) {
        return *found;
    }
    counts_.push_back({.id = id, .exact_verdict = std::nullopt, .exact_value = std::nullopt});
    return counts_.back();
}

void LimitCounts::add(const std::vector<Finding>& found) {
    for (std::size_t i = 0; i < found.size(); ++i) {
        const Finding& finding = found[i];
        Count& count = count_of(finding.id, i);
        count.moves = count.moves || count.exact_verdict != finding.verdict ||
                      differ(count.exact_value, finding.value);
        count.fails += finding.verdict == Verdict::fails ? 1 : 0;
        count.watched += finding.verdict == Verdict::watch ? 1 : 0;
        count.open += finding.verdict == Verdict::not_checked ? 1 : 0;
    }
}

void LimitCounts::add(const LimitCounts& others) {
    for (std::size_t i = 0; i < others.counts_.size(); ++i) {
        const Count& other = others.counts_[i];
        Count& count = count_of(other.id, i);
        count.moves = count.moves || other.moves;
        count.fails += other.fails;
        count.watched += other.watched;
        count.open += other.open;
    }
}

std::vector<LimitRisk> LimitCounts::risks(std::size_t samples) const {
    assert(samples > 0);
    std::vector<Count> counts = counts_;
    // Which thread saw a rare check first is chance: by name it stands at the same place.
    const auto by_chance = std::ranges::find_if(
        counts, [](const Count& count) { return !count.exact_verdict.has_value(); });
    std::sort(by_chance, counts.end(), [](const Count& left, const Count& right) {
        return left.id.name() < right.id.name();
    });
    const auto whole = static_cast<double>(samples);
    std::vector<LimitRisk> risks;
    for (const Count& count : counts) {
        const bool only_open = count.open == samples;
        if (only_open || (!count.moves && count.fails == 0)) {
            continue;
        }
        const ProbabilityRange range = probability_range(count.fails, samples);
        risks.push_back({.id = count.id,
                         .probability = static_cast<double>(count.fails) / whole,
                         .low = range.low,
                         .high = range.high,
                         .watch = static_cast<double>(count.watched) / whole,
                         .not_checked = static_cast<double>(count.open) / whole});
    }
    return risks;
}

} // namespace boardmark::core
