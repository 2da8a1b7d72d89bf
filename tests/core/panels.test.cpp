// Designs of sample panels against brute force written here anew: dummy coding and elimination in
// long double, another way than the program's.

#include <boardmark/core/panels/panel_design.hpp>
#include <boardmark/reference/tables.hpp>

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <limits>
#include <set>

using namespace boardmark::core;
using Catch::Matchers::WithinAbs;

namespace {

constexpr double rounding = 1e-9;
using Line = std::vector<long double>;

const std::vector<PublishedDesign>& published() {
    static const auto designs = boardmark::reference::tables(UnitSystem::us).panels->designs;
    return designs;
}

PanelAsk two_levels(int factors) {
    return {std::vector<int>(static_cast<std::size_t>(factors), 2)};
}

/// Mean, then one column for each level beyond the first.
Line dummies(const PanelRow& row, const PanelAsk& ask) {
    Line line{1};
    for (std::size_t factor = 0; factor < row.size(); ++factor) {
        for (int level = 1; level < ask.levels[factor]; ++level) {
            line.push_back(row[factor] == level ? 1 : 0);
        }
    }
    return line;
}

/// Covariance of the dummies' figures over the variance of a panel; empty where it is singular.
std::vector<Line> covariance(const std::vector<PanelRow>& rows, const PanelAsk& ask) {
    const std::size_t size = dummies(rows.front(), ask).size();
    std::vector<Line> both(size, Line(2 * size, 0));
    for (const PanelRow& row : rows) {
        const Line line = dummies(row, ask);
        for (std::size_t i = 0; i < size; ++i) {
            for (std::size_t j = 0; j < size; ++j) {
                both[i][j] += line[i] * line[j];
            }
        }
    }
    for (std::size_t i = 0; i < size; ++i) {
        both[i][size + i] = 1;
    }
    for (std::size_t column = 0; column < size; ++column) {
        std::size_t pivot = column;
        while (pivot < size && std::abs(both[pivot][column]) < 1e-9L) {
            ++pivot;
        }
        if (pivot == size) {
            return {};
        }
        std::swap(both[column], both[pivot]);
        const long double value = both[column][column];
        for (long double& entry : both[column]) {
            entry /= value;
        }
        for (std::size_t row = 0; row < size; ++row) {
            const long double factor = both[row][column];
            for (std::size_t i = 0; row != column && i < 2 * size; ++i) {
                both[row][i] -= factor * both[column][i];
            }
        }
    }
    for (Line& line : both) {
        line.erase(line.begin(), line.begin() + static_cast<std::ptrdiff_t>(size));
    }
    return both;
}

/// Mean over factors of the mean variance of the difference between two levels.
double variance_by_hand(const std::vector<PanelRow>& rows, const PanelAsk& ask) {
    const auto c = covariance(rows, ask);
    if (c.empty()) {
        return std::numeric_limits<double>::infinity();
    }
    long double sum = 0;
    std::size_t begin = 1;
    for (const int levels : ask.levels) {
        long double of_factor = 0;
        int pairs = 0;
        for (int one = 1; one < levels; ++one) {
            const std::size_t i = begin + static_cast<std::size_t>(one - 1);
            of_factor += c[i][i]; // against the first level, which has no column
            ++pairs;
            for (int other = 1; other < one; ++other) {
                const std::size_t j = begin + static_cast<std::size_t>(other - 1);
                of_factor += c[i][i] + c[j][j] - 2 * c[i][j];
                ++pairs;
            }
        }
        sum += of_factor / pairs;
        begin += static_cast<std::size_t>(levels - 1);
    }
    return static_cast<double>(sum / static_cast<long double>(ask.levels.size()));
}

/// The smallest variance of so many different panels, over every choice.
double least_variance(const PanelAsk& ask, std::size_t panels) {
    const auto all = every_combination(ask);
    std::vector<bool> chosen(all.size(), false);
    std::fill(chosen.begin(), chosen.begin() + static_cast<std::ptrdiff_t>(panels), true);
    double least = std::numeric_limits<double>::infinity();
    do {
        std::vector<PanelRow> rows;
        for (std::size_t i = 0; i < all.size(); ++i) {
            if (chosen[i]) {
                rows.push_back(all[i]);
            }
        }
        least = std::min(least, variance_by_hand(rows, ask));
    } while (std::prev_permutation(chosen.begin(), chosen.end()));
    return least;
}

/// Length of the shortest product of generators' words: the resolution by its definition.
std::size_t shortest_word(const PublishedDesign& design) {
    std::size_t shortest = std::numeric_limits<std::size_t>::max();
    const std::size_t words = design.generators.size();
    for (std::size_t subset = 1; subset < (std::size_t{1} << words); ++subset) {
        std::set<char> letters;
        for (std::size_t word = 0; word < words; ++word) {
            if ((subset >> word & 1U) == 0) {
                continue;
            }
            for (const char letter : design.generators[word]) {
                if (letter != '=' && !letters.insert(letter).second) {
                    letters.erase(letter);
                }
            }
        }
        shortest = std::min(shortest, letters.size());
    }
    return shortest;
}

} // namespace

