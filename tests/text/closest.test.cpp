#include <boardmark/text/closest.hpp>

#include <catch2/catch.hpp>

#include <array>
#include <optional>
#include <string>
#include <string_view>

using boardmark::text::closest;

namespace {

constexpr std::array<std::string_view, 9> words{
    "cement",           "slag",       "sand",    "stone", "water", "requirements",
    "nominal_max_size", "absorption", "moisture"};

std::string nearest_word(std::string_view mistyped) {
    return std::string{closest(mistyped, words).value_or("nothing")};
}

} // namespace

TEST_CASE("the word that a mistyped one stands for") {
    const auto [mistyped, meant, slip] = GENERATE(table<std::string, std::string, std::string>({
        {"cement", "cement", "none"},
        {"cemnt", "cement", "a letter left out"},
        {"cementt", "cement", "a letter too many"},
        {"cemant", "cement", "a letter changed"},
        {"cemetn", "cement", "two letters swapped"},
        {"ecment", "cement", "two letters swapped at the start"},
        {"Cement", "cement", "a capital letter"},
        {"cemmnet", "cement", "one too many and two swapped"},
        {"cmnt", "cement", "two left out"},
        {"snad", "sand", "a swap counts once: 1 of 4"},
        {"sanb", "sand", "1 of 4"},
        {"sandy", "sand", "1 of 5"},
        {"wahter", "water", "1 of 6"},
        {"requirments", "requirements", "a letter left out"},
        {"requierments", "requirements", "two swapped, one changed"},
        {"nominal_max_zise", "nominal_max_size", "two changed"},
        {"nominal max size", "nominal_max_size", "blanks for underscores"},
        {"absorbtion", "absorption", "a letter changed"},
        {"mositure", "moisture", "two letters swapped"},
    }));
    INFO(mistyped << ": " << slip);
    CHECK(nearest_word(mistyped) == meant);
}

TEST_CASE("words that stand for none of the candidates") {
    const auto [mistyped, why] = GENERATE(table<std::string, std::string>({
        {"", "half of the word and more would be invented"},
        {"gypsum", "nothing alike"},
        {"requirmnt", "3 left out"},
        {"nominal_max_qqqe", "3 changed"},
        {"wqqqater", "3 too many"},
        {"rqrmnts", "5 left out"},
        {"absorbtin rate", "too long by 5"},
        {"sa", "2 of 4 is half of the word"},
        {"snda ", "a letter moved by two places is 2, the blank makes 3"},
        {"tan", "2 of 4 is half of the word"},
        {"nominal_max", "5 left out"},
    }));
    INFO(mistyped << ": " << why);
    CHECK(nearest_word(mistyped) == "nothing");
}

TEST_CASE("of several near words the nearest and of equals the first") {
    constexpr std::array<std::string_view, 3> doses{"dose_low", "dose", "doses"};
    CHECK(closest("dosee", doses) == std::optional<std::string_view>{"dose"});
    CHECK(closest("doses", doses) == std::optional<std::string_view>{"doses"});
    constexpr std::array<std::string_view, 2> equals{"slump_a", "slump_b"};
    CHECK(closest("slump_c", equals) == std::optional<std::string_view>{"slump_a"});
}

TEST_CASE("no candidates and endless words give nothing") {
    CHECK(closest("cement", {}) == std::nullopt);
    const std::string eighty(80, 'x');
    const std::string longer(81, 'x');
    const std::array<std::string_view, 2> candidates{eighty, longer};
    CHECK(closest(eighty, candidates) == std::optional<std::string_view>{eighty});
    CHECK(closest(longer, candidates) == std::nullopt);
}

TEST_CASE("a letter outside ASCII counts as one letter") {
    constexpr std::array<std::string_view, 1> names{"b\xC3\xA9ton cir\xC3\xA9"};
    CHECK(closest("beton cire", names) == std::optional{names[0]});
}
