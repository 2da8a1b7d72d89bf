#pragma once

#include <boardmark/core/basis/phrase.hpp>
#include <boardmark/core/basis/quantity.hpp>
#include <boardmark/core/basis/source.hpp>
#include <boardmark/core/checks/finding.hpp>
#include <boardmark/core/mix/complete_requirements.hpp>
#include <boardmark/core/mix/proportions.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

struct Tables;

/// One requirement held against the mix.
struct Check {
    std::string id; ///< the name of a CheckId, of a batched material behind it: "batching.sand"
    Verdict verdict;
    std::optional<double> value = {};
    std::optional<Limit> limit = {};
    Measure measure = Measure::ratio;
    std::string requirement; ///< the exposure class or rule that asks, "C2"
    Source source = {};
    Phrase message = {};
    std::string part = {}; ///< of the walls, by its name in the file; empty: the mix or all of it

    bool is(CheckId wanted) const { return id == wanted.name(); }
};

/// Holds proportions against every requirement that applies to them.
///
/// The order is fixed: limits of the code first, then geometry, then what only advises.
std::vector<Check> assess(CompleteRequirements requirements, const Proportions& proportions,
                          const Tables& tables);

/// The same verdicts and figures in the same order, without a word: what a search over many mixes
/// asks. No allocation once the buffer has room.
///
/// @param verdicts a buffer that is cleared and filled, to be used again
void judge(CompleteRequirements requirements, const Proportions& proportions, const Tables& tables,
           std::vector<Finding>& verdicts);

struct Batch;

/// The same for a batch as it will be weighed: with the amounts and the ratio of its rounded
/// weights.
std::vector<Check> assess(CompleteRequirements requirements, const Proportions& proportions,
                          const Batch& batch, const Tables& tables);

/// Whether any requirement is not met.
bool any_fails(const std::vector<Check>& checks);

} // namespace boardmark::core
