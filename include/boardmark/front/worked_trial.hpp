#pragma once

#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/trial/next_trial.hpp>
#include <boardmark/core/trial/yield.hpp>
#include <boardmark/input/trial/read_trial.hpp>
#include <boardmark/report/trial/yield_report.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark {

/// A trial file and what follows from it and from its mix.
class WorkedTrial {
public:
    /// @param designed the proportions of the trial's mix
    WorkedTrial(input::TrialRecord record, const core::Tables& tables, core::Proportions designed,
                core::Yield yield);

    const core::Trial& trial() const { return record_.trial; }
    const core::Proportions& designed() const { return designed_; }
    const core::Yield& yield() const { return yield_; }
    const std::vector<core::Check>& checks() const { return checks_; }

    /// The adjusted mix; nothing where none follows, which `text` then explains.
    const std::optional<core::NextTrial>& next() const { return next_; }

    /// The reports that the program writes, in the units of the mix.
    std::string text(bool explain = false) const;
    std::string json() const; ///< SI, unrounded
    std::string csv() const;
    std::string html() const; ///< one page that needs no network

private:
    core::UnitSystem system() const;
    report::YieldResult result() const;

    input::TrialRecord record_;
    core::Proportions designed_;
    core::Yield yield_;
    std::vector<core::Check> checks_;
    std::optional<core::NextTrial> next_;
    std::optional<core::Unresolved> no_next_;
};

} // namespace boardmark
