#pragma once

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/batch/batch.hpp>
#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/mix/complete_mix.hpp>
#include <boardmark/core/mix/proportions.hpp>
#include <boardmark/front/opened.hpp>
#include <boardmark/report/mix/mix_report.hpp>

#include <string>
#include <vector>

namespace boardmark {

/// A mix and what follows from it.
class WorkedMix {
public:
    WorkedMix(core::AnyCompleteMix mix, core::Tables tables, core::Proportions proportions,
              report::InputFiles inputs = {});

    const std::string& title() const;
    const core::Requirements& requirements() const;
    const core::Proportions& proportions() const { return proportions_; }
    const std::vector<core::Check>& checks() const { return checks_; }
    const core::Tables& tables() const { return tables_; }
    core::UnitSystem system() const { return tables_.system; }

    /// Weights of a batch at the moistures of the aggregates. Faults instead of an estimate with
    /// usual aggregate figures, of a submittal that lists no stone or no sand, and where an
    /// aggregate lacks moisture or absorption.
    ///
    /// @param volume_m3 allowance included, from core::least_batch_m3 to core::most_batch_m3
    Opened<core::Batch> batch(double volume_m3) const;

    /// The reports that the program writes, in the units of the mix.
    std::string text(bool explain = false) const; ///< what holds is counted
    std::string json() const;                     ///< SI, unrounded
    std::string csv() const;
    std::string html() const; ///< one page that needs no network

private:
    report::MixResult result() const;

    core::AnyCompleteMix mix_;
    core::Tables tables_;
    core::Proportions proportions_;
    std::vector<core::Check> checks_;
    report::InputFiles inputs_;
};

} // namespace boardmark
