#pragma once

#include <boardmark/core/basis/deferred.hpp>
#include <boardmark/core/mix/blended_aggregate.hpp>
#include <boardmark/core/mix/grading.hpp>
#include <boardmark/core/mix/grading_rules.hpp>
#include <boardmark/core/mix/proportions.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// What all aggregates together let pass a sieve and hold back on it, percent of their absolute
/// volume.
struct SieveOfAll {
    RetainedLimits limits; ///< with the name and the opening of the sieve
    double passing_percent;
    double retained_percent; ///< of what passed the next coarser sieve of the list
    /// What may be, where an aggregate is read between two sieves that it states.
    PercentRange may_pass;
    PercentRange may_retain;
};

/// Part of one aggregate in the volume of all.
struct AggregatePart {
    std::string name;
    double volume_percent;
};

/// A place on the chart of coarseness and workability.
struct WorkabilityPoint {
    std::optional<double> coarseness; ///< absent where the coarse sieves hold nothing back
    double workability;
};

/// All aggregates of a mix together, by absolute volume.
struct AggregateTogether {
    std::vector<AggregatePart> parts;
    std::vector<SieveOfAll> sieves;   ///< from the finest that all passes to the finest stated
    std::optional<double> maximum_mm; ///< the smallest sieve that all passes
    double fineness_modulus;
    std::optional<double> coarseness_factor; ///< absent where the coarse sieves hold nothing back
    double workability_factor;
    std::vector<WorkabilityPoint> chart_corners = {}; ///< what the stated sieves leave open
};

/// Nothing unless every aggregate states its sieves and has a volume; rules are not read then.
std::optional<AggregateTogether> aggregate_together(const Proportions& proportions,
                                                    const Deferred<GradingRules>& rules,
                                                    std::span<const double> fineness_sieves_mm);

/// The fields of the chart of coarseness and workability.
enum class WorkabilityField { gap_graded, well_graded, small_stone, sandy, rocky };

/// Nothing where there is no coarseness factor.
std::optional<WorkabilityField> field_of(const AggregateTogether& together,
                                         const WorkabilityRules& rules);

std::optional<WorkabilityField> field_of(const WorkabilityPoint& point,
                                         const WorkabilityRules& rules);

/// The workability factor of the control line at a coarseness.
double control_line(double coarseness, const WorkabilityRules& rules);

/// What is held back on consecutive sieves together, both named by their opening. Nothing where a
/// sieve is finer than what is stated.
std::optional<double> retained_between_percent(const AggregateTogether& together,
                                               double coarsest_mm, double finest_mm);

/// What may be held back on them, where an aggregate is read between two sieves that it states.
std::optional<PercentRange> may_retain_between(const AggregateTogether& together,
                                               double coarsest_mm, double finest_mm);

/// Sieves whose retained part lies outside its limits.
std::vector<const SieveOfAll*> sieves_outside(const AggregateTogether& together);

/// Sieves that an aggregate does not state, where its stated ones leave open whether what stays on
/// them or on the next finer one lies outside its limits.
std::vector<const SieveOfAll*> sieves_in_doubt(const AggregateTogether& together);

} // namespace boardmark::core
