// What reading costs in allocations: a count, because it is the same on every machine.

#include <boardmark/input/starter/starter.hpp>

#include "allocations.hpp"
#include "support.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;

namespace {

std::size_t allocations_of_reading(const std::string& text) {
    const auto options = test::read_options(input::Purpose::proportion);
    input::read_mix(text, "mix.yaml", options); // what is made once and kept does not count
    const std::size_t before = test::allocations;
    const auto reading = input::read_mix(text, "mix.yaml", options);
    const std::size_t made = test::allocations - before;
    REQUIRE(reading.mix);
    return made;
}

} // namespace

// The starter file takes 219: nodes, what was read of them, and the mix itself. It has about sixty
// keys, so one text made for each, as for a message that nobody needs, would be told at once.
TEST_CASE("reading a sound mix makes no text that nobody reads") {
    // Thirty of them are the door's, which reads what each standard says once more.
    CHECK(allocations_of_reading(input::starter(input::FileKind::mix, core::UnitSystem::us)) < 300);
}

// Comments are no keys; the list of lines alone grows with them.
TEST_CASE("reading grows with keys, not with what stands beside them") {
    const std::string text = input::starter(input::FileKind::mix, core::UnitSystem::us);
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
