#pragma once

#include <cstddef>
#include <functional>

namespace boardmark::core {

/// Work on the numbers from `first` to before `last`.
using BlockWork = std::function<void(std::size_t first, std::size_t last)>;

/// A count of like pieces of work, which threads take block by block.
struct Blocks {
    std::size_t count;
    std::size_t in_block; ///< pieces that are taken at once
    unsigned threads;
    /// Asked between blocks with the share that is done; it stops the work. May be empty.
    std::function<bool(double)> goes_on = {};
};

/// Does all of the work, or what comes before the blocks that were not begun when it was stopped.
/// Where fewer threads can be had, fewer do it.
///
/// @param worker  gives each thread the work with memory of its own
/// @returns how many pieces were done, all before the first that was not
std::size_t do_in_blocks(const Blocks& blocks, const std::function<BlockWork()>& worker);

} // namespace boardmark::core
