#pragma once

#include <boardmark/core/checks/finding.hpp>
#include <boardmark/core/risk/risk.hpp>

#include <cstddef>
#include <optional>
#include <vector>

namespace boardmark::core {

/// How often each check fails, over many batches. Counts of several threads add up to the same in
/// any order.
class LimitCounts {
public:
    /// @param exact  findings of the batch in which nothing is off
    explicit LimitCounts(const std::vector<Finding>& exact);

    void add(const std::vector<Finding>& found);
    void add(const LimitCounts& others);

    /// The checks that scatter moves, and those that fail. Asserts that there are samples.
    std::vector<LimitRisk> risks(std::size_t samples) const;

private:
    struct Count {
        CheckId id;
        std::optional<Verdict> exact_verdict;
        std::optional<double> exact_value;
        bool moves = false;
        std::size_t fails = 0;
        std::size_t watched = 0;
        std::size_t open = 0;
    };

    Count& count_of(CheckId id, std::size_t expected_at);

    std::vector<Count> counts_;
};

} // namespace boardmark::core
