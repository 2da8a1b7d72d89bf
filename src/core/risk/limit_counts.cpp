#include "limit_counts.hpp"

#include "../basis/binomial.hpp"
#include "../basis/tolerance.hpp"
#include "../checks/compare.hpp"

#include <algorithm>
#include <cassert>

namespace boardmark::core {
namespace {

bool differ(const Finding& left, const Finding& right) {
    return left.verdict != right.verdict || left.value.has_value() != right.value.has_value() ||
           (left.value && !same(*left.value, *right.value));
}

/// It tells what a small change of the ratio is in water, not whether batches keep within it: how
/// far their ratio scatters is told as a quantity.
bool is_of_batches(CheckId id) {
    return id != check_ids::finish_w_cm_constancy;
}

} // namespace

LimitCounts::LimitCounts(const std::vector<Finding>& exact) {
    for (const Finding& finding : exact) {
        const std::size_t count = count_of(finding.id);
        counts_[count].is_exact = true;
        exact_.push_back({finding, count});
    }
}

/// One that only some batches have comes last.
std::size_t LimitCounts::count_of(CheckId id) {
    const auto found = std::ranges::find(counts_, id, &Count::id);
    const auto at = static_cast<std::size_t>(found - counts_.begin());
    if (found == counts_.end()) {
        counts_.push_back({.id = id});
    }
    return at;
}

/// Checks nearly always come in the same order.
const LimitCounts::Exact* LimitCounts::exact_of(CheckId id, std::size_t expected_at) const {
    if (expected_at < exact_.size() && exact_[expected_at].finding.id == id) {
        return &exact_[expected_at];
    }
    const auto found =
        std::ranges::find_if(exact_, [id](const Exact& exact) { return exact.finding.id == id; });
    return found == exact_.end() ? nullptr : &*found;
}

void LimitCounts::look_at(const Finding& finding, std::size_t at) {
    const Exact* exact = exact_of(finding.id, at);
    Count& count = counts_[exact ? exact->count : count_of(finding.id)];
    count.moves = count.moves || !exact || differ(exact->finding, finding);
    count.worst = count.worst ? worse(*count.worst, finding.verdict) : finding.verdict;
}

void LimitCounts::add(const std::vector<Finding>& found) {
    for (std::size_t i = 0; i < found.size(); ++i) {
        look_at(found[i], i);
    }
    for (Count& count : counts_) {
        count.fails += count.worst == Verdict::fails ? 1 : 0;
        count.watched += count.worst == Verdict::watch ? 1 : 0;
        count.open += count.worst == Verdict::not_checked ? 1 : 0;
        count.worst.reset();
    }
}

void LimitCounts::add(const LimitCounts& others) {
    for (const Count& other : others.counts_) {
        Count& count = counts_[count_of(other.id)];
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
    const auto by_chance =
        std::ranges::find_if(counts, [](const Count& count) { return !count.is_exact; });
    std::sort(by_chance, counts.end(), [](const Count& left, const Count& right) {
        return left.id.name() < right.id.name();
    });
    const auto whole = static_cast<double>(samples);
    std::vector<LimitRisk> risks;
    for (const Count& count : counts) {
        const bool only_open = count.open == samples;
        if (!is_of_batches(count.id) || only_open || (!count.moves && count.fails == 0)) {
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
