#include "random_normals.hpp"

#include <Random123/philox.h>

#include <cmath>
#include <cstddef>
#include <numbers>

namespace boardmark::core {
namespace {

/// Inside 0 to 1, the ends never reached.
double uniform_of(std::uint32_t bits) {
    constexpr double step = 1.0 / 4294967296.0; // 2^-32
    return (bits + 0.5) * step;
}

std::uint32_t low_half(std::uint64_t word) {
    return static_cast<std::uint32_t>(word);
}

std::uint32_t high_half(std::uint64_t word) {
    return static_cast<std::uint32_t>(word >> 32);
}

} // namespace

void RandomNormals::fill(std::uint32_t set, std::uint64_t sample, std::span<double> normals) const {
    const r123::Philox4x32 philox;
    const r123::Philox4x32::key_type key = {{low_half(seed_), high_half(seed_)}};
    std::size_t next = 0;
    for (std::uint32_t block = 0; next < normals.size(); ++block) {
        const auto bits = philox({{low_half(sample), high_half(sample), block, set}}, key);
        for (const std::size_t pair : {0U, 2U}) {
            const double radius = std::sqrt(-2 * std::log(uniform_of(bits[pair])));
            const double angle = 2 * std::numbers::pi * uniform_of(bits[pair + 1]);
            if (next < normals.size()) {
                normals[next++] = radius * std::cos(angle);
            }
            if (next < normals.size()) {
                normals[next++] = radius * std::sin(angle);
            }
        }
    }
}

} // namespace boardmark::core
