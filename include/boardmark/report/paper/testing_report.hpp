#pragma once

#include <boardmark/core/paper/testing_plan.hpp>
#include <boardmark/report/paper/specification_report.hpp>

namespace boardmark::report {

/// What is sampled and tested, ready to be written.
struct TestingPlanResult {
    PaperHeading heading;
    const core::TestingPlan& plan;
};

/// The plan; at most 100 columns wide.
std::string text(const TestingPlanResult& result, const TextStyle& style);
std::string html(const TestingPlanResult& result, const TextStyle& style);
std::string json(const TestingPlanResult& result);

/// Figures as rows (RFC 4180).
std::string csv(const TestingPlanResult& result, core::UnitSystem system);

} // namespace boardmark::report
