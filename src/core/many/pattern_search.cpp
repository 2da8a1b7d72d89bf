#include "pattern_search.hpp"

#include "../risk/random_normals.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

constexpr double first_step = 0.1;
constexpr double last_step = 1e-5;
constexpr double shrinking = 0.6;
constexpr std::size_t directions_of_one = 4; // for each coordinate: a slanted limit leaves few
constexpr double longest_step = 0.25;
constexpr std::size_t most_polls = 160;

/// Both ways along a direction, inside the cube; the first that is better is gone to.
bool go_along(const std::vector<double>& direction, double step, SearchPlace& best,
              const SearchRating& rate) {
    for (const double way : {1.0, -1.0}) {
        SearchPlace next = best;
        bool moved = false;
        for (std::size_t i = 0; i < next.at.size(); ++i) {
            next.at[i] = std::clamp(best.at[i] + way * step * direction[i], 0.0, 1.0);
            moved = moved || next.at[i] != best.at[i];
        }
        if (!moved) {
            continue;
        }
        rate(next);
        if (next.is_better_than(best)) {
            best = std::move(next);
            return true;
        }
    }
    return false;
}

/// The way that was just gone, once more.
bool go_on(const std::vector<double>& before, SearchPlace& best, const SearchRating& rate) {
    std::vector<double> way(before.size());
    for (std::size_t i = 0; i < way.size(); ++i) {
        way[i] = best.at[i] - before[i];
    }
    return go_along(way, 1, best, rate);
}

void make_unit(std::vector<double>& direction) {
    double sum = 0;
    for (const double part : direction) {
        sum += part * part;
    }
    for (double& part : direction) {
        part /= std::sqrt(sum);
    }
}

} // namespace

std::vector<double> even_place(std::size_t number, std::size_t dimensions) {
    double root = 1.5;
    constexpr int enough = 60;
    for (int i = 0; i < enough; ++i) {
        root = std::pow(1 + root, 1 / static_cast<double>(dimensions + 1));
    }
    std::vector<double> place(dimensions);
    for (std::size_t i = 0; i < dimensions; ++i) {
        const double along =
            0.5 + static_cast<double>(number + 1) / std::pow(root, static_cast<double>(i + 1));
        place[i] = along - std::floor(along);
    }
    return place;
}

SearchPlace pattern_search(SearchPlace from, const SearchRating& rate, std::uint64_t seed) {
    const std::size_t dimensions = from.at.size();
    const RandomNormals normals{seed};
    SearchPlace best = std::move(from);
    std::vector<double> direction(dimensions);
    double step = first_step;
    for (std::size_t poll = 0; poll < most_polls && step > last_step; ++poll) {
        const std::vector<double> before = best.at;
        bool better = false;
        for (std::size_t i = 0; i < dimensions; ++i) {
            std::ranges::fill(direction, 0);
            direction[i] = 1;
            better = go_along(direction, step, best, rate) || better;
        }
        for (std::size_t i = 0; dimensions > 1 && i < directions_of_one * dimensions; ++i) {
            normals.fill(static_cast<std::uint32_t>(i), poll, direction);
            make_unit(direction);
            better = go_along(direction, step, best, rate) || better;
        }
        while (better && go_on(before, best, rate)) {
        }
        step = better ? std::min(2 * step, longest_step) : shrinking * step;
    }
    return best;
}

} // namespace boardmark::core
