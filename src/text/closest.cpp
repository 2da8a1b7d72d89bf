#include <boardmark/text/closest.hpp>

#include <algorithm>
#include <vector>

namespace boardmark::text {
namespace {

using Letters = std::vector<std::string_view>;

/// The letters of a text, however many bytes each takes.
Letters letters_of(std::string_view text) {
    Letters letters;
    for (std::size_t at = 0; at < text.size();) {
        std::size_t end = at + 1;
        while (end < text.size() && (static_cast<unsigned char>(text[end]) & 0xC0) == 0x80) {
            ++end;
        }
        letters.push_back(text.substr(at, end - at));
        at = end;
    }
    return letters;
}

/// Optimal string alignment distance: insertions, deletions, substitutions, neighbouring swaps.
std::size_t distance(const Letters& left, const Letters& right) {
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
    if (candidates.empty()) {
        return std::nullopt;
    }
    const Letters written = letters_of(word);
    if (written.size() > longest_word) {
        return std::nullopt;
    }
    std::optional<std::string_view> best;
    std::size_t best_distance = 3;
    for (const std::string_view candidate : candidates) {
        const Letters known = letters_of(candidate);
        const auto [shorter, longer] = std::minmax({written.size(), known.size()}); // by value
        if (longer - shorter >= best_distance) {
            continue; // as many insertions at least
        }
        const std::size_t far = distance(written, known);
        if (far < best_distance && 2 * far < std::max(written.size(), known.size())) {
            best = candidate;
            best_distance = far;
        }
    }
    return best;
}

} // namespace boardmark::text
