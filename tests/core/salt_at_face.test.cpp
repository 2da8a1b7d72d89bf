// Whether salt reaches a face, by ACI 318-19 Table 19.3.1.1. What then follows for ties and cover
// is held in tests/unsafe/salt.situations.

#include <boardmark/core/wall/salt_at_face.hpp>

#include "support.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using core::SaltAtFace;
using core::Sea;

TEST_CASE("salt comes by class or by site, and what nobody stated is open") {
    struct Row {
        std::vector<std::string> exposure;
        std::optional<Sea> sea;
        std::optional<bool> deicer;
        SaltAtFace salt;
    };
    const auto row = GENERATE(values<Row>({
        {{"F2", "S0", "W1", "C2"}, {}, {}, SaltAtFace::reaches},
        {{"F3", "C1"}, {}, {}, SaltAtFace::reaches},
        {{"S1", "C1"}, Sea::tidal, {}, SaltAtFace::reaches},
        {{"C1"}, {}, true, SaltAtFace::reaches},
        {{}, Sea::spray, {}, SaltAtFace::reaches},
        {{"S1", "C1"}, {}, {}, SaltAtFace::none}, // S1 by the soil: C1 says no chlorides
        {{"F2", "C0"}, {}, {}, SaltAtFace::none},
        {{}, Sea::none, false, SaltAtFace::none},
        {{}, Sea::none, {}, SaltAtFace::not_stated},
        {{"F2", "S1", "W2"}, {}, {}, SaltAtFace::not_stated},
        {{}, {}, {}, SaltAtFace::not_stated},
    }));
    core::Requirements asked{.exposure = row.exposure, .strength_mpa = 35, .slump_mm = 100};
    if (row.sea || row.deicer) {
        asked.site.emplace();
        asked.site->deicer = row.deicer;
        asked.site->sea = row.sea;
    }
    CHECK(core::salt_exposure(asked, reference::tables(core::UnitSystem::us).code).at_face ==
          row.salt);
}
