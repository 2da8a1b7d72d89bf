#pragma once

#include <cstdint>
#include <functional>
#include <vector>

namespace boardmark::core {

/// A place of a search, each coordinate from 0 to 1, and how good it is: first by how far it is
/// from holding every limit, then by its value.
struct SearchPlace {
    std::vector<double> at;
    double excess;
    double value;

    bool is_better_than(const SearchPlace& other) const {
        return excess != other.excess ? excess < other.excess : value < other.value;
    }
};

/// Gives excess and value of a place; it fills them in.
using SearchRating = std::function<void(SearchPlace&)>;

/// Places that fill the unit cube evenly, the same each time: an additive recurrence whose steps
/// are powers of the root of x^(n+1) = x + 1, as the golden section is of x^2 = x + 1.
std::vector<double> even_place(std::size_t number, std::size_t dimensions);

/// Goes from a place to better ones: along the coordinates and along as many directions drawn anew
/// at each step, which lead along limits that no coordinate follows; the steps grow with success
/// and shrink without.
///
/// @param seed  of the directions; the same gives the same way
SearchPlace pattern_search(SearchPlace from, const SearchRating& rate, std::uint64_t seed);

} // namespace boardmark::core
