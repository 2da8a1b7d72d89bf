#pragma once

#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/checks/finding.hpp>

#include <utility>
#include <vector>

namespace boardmark::core {

/// Where checks put what they find. The verdict comes first; the sentence that tells it is a
/// function, called only where somebody reads it, so that a million mixes are judged without a
/// word.
class Findings {
public:
    /// Verdicts alone.
    explicit Findings(std::vector<Finding>& verdicts)
        : verdicts_{&verdicts} {}

    /// Verdicts with requirement, source and sentence.
    explicit Findings(std::vector<Check>& told)
        : told_{&told} {}

    /// @param telling  takes the Check and gives it requirement, source and message; it may read
    ///                 figures, never decide anything
    template <class Telling>
    void add(const Finding& finding, Telling&& telling) {
        if (verdicts_) {
            verdicts_->push_back(finding);
            return;
        }
        std::forward<Telling>(telling)(open(finding));
    }

private:
    /// A check to be told, with the figures of a finding.
    Check& open(const Finding& finding);

    std::vector<Finding>* verdicts_ = nullptr;
    std::vector<Check>* told_ = nullptr;
};

} // namespace boardmark::core
