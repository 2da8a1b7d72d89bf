// Laws of verdicts without a word: judge says what assess tells, for any mix.

#include "laws/mixes.hpp"

using namespace boardmark;
using namespace boardmark::test;

namespace {

std::string any_level(core::UnitSystem system) {
    std::vector<std::string> names;
    for (const core::AlkaliLevel& level : tables_of(system).alkali->levels) {
        names.push_back(level.name);
    }
    return one_of(names, "level of prevention");
}

/// What the method leaves alone and checks ask for.
void draw_what_is_checked(core::Mix& mix) {
    core::Requirements& asked = mix.requirements;
    asked.board_marked = perhaps("board-marked");
    if (perhaps("time to place stated")) {
        asked.time_to_place_min = between(0, 120, "minutes to place");
    }
    if (perhaps("section stated")) {
        asked.section = {between(60, 400, "thickness, mm"), between(10, 200, "bar spacing, mm"),
                         between(10, 100, "cover, mm")};
    }
    if (perhaps("level stated")) {
        asked.alkali_level = any_level(mix.system);
    }
    if (perhaps("own curve")) {
        asked.strength_curve = {{0.35, between(45, 60, "strong, MPa")},
                                {0.45, between(35, 45, "middle, MPa")},
                                {0.60, between(15, 35, "weak, MPa")}};
    }
    if (perhaps("average stated")) {
        asked.average = core::StatedAverage{between(asked.strength_mpa, 60, "average, MPa"), ""};
    }
    if (perhaps("weather stated")) {
        asked.placing.air_c = between(-10, 40, "air, degC");
        asked.placing.wind_km_h = between(0, 40, "wind, km/h");
        asked.placing.humidity_percent = between(20, 100, "humidity");
    }
}

} // namespace

TEST_CASE("a mix is judged without a word as it is told") {
    std::vector<core::Finding> verdicts; // used again, as a search does
    holds([&] {
        core::Mix mix = any_mix();
        draw_what_is_checked(mix);
        const core::Tables& tables = tables_of(mix.system);
        const core::Proportions proportions = solved(mix);
        const auto told = core::assess(entered(mix), proportions, tables);
        core::judge(entered(mix), proportions, tables, verdicts);
        RC_ASSERT(verdicts.size() == told.size());
        for (std::size_t i = 0; i < told.size(); ++i) {
            RC_ASSERT(verdicts[i].id.name() == std::string_view{told[i].id});
            RC_ASSERT(verdicts[i].verdict == told[i].verdict);
            // the same bits: there is one formula
            RC_ASSERT(verdicts[i].value == told[i].value);
            RC_ASSERT(verdicts[i].limit.is_any() == told[i].limit.has_value());
            RC_ASSERT(verdicts[i].measure == told[i].measure);
            if (told[i].limit) {
                RC_ASSERT(verdicts[i].limit.low == told[i].limit->low);
                RC_ASSERT(verdicts[i].limit.high == told[i].limit->high);
            }
            RC_ASSERT(!told[i].requirement.empty());
            RC_ASSERT(!told[i].message.text.empty());
        }
    });
}
