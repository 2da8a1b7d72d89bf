#pragma once

// Counts what is allocated. It replaces operator new of a whole program: one file of a test program
// includes it.

#include <cstddef>
#include <cstdlib>
#include <new>

namespace boardmark::test {

inline std::size_t allocations = 0;

} // namespace boardmark::test

void* operator new(std::size_t bytes) {
    ++boardmark::test::allocations;
    if (void* memory = std::malloc(bytes == 0 ? 1 : bytes)) {
        return memory;
    }
    throw std::bad_alloc{};
}

void* operator new(std::size_t bytes, const std::nothrow_t&) noexcept {
    ++boardmark::test::allocations;
    return std::malloc(bytes == 0 ? 1 : bytes);
}

void operator delete(void* memory) noexcept {
    std::free(memory);
}

void operator delete(void* memory, std::size_t) noexcept {
    std::free(memory);
}
