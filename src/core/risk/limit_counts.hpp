#pragma once

#include <boardmark/core/checks/finding.hpp>
#include <boardmark/core/risk/risk.hpp>

#include <cstddef>
#include <optional>
#include <vector>

namespace boardmark::core {

/// How often each check fails, over many batches; of several findings of one check, as of two
/// reducers, the worst counts. Counts of several threads add up to the same in any order.
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
        bool is_exact = false; ///< found in the batch in which nothing is off
        bool moves = false;
        std::size_t fails = 0;
        std::size_t watched = 0;
        std::size_t open = 0;
        std::optional<Verdict> worst = {}; ///< in the batch that is being counted
    };

    /// A finding of the batch in which nothing is off, and the count of its check.
    struct Exact {
        Finding finding;
        std::size_t count;
    };

    std::size_t count_of(CheckId id);
    const Exact* exact_of(CheckId id, std::size_t expected_at) const;
    void look_at(const Finding& finding, std::size_t at);

    std::vector<Exact> exact_;
    std::vector<Count> counts_;
};

} // namespace boardmark::core
