#pragma once

#include <boardmark/core/paper/testing_plan.hpp>

namespace boardmark::core {

/// What the rates of sampling count from.
struct SampledWork {
    double volume_m3;
    double area_m2; ///< one side
    int pour_days;
    std::optional<int> batches = {};
};

/// Tests by the code's rates, the largest number first of all.
SamplingPlan sampled(const SampledWork& work, const PaperRules& rules);

/// Tests of a certified producer in initial production, where identity is judged.
SamplingPlan sampled_by_producer(const SampledWork& work, const PaperRules& rules);

/// The plan of a job; of a mix alone the rates only.
SamplingPlan sampling_plan_of(const PaperCase& papers);

} // namespace boardmark::core
