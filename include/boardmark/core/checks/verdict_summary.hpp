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
    bool each_owes_a_mix = true; ///< so that one without fails; not where other methods are tried

    VerdictState state() const;

    /// Takes in the checks of one more part.
    void add(const std::vector<Check>& checks);
    void add(const std::vector<Finding>& findings);
};

VerdictSummary verdicts_of(const std::vector<Check>& checks);

/// A check in a headline, or a part that has no mix.
struct NamedCheck {
    std::string title;
    std::string id; ///< empty: a part without a mix
};

/// The names of one verdict in a headline.
struct NamedVerdict {
    std::string heading; ///< "To watch"
    Verdict verdict;
    std::vector<NamedCheck> checks;
};

/// The summary in counts: what has no mix first, then what fails, is to be watched, is open, holds.
/// Only where everything holds does it say so.
///
/// @param refusal what must not be done where something fails: "DO NOT USE AS IT IS"
Phrase counts_of(const VerdictSummary& summary, const std::string& refusal);

/// What a headline names after its counts, the worst first; what holds has no names.
std::vector<NamedVerdict> named_in(const VerdictSummary& summary);

/// Counts and names as sentences.
Phrase headline_of(const VerdictSummary& summary, const std::string& refusal);

} // namespace boardmark::core
