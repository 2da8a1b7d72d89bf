#include <boardmark/text/closest.hpp>

#include <algorithm>
#include <vector>

namespace boardmark::text {
namespace {

/// Optimal string alignment distance: insertions, deletions, substitutions, neighbouring swaps.
std::size_t distance(std::string_view left, std::string_view right) {
    const std::size_t columns = right.size() + 1;
    std::vector<std::size_t> cost((left.size() + 1) * columns);
    const auto at = [&](std::size_t i, std::size_t j) -> std::size_t& {
        return cost[i * columns + j];
    };
    for (std::size_t i = 0; i <= left.size(); ++i) {
        at(i, 0) = i;
    }
    for (std::size_t j = 0; j <= right.size(); ++j) {
        at(0, j) = j;
    }
    for (std::size_t i = 1; i <= left.size(); ++i) {
        for (std::size_t j = 1; j <= right.size(); ++j) {
            const std::size_t changed = left[i - 1] == right[j - 1] ? 0 : 1;
            at(i, j) = std::min({at(i - 1, j) + 1, at(i, j - 1) + 1, at(i - 1, j - 1) + changed});
            if (i > 1 && j > 1 && left[i - 1] == right[j - 2] && left[i - 2] == right[j - 1]) {
                at(i, j) = std::min(at(i, j), at(i - 2, j - 2) + 1);
            }
        }
    }
    return at(left.size(), right.size());
}

} // namespace

std::optional<std::string_view> closest(std::string_view word,
                                        std::span<const std::string_view> candidates) {
    constexpr std::size_t longest_word = 80;
    if (word.size() > longest_word) {
        return std::nullopt;
    }
    std::optional<std::string_view> best;
    std::size_t best_distance = 3;
    for (const std::string_view candidate : candidates) {
        const std::size_t far = distance(word, candidate);
        if (far < best_distance && 2 * far < std::max(word.size(), candidate.size())) {
            best = candidate;
            best_distance = far;
        }
    }
    return best;
}

} // namespace boardmark::text
