// The pairs of boxes at one station, against every two of them held beside each other.

#include "core/wall/placed_box.hpp"

#include <catch2/catch.hpp>

#include <random>
#include <set>

using namespace boardmark;

TEST_CASE("pairs at one station are those of all pairs that overlap, each once") {
    std::mt19937 random{Catch::rngSeed()};
    std::uniform_int_distribution<int> station{0, 40};
    std::uniform_int_distribution<int> width{1, 9};
    for (int round = 0; round < 200; ++round) {
        CAPTURE(round, Catch::rngSeed());
        const std::vector<core::Opening> openings(20);
        std::vector<core::PlacedBox> placed;
        for (const core::Opening& opening : openings) {
            const double from_m = 0.1 * station(random);
            placed.push_back({opening, {from_m, from_m + 0.1 * width(random), 0, 1}});
        }
        std::multiset<std::pair<std::size_t, std::size_t>> visited;
        core::visit_pairs_at_one_station(placed, [&](std::size_t one, std::size_t other) {
            visited.insert(std::minmax(one, other));
        });
        std::multiset<std::pair<std::size_t, std::size_t>> all;
        for (std::size_t i = 0; i < placed.size(); ++i) {
            for (std::size_t k = i + 1; k < placed.size(); ++k) {
                if (core::at_one_station(placed[i].box, placed[k].box)) {
                    all.emplace(i, k);
                }
            }
        }
        REQUIRE(visited == all);
    }
}
