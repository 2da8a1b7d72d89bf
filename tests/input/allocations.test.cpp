// What reading costs in allocations: a count, because it is the same on every machine.

#include <boardmark/input/fields/starter.hpp>

#include "support.hpp"

#include <catch2/catch.hpp>

#include <cstdlib>
#include <new>

namespace {
std::size_t allocations = 0;
}

void* operator new(std::size_t size) {
    ++allocations;
    if (void* memory = std::malloc(size)) {
        return memory;
    }
    throw std::bad_alloc{};
}
void operator delete(void* memory) noexcept {
    std::free(memory);
}
void operator delete(void* memory, std::size_t) noexcept {
    std::free(memory);
}

using namespace boardmark;

namespace {

std::size_t allocations_of_reading(const std::string& text) {
    const auto options = test::read_options(input::Purpose::proportion);
    input::read_mix(text, "mix.yaml", options); // what is made once and kept does not count
    const std::size_t before = allocations;
    const auto reading = input::read_mix(text, "mix.yaml", options);
    const std::size_t made = allocations - before;
    REQUIRE(reading.mix);
    return made;
}

} // namespace

// The starter file has 32 keys with a value, 17 of them in materials, and takes BOUND. About 200
// are the YAML library's own. Place for a few keys more; a text made for each key would be told at
// once.
TEST_CASE("reading a sound mix makes no text that nobody reads") {
    CHECK(allocations_of_reading(input::starter_mix(core::UnitSystem::us)) < 400);
}

// Comments are no keys: a file that is mostly comments must not cost more for them than the YAML
// library's reading of them.
TEST_CASE("reading grows with keys, not with what stands beside them") {
    const std::string text = input::starter_mix(core::UnitSystem::us);
    std::string commented;
    for (const char character : text) {
        commented += character;
        if (character == '\n') {
            commented += "# a line that says nothing\n";
        }
    }
    const std::size_t plain = allocations_of_reading(text);
    CHECK(allocations_of_reading(commented) <= plain + plain / 4);
}
