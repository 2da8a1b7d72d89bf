#include <boardmark/input/fields/key_table.hpp>

#include "input/fields/fields.hpp"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace boardmark::input;

TEST_CASE("the key table describes every key in the order of the format") {
    const auto files = key_tables();
    const auto [at, fields] =
        GENERATE(Catch::Generators::table<std::size_t, std::span<const Field>>(
            {{0, mix_fields()}, {1, trial_fields()}, {2, strength_fields()}, {3, wall_fields()}}));
    const auto& keys = files.at(at).keys;
    REQUIRE(keys.size() == fields.size());
    for (std::size_t i = 0; i < keys.size(); ++i) {
        CHECK(keys[i].path == fields[i].path);
        CHECK(keys[i].meaning == fields[i].meaning);
        CHECK(keys[i].default_text == fields[i].default_text);
        CHECK(keys[i].example == fields[i].example);
    }
}

TEST_CASE("a described key") {
    const auto keys = key_tables().front().keys;
    const auto air = std::ranges::find(keys, "requirements.air", &DescribedKey::path);
    REQUIRE(air != keys.end());
    CHECK(air->default_text == "exposure");
    CHECK(air->example == "air: exposure");
}
