#include <boardmark/core/basis/blocks.hpp>

#include <algorithm>
#include <atomic>
#include <system_error>
#include <thread>
#include <vector>

namespace boardmark::core {
namespace {

/// What the threads share: which block comes next.
class BlockQueue {
public:
    explicit BlockQueue(const Blocks& blocks)
        : blocks_{blocks} {}

    /// What is taken is done, so that all before it is done in the end.
    bool take(const BlockWork& work) {
        if (stopped_) {
            return false;
        }
        const std::size_t first = next_.fetch_add(blocks_.in_block);
        if (first >= blocks_.count) {
            return false;
        }
        work(first, std::min(first + blocks_.in_block, blocks_.count));
        return true;
    }

    /// By the first thread alone: who is asked need not be ready for several.
    void ask() {
        if (blocks_.goes_on &&
            !blocks_.goes_on(static_cast<double>(taken()) / static_cast<double>(blocks_.count))) {
            stopped_ = true;
        }
    }

    std::size_t taken() const { return std::min(next_.load(), blocks_.count); }

private:
    const Blocks& blocks_;
    std::atomic<std::size_t> next_ = 0;
    std::atomic<bool> stopped_ = false;
};

} // namespace

std::size_t do_in_blocks(const Blocks& blocks, const std::function<BlockWork()>& worker) {
    BlockQueue queue{blocks};
    std::vector<std::thread> others;
    for (unsigned i = 1; i < blocks.threads; ++i) {
        BlockWork work = worker();
        try {
            others.emplace_back([&queue, work = std::move(work)] {
                while (queue.take(work)) {
                }
            });
        } catch (const std::system_error&) {
            break;
        }
    }
    const BlockWork work = worker();
    while (queue.take(work)) {
        queue.ask();
    }
    for (std::thread& other : others) {
        other.join();
    }
    return queue.taken();
}

} // namespace boardmark::core
