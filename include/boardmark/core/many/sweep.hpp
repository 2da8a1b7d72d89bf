#pragma once

#include <boardmark/core/basis/unresolved.hpp>
#include <boardmark/core/checks/verdict_summary.hpp>
#include <boardmark/core/many/variable.hpp>
#include <boardmark/core/mix/footprint.hpp>
#include <boardmark/core/mix/proportions.hpp>

#include <cstddef>
#include <functional>
#include <optional>
#include <vector>

namespace boardmark::core {

struct Tables;
struct Vocabulary;

/// The most points of a sweep, over all of its variables.
constexpr std::size_t most_sweep_points = 10000;

/// A variable and the values that it takes, both ends among them.
struct SweepAxis {
    Variable variable;
    double from;
    double to;
    std::size_t points; ///< at least 2

    double value(std::size_t point) const;
};

/// What follows from a mix at one point.
struct SweptMix {
    Selection selection;
    Totals totals;
    VerdictSummary verdict;
    std::optional<Cost> cost;
    std::optional<PartialSum> carbon;
};

/// One mix of a sweep, or why there is none.
struct SweepPoint {
    std::vector<double> at; ///< a value for each axis
    std::optional<SweptMix> mix;
    std::optional<Unresolved> unresolved;
    // What holds by own strengths is a watch where they are
    bool leaves_own_shares = false; ///< of other shares
    bool leaves_own_air = false;    ///< of less air

    /// Whether the mix is there and fails no check.
    bool is_sound() const { return mix && mix->verdict.failed.empty(); }
};

/// A mix at other values of one or two of its figures.
struct Sweep {
    std::vector<SweepAxis> axes;
    std::vector<SweepPoint> points; ///< the last axis changes first; fewer where it was stopped
    std::vector<Phrase> cautions;   ///< of the points, beside those of the mix as written
};

/// Works every point out and holds it against every requirement of the mix as written.
///
/// @param axes  one or two that the mix holds, whose points are at most `most_sweep_points`
/// @param goes_on  asked with the share that is done; may be empty
Sweep sweep(const CompleteMix& mix, std::vector<SweepAxis> axes, const Tables& tables,
            const Vocabulary& words, const std::function<bool(double)>& goes_on = {});

} // namespace boardmark::core
