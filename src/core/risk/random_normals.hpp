#pragma once

#include <cstdint>
#include <span>

namespace boardmark::core {

/// Independent standard normal numbers that follow from seed, set and sample alone: whoever asks
/// for them, in whatever order, gets the same. By Philox4x32-10 (J. K. Salmon et al., Parallel
/// random numbers: as easy as 1, 2, 3, SC11) and Box and Muller's transformation.
class RandomNormals {
public:
    explicit RandomNormals(std::uint64_t seed)
        : seed_{seed} {}

    /// @param set  numbers of two sets are independent of each other
    void fill(std::uint32_t set, std::uint64_t sample, std::span<double> normals) const;

private:
    std::uint64_t seed_;
};

} // namespace boardmark::core