TEST_CASE("each published fraction has the resolution that its print states", "[panels]") {
    REQUIRE(published().size() == 8);
    for (const PublishedDesign& design : published()) {
        INFO(design.factors << " factors in " << design.runs << " runs");
        CHECK(shortest_word(design) == static_cast<std::size_t>(design.resolution));
        CHECK(std::size_t(1) << (std::size_t(design.factors) - design.generators.size()) ==
              static_cast<std::size_t>(design.runs));
        const auto found = published_design(two_levels(design.factors), design.runs, published());
        REQUIRE(found);
        CHECK(found->rank == design.factors + 1);
        CHECK_THAT(found->mean_variance, WithinAbs(4.0 / design.runs, rounding)); // NIST 5.3.3
        CHECK(found->least);
        CHECK(std::ranges::all_of(found->effects, [&](const PanelEffect& effect) {
            return effect.mixed_with.empty() == (design.resolution > 3);
        }));
    }
}

TEST_CASE("seven factors in eight runs: each main effect is three pairs too", "[panels]") {
    // NIST/SEMATECH e-Handbook 5.3.3.4: A = BD = CE = FG
    const auto design = published_design(two_levels(7), 8, published());
    REQUIRE(design);
    const auto& mixed = design->effects.front().mixed_with;
    REQUIRE(mixed.size() == 3);
    CHECK((mixed[0].first == 1 && mixed[0].second == 3));
    CHECK((mixed[1].first == 2 && mixed[1].second == 4));
    CHECK((mixed[2].first == 5 && mixed[2].second == 6));
}

TEST_CASE("variance of an effect one at a time and by fractions", "[panels]") {
    // Each effect of k factors in k + 1 panels is a difference of two panels: 2. In a fraction of
    // N panels it is a difference of two means of N / 2: 4 / N. Six panels for five factors: 0.8,
    // by a search outside this project.
    CHECK_THAT(one_at_a_time(two_levels(3)).mean_variance, WithinAbs(2, rounding));
    CHECK_THAT(one_at_a_time(two_levels(5)).mean_variance, WithinAbs(2, rounding));
    CHECK_THAT(best_design(two_levels(3), 4, published()).mean_variance, WithinAbs(1, rounding));
    CHECK_THAT(best_design(two_levels(5), 6, published()).mean_variance, WithinAbs(0.8, rounding));
    CHECK_THAT(best_design(two_levels(5), 8, published()).mean_variance, WithinAbs(0.5, rounding));
    CHECK(best_design(two_levels(3), 4, published()).kind == PanelDesignKind::published);
    CHECK(best_design(two_levels(5), 6, published()).kind == PanelDesignKind::searched);
}

TEST_CASE("the fewest panels and their least variance, against every choice", "[panels]") {
    const std::vector<int> levels =
        GENERATE(as<std::vector<int>>{}, std::vector{2, 2}, std::vector{2, 2, 2}, std::vector{2, 3},
                 std::vector{3, 3}, std::vector{2, 2, 3}, std::vector{2, 2, 2, 2},
                 std::vector{4, 2}, std::vector{2});
    const PanelAsk ask{levels};
    const int least = least_panels(ask);
    INFO("least " << least << " of " << every_combination(ask).size());
    if (least > 2) {
        CHECK(std::isinf(least_variance(ask, static_cast<std::size_t>(least - 1))));
    }
    const PanelDesign design = best_design(ask, least, published());
    CHECK(design.answers_all());
    CHECK(design.least);
    CHECK(design.rows.front() == PanelRow(levels.size(), 0));
    const double by_hand = least_variance(ask, static_cast<std::size_t>(least));
    CHECK_THAT(design.mean_variance, WithinAbs(by_hand, rounding));
    CHECK_THAT(variance_by_hand(design.rows, ask), WithinAbs(by_hand, rounding));
}

