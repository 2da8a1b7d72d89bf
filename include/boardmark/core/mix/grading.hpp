#pragma once

#include <boardmark/core/mix/grading_rules.hpp>
#include <boardmark/core/mix/material.hpp>
#include <boardmark/core/mix/proportions.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// Percent passing by sieve, coarsest first.
using Grading = std::vector<SievePassing>;

/// What passes any opening: everything above the coarsest stated sieve; linear in the logarithm of
/// the opening between sieves; from the finest one down in proportion to the opening.
///
/// @param grading in any order, not empty
double passing_anywhere_percent(const Grading& grading, double opening_mm);

/// Whether two openings are of one sieve: its inch and its metric name differ by less.
bool is_sieve(double opening_mm, double other_mm);

/// What passes a sieve: as stated for it by either name, else by `passing_anywhere_percent`.
double passing_sieve_percent(const Grading& grading, double opening_mm);

/// What a reading between stated sieves leaves open.
struct PercentRange {
    double least;
    double most;
};

/// What may pass a sieve by what is stated: no more than the next coarser stated sieve lets pass
/// and no less than the next finer one. One that is stated, or whose metric or inch neighbour is
/// (20 mm for 3/4 in), leaves nothing open. Everything passes above the coarsest.
PercentRange may_pass_percent(const Grading& grading, double opening_mm);

/// A fine aggregate whose sieves are stated.
struct FineGrading {
    std::string name;
    Grading grading;
};

std::vector<FineGrading> fine_gradings(const Proportions& proportions);

/// All aggregates together, by absolute volume. Empty unless all state their sieves.
Grading combined_grading(const Proportions& proportions);

/// The smallest sieve that all passes, mm. Nothing where none does.
std::optional<double> maximum_size_mm(const Grading& grading);

/// The maximum density line: percent that passes an opening where the aggregate up to a maximum
/// size packs densest, by the usual rule.
///
/// @param opening_mm 0 to the maximum size
double density_line_percent(double opening_mm, double maximum_mm, const GradingRules& rules);

} // namespace boardmark::core
