#pragma once

#include <boardmark/core/checks/check.hpp>

#include "limit_counts.hpp"
#include "random_normals.hpp"
#include "scattered_batch.hpp"

#include <array>
#include <vector>

namespace boardmark::core {

/// Values of each quantity, a place for each sample.
using RiskValues = std::array<std::vector<double>, risk_quantities.size()>;

/// What all batches of a run have in common.
struct RiskSubject {
    CompleteRequirements requirements;
    const Proportions& designed;
    const Batch& batch; ///< of 1 m3
    const ScatterPlan& plan;
    const Tables& tables;
    RandomNormals random;

    ScatteredBatch scattered() const { return {requirements, designed, batch, plan, tables}; }
};

/// The verdicts where nothing is off.
std::vector<Finding> exact_findings(const RiskSubject& subject);

/// The batches of a run as they were made and judged.
struct BatchesMade {
    std::size_t samples; ///< fewer than asked where the run was stopped
    RiskValues values;
    LimitCounts counts;
};

BatchesMade make_batches(const RiskSubject& subject, const std::vector<Finding>& exact,
                         const RiskOrder& order);

/// What the inputs are the reason for.
struct DriversFound {
    std::size_t samples; ///< pairs of them; 0 where the run was stopped
    std::vector<Driver> drivers;
};

/// From the first of the same samples and as many others.
DriversFound find_drivers(const RiskSubject& subject, const RiskOrder& order);

} // namespace boardmark::core
