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

TEST_CASE("what may be written under a key, with the range in the unit of its example") {
    const auto [path, holds] = GENERATE(Catch::Generators::table<std::string, std::string>({
        {"requirements.slump", "a length (in, ft, mm, m), 0 in to 12 in"},
        {"requirements.reinforced", "yes or no"},
        {"requirements.finish", "one of: board-marked, board-formed"},
        {"requirements.air", "a percentage (%), 0 % to 20 %; or: exposure, none"},
        {"requirements.exposure",
         "a list in brackets, or one alone, each words of your own or of the trade"},
        {"requirements.section", "keys of its own"},
        {"requirements.strength_curve",
         "pairs in braces: a number without a unit, 0.15 to 1.5; to each a stress (psi, MPa), 290 "
         "psi to 29000 psi; or 'from FILE'"},
    }));
    const auto keys = key_tables().front().keys;
    const auto key = std::ranges::find(keys, path, &DescribedKey::path);
    REQUIRE(key != keys.end());
    CHECK(key->holds == holds);
}

TEST_CASE("a word names keys by their path or by its end") {
    const auto [word, paths] =
        GENERATE(Catch::Generators::table<std::string, std::vector<std::string>>({
            {"sieves", {"materials.*.sieves"}},
            {"materials.sand.sieves", {"materials.*.sieves"}},
            {"materials.*.sieves", {"materials.*.sieves"}},
            {"requirements.slump", {"requirements.slump"}},
            {"slump", {"requirements.slump", "trial.slump", "trial.target.slump"}},
            {"lump", {}},
            {"", {}},
        }));
    INFO(word);
    const auto tables = key_tables();
    std::vector<std::string> found;
    for (const FoundKey& one : keys_named(word, tables)) {
        found.emplace_back(one.key->path);
    }
    CHECK(found == paths);
}
