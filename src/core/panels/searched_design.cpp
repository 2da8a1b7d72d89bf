#include <boardmark/core/panels/panel_design.hpp>

#include "design_matrix.hpp"
#include "relabelled.hpp"
#include "steady_numbers.hpp"

#include <algorithm>
#include <limits>

namespace boardmark::core {
namespace {

/// Subsets that are tried one by one; beyond it exchange takes over.
constexpr double most_subsets = 20000;

/// How well rows answer, found again for each change of one level.
class DesignSearch {
public:
    DesignSearch(const PanelAsk& ask, int panels)
        : ask_{ask}
        , panels_{static_cast<std::size_t>(panels)} {
        for (std::size_t factor = 0; factor < ask.levels.size(); ++factor) {
            contrasts_.push_back(contrasts_of(factor, ask));
        }
        for (std::size_t place = 0; place < ask.pairs.size(); ++place) {
            contrasts_.push_back(contrasts_of_pair(place, ask));
        }
    }

    /// Mean variance of the effects, infinite where they are not told apart.
    double variance_of_effects(const std::vector<PanelRow>& rows) {
        if (!inverse_of_products(design_matrix(rows, ask_), inverse_)) {
            return std::numeric_limits<double>::infinity();
        }
        double sum = 0;
        for (const auto& effect : contrasts_) {
            double of_effect = 0;
            for (const EffectContrast& contrast : effect) {
                of_effect += variance_of(contrast, inverse_);
            }
            sum += of_effect / static_cast<double>(effect.size());
        }
        return sum / static_cast<double>(contrasts_.size());
    }

    /// Takes rows as the best so far where they are better.
    void offer(const std::vector<PanelRow>& rows, double variance) {
        if (best_.empty() || clearly_smaller(variance, best_variance_)) {
            best_ = rows;
            best_variance_ = variance;
        }
    }

    /// Changes one level at a time as long as that helps.
    void exchange(std::vector<PanelRow> rows) {
        double variance = variance_of_effects(rows);
        bool improved = true;
        while (improved) {
            improved = false;
            for (PanelRow& row : rows) {
                for (std::size_t factor = 0; factor < row.size(); ++factor) {
                    improved = try_levels(rows, row, factor, variance) || improved;
                }
            }
        }
        offer(rows, variance);
    }

    /// Every choice of panels that holds the first combination: any other is one of them renamed.
    void try_every_subset(const std::vector<PanelRow>& combinations) {
        std::vector<PanelRow> chosen{combinations.front()};
        choose(combinations, 1, chosen);
    }

    std::vector<PanelRow> best() const { return best_; }

private:
    bool try_levels(std::vector<PanelRow>& rows, PanelRow& row, std::size_t factor,
                    double& variance) {
        bool improved = false;
        int kept = row[factor];
        for (int level = 0; level < ask_.levels[factor]; ++level) {
            row[factor] = level;
            const double tried = level == kept ? variance : variance_of_effects(rows);
            if (clearly_smaller(tried, variance)) {
                variance = tried;
                kept = level;
                improved = true;
            }
        }
        row[factor] = kept;
        return improved;
    }

    void choose(const std::vector<PanelRow>& combinations, std::size_t from,
                std::vector<PanelRow>& chosen) {
        if (chosen.size() == panels_) {
            offer(chosen, variance_of_effects(chosen));
            return;
        }
        const std::size_t missing = panels_ - chosen.size();
        for (std::size_t next = from; next + missing <= combinations.size(); ++next) {
            chosen.push_back(combinations[next]);
            choose(combinations, next + 1, chosen);
            chosen.pop_back();
        }
    }

    const PanelAsk& ask_;
    std::size_t panels_;
    std::vector<std::vector<EffectContrast>> contrasts_;
    PanelMatrix inverse_;
    std::vector<PanelRow> best_;
    double best_variance_ = std::numeric_limits<double>::infinity();
};

/// Ways to choose some of several; a figure that only has to tell few from many.
double subsets(std::size_t several, std::size_t some) {
    double ways = 1;
    for (std::size_t i = 0; i < some; ++i) {
        ways *= static_cast<double>(several - i) / static_cast<double>(i + 1);
    }
    return ways;
}

/// One at a time, and rows drawn at random for the panels beyond the fewest.
std::vector<PanelRow> start_rows(const PanelAsk& ask, std::size_t panels, SteadyNumbers& numbers) {
    std::vector<PanelRow> rows = one_at_a_time(ask).rows;
    while (rows.size() < panels) {
        PanelRow& row = rows.emplace_back();
        for (const int levels : ask.levels) {
            row.push_back(static_cast<int>(numbers.below(static_cast<std::size_t>(levels))));
        }
    }
    return rows;
}

/// Levels drawn at random in the rows that a start has.
std::vector<PanelRow> shaken(std::vector<PanelRow> rows, const PanelAsk& ask,
                             SteadyNumbers& numbers) {
    for (PanelRow& row : rows) {
        for (std::size_t factor = 0; factor < row.size(); ++factor) {
            if (numbers.below(3) == 0) {
                const auto levels = static_cast<std::size_t>(ask.levels[factor]);
                row[factor] = static_cast<int>(numbers.below(levels));
            }
        }
    }
    return rows;
}

/// So many starts that a search takes a moment and no more.
int starts_for(const PanelAsk& ask, int panels) {
    constexpr double moment = 4e7; // multiplications
    const double columns = least_panels(ask);
    double levels = 0;
    for (const int of_factor : ask.levels) {
        levels += of_factor;
    }
    constexpr double rounds = 4;
    const double start = rounds * panels * levels * columns * columns * (2 * columns + panels);
    return static_cast<int>(std::clamp(moment / start, 4.0, 60.0));
}

} // namespace

PanelDesign searched_design(const PanelAsk& ask, int panels) {
    const auto count = static_cast<std::size_t>(panels);
    const std::vector<PanelRow> combinations = every_combination(ask);
    const bool few = panels == least_panels(ask) && count <= combinations.size() &&
                     subsets(combinations.size() - 1, count - 1) <= most_subsets;
    DesignSearch search{ask, panels};
    if (few) {
        search.try_every_subset(combinations);
    } else {
        SteadyNumbers numbers;
        const std::vector<PanelRow> start = start_rows(ask, count, numbers);
        search.exchange(start);
        for (int i = 1; i < starts_for(ask, panels); ++i) {
            search.exchange(shaken(start, ask, numbers));
        }
    }
    PanelDesign design = judged(PanelDesignKind::searched, relabelled(search.best(), ask), ask);
    design.least = design.least || few;
    return design;
}

} // namespace boardmark::core
