#pragma once

#include <boardmark/core/checks/verdict_summary.hpp>
#include <boardmark/core/panels/panel_programme.hpp>
#include <boardmark/core/pour/pour_card.hpp>
#include <boardmark/core/trial/trial_set.hpp>
#include <boardmark/core/wall/wall_plan.hpp>
#include <boardmark/report/study/comparison_report.hpp>
#include <boardmark/report/trial/yield_report.hpp>

namespace boardmark::report {

// The verdict of results that hold several parts.

/// Of the walls and of their mix.
core::VerdictSummary verdicts_of(const core::WallPlan& plan);

/// Of the parts placed, of the day and of their mix.
core::VerdictSummary verdicts_of(const core::PourCard& card);

/// Of the panels, the mock-up and all concretes that panels are cast of.
core::VerdictSummary verdicts_of(const core::PanelProgramme& programme);

/// Of all mixes; of the uses of one mix's reducer, the mix as written.
core::VerdictSummary verdicts_of(const ComparisonResult& result);

core::VerdictSummary verdicts_of(const core::TrialSet& set);

/// Of the trial, and what fails of the one to be batched next.
core::VerdictSummary verdicts_of(const YieldResult& result);

} // namespace boardmark::report
