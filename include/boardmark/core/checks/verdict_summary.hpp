#pragma once

#include <boardmark/core/checks/check.hpp>

#include <cstddef>
#include <string>
#include <vector>

namespace boardmark::core {

/// What many checks say together: the first of this order that occurs.
enum class VerdictState {
    fails, ///< or a part has no mix
    watch,
    open, ///< something is not checked, or nothing was looked at
    holds,
};

/// The checks of a result by verdict; of a result of several parts, the checks of all of them.
struct VerdictSummary {
    std::vector<std::string> failed = {};      ///< ids, each once, in the order of the checks
    std::vector<std::string> watched = {};     ///< likewise
    std::vector<std::string> not_checked = {}; ///< likewise
    std::size_t held = 0;                      ///< checks, not ids
    std::vector<std::string> without_mix = {}; ///< parts for which no mix follows

    VerdictState state() const;

    /// Takes in the checks of one more part.
    void add(const std::vector<Check>& checks);
};

VerdictSummary verdicts_of(const std::vector<Check>& checks);

/// The summary in sentences: what has no mix first, then what fails, what is to be watched and what
/// is open, each with its count and names. Only where everything holds does it say so.
///
/// @param refusal what must not be done where something fails: "DO NOT USE AS IT IS"
Phrase headline_of(const VerdictSummary& summary, const std::string& refusal);

} // namespace boardmark::core
