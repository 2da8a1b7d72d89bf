#pragma once

#include <boardmark/core/basis/outcome.hpp>
#include <boardmark/core/mix/method.hpp>
#include <boardmark/core/mix/shared_material.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

struct Mix;
struct Tables;

/// To what aggregates are blended.
enum class BlendTo {
    maximum_density, ///< the line of maximum density up to the largest size
    curve,           ///< percent passing that the user states
    band,            ///< percent passing between two that the user states
};

/// What is to pass a sieve, percent by absolute volume: one value, or between two.
struct SieveBand {
    double opening_mm;
    double low_percent;  ///< 0–100
    double high_percent; ///< ≥ low_percent
};

/// Aggregates that are to be blended. Each states its sieves, its relative density and absorption.
struct BlendWish {
    BlendTo to = BlendTo::maximum_density;
    std::vector<SieveBand> sieves = {}; ///< of a curve or a band, coarsest first; else empty
    std::vector<SharedMaterial> of;     ///< coarse and fine, of different names
};

/// An aggregate's part of a blend.
struct BlendedShare {
    SharedMaterial material;
    double volume_percent; ///< of the absolute volume of all aggregate; 0: not taken
    double mass_percent;   ///< of the SSD mass of all aggregate
};

/// The blend that comes nearest to its target, sieve by sieve, by least squares.
struct AggregateBlend {
    BlendTo to;
    std::vector<SieveBand> target;    ///< the sieves at which it was sought, coarsest first
    std::optional<double> maximum_mm; ///< size up to which the line of maximum density goes
    std::vector<BlendedShare> shares; ///< in the order of the wish
    double mean_off_percent;          ///< points off the target: root of the mean square
    double most_off_percent;          ///< at the sieve that is farthest off; below it negative
    double most_off_mm;               ///< the opening of that sieve

    /// Of the fine aggregates together.
    double fine_volume_percent() const;
    double fine_mass_percent() const;
};

/// The shares, 0 to 100 % of the absolute volume, whose sum is 100 and whose grading is nearest to
/// the target. Where several blends are equally near, the one of most equal shares.
///
/// Unresolved: an aggregate without a sieve that all of it passes; a blend without coarse or
/// without fine aggregate; fewer than two aggregates; no sieve to blend by.
Outcome<AggregateBlend> blend_of(const BlendWish& wish, const Tables& tables);

/// "maximum density up to 19 mm", "the stated curve", "the stated band": in the words of a
/// sentence.
std::string target_words(const AggregateBlend& blend);

/// Gives a mix the aggregates of its blend: shares by mass, and the fine aggregate's share in the
/// form that its method reads.
void take_blend(Mix& mix);

} // namespace boardmark::core
