#include "tree.hpp"

#include <catch2/catch.hpp>

using namespace boardmark::input;
using boardmark::test::tree_of;

TEST_CASE("an entry of a mapping is found by its whole key") {
    const auto tree = tree_of("stone: 1\nsand: 2\n");
    REQUIRE(tree.root.find("sand") != nullptr);
    CHECK(tree.root.find("sand")->value.scalar == "2");
    CHECK(tree.root.find("san") == nullptr);
    CHECK(tree.root.find("") == nullptr);
}

TEST_CASE("of two entries of one key the first is found") {
    CHECK(tree_of("sand: 1\nsand: 2\n").root.find("sand")->value.scalar == "1");
}

TEST_CASE("what a node is in the words of a message") {
    const auto [text, words] = GENERATE(table<std::string, std::string>({
        {"a:", "no value"},
        {"a: ~", "no value"},
        {"a: null", "no value"},
        {"a: 5 in", "a single value"},
        {"a: \"\"", "a single value"},
        {"a: []", "a list"},
        {"a: {}", "a mapping"},
    }));
    INFO(text);
    CHECK(describe(tree_of(text).root.find("a")->value.kind) == words);
}
