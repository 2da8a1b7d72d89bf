#pragma once

#include <boardmark/core/basis/source.hpp>
#include <boardmark/core/panels/panel_tables.hpp>
#include <boardmark/core/panels/panel_wishes.hpp>

#include <cstddef>
#include <optional>
#include <vector>

namespace boardmark::core {

/// What panels are asked: what each factor changes by itself, and which pairs work together.
struct PanelAsk {
    std::vector<int> levels;           ///< of each factor, at least 2
    std::vector<PanelPair> pairs = {}; ///< asked besides
};

/// The levels of a panel, one of each factor, counted from 0.
using PanelRow = std::vector<int>;

enum class PanelDesignKind {
    one_at_a_time,     ///< every panel differs from the first in one factor, or in one asked pair
    published,         ///< a fraction of a two-level design from a table
    searched,          ///< the smallest variance that was found
    every_combination, ///< of all levels
};

/// One question and how well panels answer it.
struct PanelEffect {
    std::size_t factor;
    std::optional<std::size_t> beside = {}; ///< of a pair the second
    /// Of the difference between two levels, over the variance of one panel; the mean over all
    /// pairs of levels.
    double variance = 0;
    std::vector<PanelPair> mixed_with = {}; ///< pairs that nobody asked for and that shift it
    /// What each panel's score is multiplied by, so that the sum is the effect of a level against
    /// the first one; for a pair, of its first two levels. One list for each level but the first.
    std::vector<std::vector<double>> weights = {};
};

/// Panels that answer questions.
struct PanelDesign {
    PanelDesignKind kind;
    std::vector<PanelRow> rows; ///< the first has the first level of each factor
    int columns;                ///< figures that the questions ask for, the mean included
    int rank;                   ///< of the design matrix; all is answered where it is `columns`
    std::vector<PanelEffect> effects = {}; ///< of factors, then pairs; empty below that rank
    double mean_variance = 0;              ///< of the effects
    std::optional<int> resolution = {};    ///< of a published design
    bool least = false; ///< no design of as many panels has a smaller mean variance
    Source source = {};

    bool answers_all() const { return rank == columns; }
};

/// Fewest panels that can answer: one for the mean and one for each level beyond the first of each
/// factor; for a pair the product of those of its factors.
int least_panels(const PanelAsk& ask);

/// All combinations of the levels.
std::vector<PanelRow> every_combination(const PanelAsk& ask);

/// Rank and effects of rows that somebody chose.
PanelDesign judged(PanelDesignKind kind, std::vector<PanelRow> rows, const PanelAsk& ask);

/// Each factor changed by itself from the first panel, each asked pair together.
PanelDesign one_at_a_time(const PanelAsk& ask);

/// The published design of so many panels for two-level factors whose pairs nobody asks for.
/// Nothing where no table has it, or where the asked effects would not be told apart.
std::optional<PanelDesign> published_design(const PanelAsk& ask, int panels,
                                            const std::vector<PublishedDesign>& designs);

/// The smallest mean variance among so many panels: by every subset where they are few, else by
/// exchange from fixed starts, so that a run gives the same panels each time.
///
/// @param panels at least `least_panels(ask)`
PanelDesign searched_design(const PanelAsk& ask, int panels);

/// The design of so many panels with the smallest mean variance of all kinds; on a tie what is
/// published, then one at a time.
PanelDesign best_design(const PanelAsk& ask, int panels,
                        const std::vector<PublishedDesign>& designs);

/// What else could be cast: one at a time, larger published designs, all combinations; increasing
/// panels, without the chosen one.
std::vector<PanelDesign> other_designs(const PanelAsk& ask, const PanelDesign& chosen,
                                       const std::vector<PublishedDesign>& designs);

} // namespace boardmark::core
