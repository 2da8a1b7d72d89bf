#pragma once

#include <cstddef>
#include <cstdint>

namespace boardmark::core {

/// Numbers that look random and are the same in every run: the mixing function splitmix64 of a
/// counter.
class SteadyNumbers {
public:
    std::uint64_t next() {
        state_ += 0x9e3779b97f4a7c15U;
        std::uint64_t mixed = state_;
        mixed = (mixed ^ (mixed >> 30U)) * 0xbf58476d1ce4e5b9U;
        mixed = (mixed ^ (mixed >> 27U)) * 0x94d049bb133111ebU;
        return mixed ^ (mixed >> 31U);
    }

    /// From 0 to before `end` > 0.
    std::size_t below(std::size_t end) { return static_cast<std::size_t>(next() % end); }

private:
    std::uint64_t state_ = 0;
};

} // namespace boardmark::core