TEST_CASE("exchange finds what every choice finds with a panel more than the fewest", "[panels]") {
    const std::vector<int> levels =
        GENERATE(as<std::vector<int>>{}, std::vector{2, 2, 2}, std::vector{2, 3},
                 std::vector{2, 2, 3}, std::vector{2, 2, 2, 2});
    const PanelAsk ask{levels};
    const int panels = least_panels(ask) + 1;
    const PanelDesign design = searched_design(ask, panels);
    // A panel may stand twice in a search, so it may even be better than different panels alone.
    CHECK(design.mean_variance <= least_variance(ask, static_cast<std::size_t>(panels)) + rounding);
    CHECK_THAT(variance_by_hand(design.rows, ask), WithinAbs(design.mean_variance, rounding));
}

TEST_CASE("panels that do not tell effects apart have a lower rank and no effects", "[panels]") {
    const PanelAsk ask = two_levels(2);
    const PanelDesign tied = judged(PanelDesignKind::searched, {{0, 0}, {1, 1}, {0, 0}}, ask);
    CHECK(tied.columns == 3);
    CHECK(tied.rank == 2);
    CHECK_FALSE(tied.answers_all());
    CHECK(tied.effects.empty());
    CHECK(std::isinf(tied.mean_variance));
}

TEST_CASE("weights give back the effects that made the scores", "[panels]") {
    const PanelAsk ask{{2, 3, 2}, {{0, 2}}};
    const std::vector<std::vector<double>> of_level{{0, 1.5}, {0, -2, 0.25}, {0, 4}};
    constexpr double together = 0.75; // of both second levels, beyond what each does alone
    const PanelDesign design = best_design(ask, least_panels(ask), published());
    REQUIRE(design.answers_all());
    std::vector<double> scores;
    for (const PanelRow& row : design.rows) {
        double score = 3;
        for (std::size_t factor = 0; factor < row.size(); ++factor) {
            score += of_level[factor][static_cast<std::size_t>(row[factor])];
        }
        scores.push_back(score + (row[0] == 1 && row[2] == 1 ? together : 0));
    }
    const auto sum = [&](const std::vector<double>& weights) {
        double total = 0;
        for (std::size_t i = 0; i < weights.size(); ++i) {
            total += weights[i] * scores[i];
        }
        return total;
    };
    // Over both levels of the other, what the pair does counts half in each factor's effect.
    CHECK_THAT(sum(design.effects[0].weights[0]), WithinAbs(1.5 + together / 2, rounding));
    CHECK_THAT(sum(design.effects[1].weights[0]), WithinAbs(-2, rounding));
    CHECK_THAT(sum(design.effects[1].weights[1]), WithinAbs(0.25, rounding));
    CHECK_THAT(sum(design.effects[2].weights[0]), WithinAbs(4 + together / 2, rounding));
    CHECK_THAT(sum(design.effects[3].weights[0]), WithinAbs(together / 2, rounding));
}

TEST_CASE("an asked pair is shifted by none, and costs its panels", "[panels]") {
    PanelAsk ask = two_levels(4);
    CHECK(least_panels(ask) == 5);
    ask.pairs = {{0, 1}};
    CHECK(least_panels(ask) == 6);
    const PanelDesign design = best_design(ask, 8, published());
    REQUIRE(design.effects.size() == 5);
    CHECK(design.effects.back().beside == std::size_t{1});
    CHECK_THAT(design.mean_variance, WithinAbs(0.5, rounding)); // orthogonal: 4 / 8
}

TEST_CASE("a run gives the panels of the run before", "[panels]") {
    const PanelAsk ask{{2, 2, 3, 2, 2}};
    CHECK(searched_design(ask, 8).rows == searched_design(ask, 8).rows);
}
