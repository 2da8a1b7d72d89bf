#include <boardmark/core/panels/panel_design.hpp>

#include "../basis/tolerance.hpp"
#include "design_matrix.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace boardmark::core {
namespace {

constexpr double no_share = 1e-9; // of an effect of a pair that shifts another

/// What each panel's score counts in a contrast.
std::vector<double> panel_weights(const EffectContrast& contrast, const PanelMatrix& matrix,
                                  const PanelMatrix& inverse) {
    std::vector<double> weights;
    for (const std::vector<double>& row : matrix) {
        double weight = 0;
        for (std::size_t i = 0; i < contrast.columns.size(); ++i) {
            for (std::size_t j = 0; j < row.size(); ++j) {
                weight += contrast.columns[i] * inverse[contrast.begin + i][j] * row[j];
            }
        }
        weights.push_back(std::abs(weight) < no_share ? 0.0 : weight);
    }
    return weights;
}

bool is_asked(const PanelPair& pair, const PanelAsk& ask) {
    return std::ranges::any_of(ask.pairs, [&](const PanelPair& asked) {
        return asked.first == pair.first && asked.second == pair.second;
    });
}

/// Whether what a pair does besides its two factors shifts a sum of scores.
bool shifts(const PanelPair& pair, const std::vector<double>& weights,
            const std::vector<PanelRow>& rows, const PanelAsk& ask) {
    std::vector<double> sums;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        std::vector<double> columns;
        append_pair(rows[i], pair, ask, columns);
        sums.resize(columns.size());
        for (std::size_t column = 0; column < columns.size(); ++column) {
            sums[column] += weights[i] * columns[column];
        }
    }
    return std::ranges::any_of(sums, [](double sum) { return std::abs(sum) > no_share; });
}

std::vector<PanelPair> pairs_not_asked(const PanelAsk& ask) {
    std::vector<PanelPair> pairs;
    for (std::size_t first = 0; first < ask.levels.size(); ++first) {
        for (std::size_t second = first + 1; second < ask.levels.size(); ++second) {
            if (!is_asked({first, second}, ask)) {
                pairs.push_back({first, second});
            }
        }
    }
    return pairs;
}

double mean_variance(const std::vector<EffectContrast>& contrasts, const PanelMatrix& inverse) {
    double sum = 0;
    for (const EffectContrast& contrast : contrasts) {
        sum += variance_of(contrast, inverse);
    }
    return sum / static_cast<double>(contrasts.size());
}

/// Tells of an effect what its contrasts say; the first `told` of them are those against the first
/// level.
void tell_effect(const std::vector<EffectContrast>& contrasts, std::size_t told,
                 const PanelMatrix& matrix, const PanelMatrix& inverse, PanelEffect& effect) {
    effect.variance = mean_variance(contrasts, inverse);
    for (std::size_t i = 0; i < told; ++i) {
        effect.weights.push_back(panel_weights(contrasts[i], matrix, inverse));
    }
}

void tell_effects(const PanelMatrix& matrix, const PanelMatrix& inverse, const PanelAsk& ask,
                  PanelDesign& design) {
    for (std::size_t factor = 0; factor < ask.levels.size(); ++factor) {
        PanelEffect effect{.factor = factor};
        const auto told = static_cast<std::size_t>(ask.levels[factor] - 1);
        tell_effect(contrasts_of(factor, ask), told, matrix, inverse, effect);
        for (const PanelPair& pair : pairs_not_asked(ask)) {
            if (std::ranges::any_of(effect.weights, [&](const std::vector<double>& weights) {
                    return shifts(pair, weights, design.rows, ask);
                })) {
                effect.mixed_with.push_back(pair);
            }
        }
        design.effects.push_back(std::move(effect));
    }
    for (std::size_t place = 0; place < ask.pairs.size(); ++place) {
        PanelEffect effect{.factor = ask.pairs[place].first, .beside = ask.pairs[place].second};
        tell_effect(contrasts_of_pair(place, ask), 1, matrix, inverse, effect);
        for (const PanelPair& pair : pairs_not_asked(ask)) {
            if (shifts(pair, effect.weights.front(), design.rows, ask)) {
                effect.mixed_with.push_back(pair);
            }
        }
        design.effects.push_back(std::move(effect));
    }
}

bool two_levels_each(const PanelAsk& ask) {
    return std::ranges::all_of(ask.levels, [](int levels) { return levels == 2; });
}

} // namespace

int least_panels(const PanelAsk& ask) {
    int panels = 1;
    for (const int levels : ask.levels) {
        panels += levels - 1;
    }
    for (const PanelPair& pair : ask.pairs) {
        panels += (ask.levels[pair.first] - 1) * (ask.levels[pair.second] - 1);
    }
    return panels;
}

