#include <boardmark/text/letter_case.hpp>

#include <catch2/catch.hpp>

#include <string>

using namespace boardmark::text;

TEST_CASE("ASCII letters made small and nothing else") {
    const auto [text, small] = GENERATE(table<std::string, std::string>({
        {"", ""},
        {"PSI", "psi"},
        {"fl oz/CWT", "fl oz/cwt"},
        {"AZaz", "azaz"},
        {"@[`{", "@[`{"}, // the neighbours of A, Z, a and z
        {"0.45 %", "0.45 %"},
        {"\xC3\x84", "\xC3\x84"},         // Ä: a letter outside ASCII keeps its bytes
        {"\xE2\x84\xAA", "\xE2\x84\xAA"}, // the Kelvin sign is no k
    }));
    INFO(text);
    CHECK(lower(text) == small);
}

TEST_CASE("texts that differ in the case of ASCII letters at most") {
    const auto [left, right, equal] = GENERATE(table<std::string, std::string, bool>({
        {"", "", true},
        {"psi", "PSI", true},
        {"MPa", "mpa", true},
        {"psi", "psi ", false},
        {"psi", "ps", false},
        {"m3", "m4", false},
        {"\xC3\x84", "\xC3\xA4", false}, // Ä and ä
        {"@", "`", false},               // one bit apart, like a letter and its capital
    }));
    INFO(left << " and " << right);
    CHECK(equal_but_for_case(left, right) == equal);
    CHECK(equal_but_for_case(right, left) == equal);
}
