// A blend of all aggregates to a band of one's own: it lies within, or the check says where it
// cannot.

#include <boardmark/boardmark.hpp>

#include <catch2/catch.hpp>

#include <algorithm>
#include <fstream>

using namespace boardmark;

namespace {

/// The example that blends its aggregates, to that band.
Opened<WorkedMix> blended_to(const std::string& band) {
    std::ifstream file{std::string{BOARDMARK_SOURCE} + "/examples/blended-wall.yaml",
                       std::ios::binary};
    std::string text{std::istreambuf_iterator<char>{file}, {}};
    const std::string target = "to: maximum density";
    text.replace(text.find(target), target.size(), "band: {" + band + "}");
    return read(std::move(text), "mix.yaml");
}

} // namespace

TEST_CASE("a band that no blend can leave holds, one that none can enter is watched") {
    const auto [band, verdict] = GENERATE(table<std::string, core::Verdict>({
        // whatever passes is 0 to 100 %
        {"4.75 mm: 0 % to 100 %, 0.6 mm: 0 % to 100 %", core::Verdict::holds},
        // sand has 98 % below 4.75 mm and 44 % below 0.6 mm, the others 2 % there at most: with 45
        // %
        // below 4.75 mm sand is 46 % of all, and less than 22 % are below 0.6 mm
        {"4.75 mm: 40 % to 45 %, 0.6 mm: 35 % to 45 %", core::Verdict::watch},
        // with 60 % below 4.75 mm, of which pea gravel has 22 %, sand is half of all or more: 22 %
        {"4.75 mm: 60 % to 65 %, 0.6 mm: 5 % to 10 %", core::Verdict::watch},
    }));
    INFO(band);
    const auto opened = blended_to(band);
    REQUIRE(opened);
    const auto& checks = opened.value().checks();
    const auto found = std::ranges::find(checks, std::string{"aggregate.target"}, &core::Check::id);
    REQUIRE(found != checks.end());
    CHECK(found->verdict == verdict);
}