std::vector<PanelRow> every_combination(const PanelAsk& ask) {
    std::vector<PanelRow> rows{PanelRow{}};
    for (const int levels : ask.levels) {
        std::vector<PanelRow> longer;
        for (const PanelRow& row : rows) {
            for (int level = 0; level < levels; ++level) {
                longer.push_back(row);
                longer.back().push_back(level);
            }
        }
        rows = std::move(longer);
    }
    return rows;
}

PanelDesign judged(PanelDesignKind kind, std::vector<PanelRow> rows, const PanelAsk& ask) {
    PanelDesign design{
        .kind = kind, .rows = std::move(rows), .columns = least_panels(ask), .rank = 0};
    const PanelMatrix matrix = design_matrix(design.rows, ask);
    design.rank = rank_of(matrix);
    design.mean_variance = std::numeric_limits<double>::infinity();
    PanelMatrix inverse;
    if (!design.answers_all() || !inverse_of_products(matrix, inverse)) {
        return design;
    }
    tell_effects(matrix, inverse, ask, design);
    double sum = 0;
    for (const PanelEffect& effect : design.effects) {
        sum += effect.variance;
    }
    design.mean_variance = sum / static_cast<double>(design.effects.size());
    // Of two levels, no design tells an effect closer than with each level on half the panels.
    const double bound = 4.0 / static_cast<double>(design.rows.size());
    design.least = two_levels_each(ask) && same(design.mean_variance, bound);
    return design;
}

PanelDesign one_at_a_time(const PanelAsk& ask) {
    const PanelRow first(ask.levels.size(), 0);
    std::vector<PanelRow> rows{first};
    for (std::size_t factor = 0; factor < ask.levels.size(); ++factor) {
        for (int level = 1; level < ask.levels[factor]; ++level) {
            rows.push_back(first);
            rows.back()[factor] = level;
        }
    }
    for (const PanelPair& pair : ask.pairs) {
        for (int one = 1; one < ask.levels[pair.first]; ++one) {
            for (int other = 1; other < ask.levels[pair.second]; ++other) {
                rows.push_back(first);
                rows.back()[pair.first] = one;
                rows.back()[pair.second] = other;
            }
        }
    }
    return judged(PanelDesignKind::one_at_a_time, std::move(rows), ask);
}

PanelDesign best_design(const PanelAsk& ask, int panels,
                        const std::vector<PublishedDesign>& designs) {
    std::vector<PanelDesign> candidates;
    if (auto published = published_design(ask, panels, designs)) {
        candidates.push_back(std::move(*published));
    }
    if (panels == least_panels(ask)) {
        candidates.push_back(one_at_a_time(ask));
    }
    const auto all = every_combination(ask);
    if (panels == static_cast<int>(all.size())) {
        candidates.push_back(judged(PanelDesignKind::every_combination, all, ask));
    }
    const bool settled = std::ranges::any_of(candidates, &PanelDesign::least);
    if (!settled) {
        candidates.push_back(searched_design(ask, panels));
    }
    PanelDesign* best = &candidates.front();
    for (PanelDesign& candidate : candidates) {
        if (clearly_smaller(candidate.mean_variance, best->mean_variance)) {
            best = &candidate;
        }
    }
    best->least = best->least || (candidates.back().least &&
                                  same(best->mean_variance, candidates.back().mean_variance));
    return *best;
}

std::vector<PanelDesign> other_designs(const PanelAsk& ask, const PanelDesign& chosen,
                                       const std::vector<PublishedDesign>& designs) {
    constexpr std::size_t most_combinations = 64; // nobody casts more panels
    std::vector<PanelDesign> others;
    if (chosen.kind != PanelDesignKind::one_at_a_time) {
        others.push_back(one_at_a_time(ask));
    }
    for (const PublishedDesign& published : designs) {
        const bool is_chosen = published.runs == static_cast<int>(chosen.rows.size());
        if (published.factors == static_cast<int>(ask.levels.size()) && !is_chosen) {
            if (auto design = published_design(ask, published.runs, designs)) {
                others.push_back(std::move(*design));
            }
        }
    }
    const auto all = every_combination(ask);
    if (all.size() <= most_combinations && all.size() != chosen.rows.size()) {
        others.push_back(judged(PanelDesignKind::every_combination, all, ask));
    }
    std::ranges::stable_sort(others, {},
                             [](const PanelDesign& design) { return design.rows.size(); });
    return others;
}

} // namespace boardmark::core
