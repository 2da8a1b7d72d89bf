// Keys: which are read, which are refused and what is suggested for them.

#include "input/gate/document.hpp"

#include "mix_text.hpp"
#include "tree.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using namespace boardmark::input;
using boardmark::test::faults_of;
using boardmark::test::Tree;
using boardmark::test::tree_of;

namespace {

struct Opened {
    Tree tree;
    Diagnostics faults;
    Document document;

    explicit Opened(const std::string& text)
        : tree(tree_of(text))
        , document(tree.root, mix_fields(), faults) {}
};

} // namespace

TEST_CASE("a value is found under its path") {
    const Opened opened{"title: Quay\n"
                        "requirements: {slump: 4 in, reinforced: no}\n"
                        "materials: {sand: {moisture: 6 %}}\n"};
    CHECK(opened.faults.empty());
    CHECK(opened.document.text({"title"}) == "Quay");
    CHECK(opened.document.number({"materials", "sand", "moisture"}) == 6);
    CHECK_FALSE(opened.document.flag({"requirements", "reinforced"}, true));
    CHECK(opened.document.flag({"materials", "sand", "typical"}, true)); // not there
    CHECK_FALSE(opened.document.number({"requirements", "strength"}).has_value());
    CHECK(opened.document.find({"requirements", "strength"}) == nullptr);
}

TEST_CASE("a word in place of a number has no number") {
    const Opened opened{"selections: {w_cm: by exposure}\n"};
    CHECK_FALSE(opened.document.number({"selections", "w_cm"}).has_value());
    CHECK(opened.document.text({"selections", "w_cm"}) == "by exposure");
}

TEST_CASE("names keep the order of the file") {
    const Opened opened{"materials: {stone: {kind: coarse aggregate}, cement: {kind: fly ash}}\n"};
    CHECK(opened.document.names({"materials"}) == std::vector<std::string_view>{"stone", "cement"});
    CHECK(opened.document.names({"mixture"}).empty());
}

TEST_CASE("a table gives its pairs and a list its items in order") {
    const Opened opened{"requirements:\n"
                        "  exposure: [F2, C1]\n"
                        "  strength_curve: {0.40: 42 MPa, 0.45: 37 MPa}\n"};
    const Reading& exposure = *opened.document.find({"requirements", "exposure"});
    REQUIRE(exposure.items.size() == 2);
    CHECK(exposure.items[0].text == "F2");
    CHECK(exposure.items[1].text == "C1");
    const Reading& curve = *opened.document.find({"requirements", "strength_curve"});
    REQUIRE(curve.pairs.size() == 2);
    CHECK(curve.pairs[0].key.number == 0.40);
    CHECK(curve.pairs[1].value.number == 37);
    CHECK(curve.sound);
}

TEST_CASE("unknown keys and what is suggested") {
    struct Case {
        std::string text;
        std::string message;
        std::string advice;
    };
    const auto [text, message, advice] = GENERATE(values<Case>({
        {"tilte: Quay\n", "'tilte' is not a key of this format", "did you mean 'title'?"},
        {"requirements: {slmup: 4 in}\n", "'requirements.slmup' is not a key of this format",
         "did you mean 'slump'?"},
        {"materials: {sand: {moistur: 6 %}}\n",
         "'materials.sand.moistur' is not a key of this format", "did you mean 'moisture'?"},
        {"slump: 4 in\n", "'slump' is not a key of this format", "it belongs under 'requirements'"},
        {"requirements: {fine_share: 44 %}\n",
         "'requirements.fine_share' is not a key of this format", "it belongs under 'selections'"},
        {"requirements: {section: {depth: 4 in}}\n",
         "'requirements.section.depth' is not a key of this format",
         "known here: thickness, clear_bar_spacing, clear_cover"},
        {"requirements: {colour: grey}\n", "'requirements.colour' is not a key of this format",
         "'boardmark help keys' lists all keys"},
        {"materials: {sand: {relative_density: 2,64}}\n", "'64' is left over: a comma ends a value",
         "write decimals with a point, as in 1.5"},
    }));
    INFO(text);
    const Opened opened{text};
    REQUIRE(opened.faults.size() == 1);
    CHECK(opened.faults[0].message == message);
    CHECK(opened.faults[0].advice == advice);
}

TEST_CASE("a key that was meant counts as being there") {
    const Opened opened{"requirements: {slmup: 4 in}\n"};
    CHECK(opened.document.has({"requirements", "slump"}));
    CHECK(opened.document.find({"requirements", "slump"}) == nullptr);
    CHECK_FALSE(opened.document.has({"requirements", "strength"}));
}

TEST_CASE("a key twice is refused where it stands the second time") {
    const auto [text, fault, advice] = GENERATE(table<std::string, std::string, std::string>({
        {"title: A\ntitle: B\n", "2:1 'title' is given a second time",
         "the first is on line 1; keep one"},
        {"materials:\n  sand: {}\n  sand: {}\n", "3:3 'materials.sand' is given a second time",
         "the first is on line 2; keep one"},
        {"mixture:\n  fine: {a: 50 %, a: 50 %}\n", "2:19 'mixture.fine.a' is given a second time",
         "the first is on line 2; keep one"},
    }));
    INFO(text);
    const Opened opened{text};
    CHECK(faults_of(opened.faults) == std::vector<std::string>{fault});
    CHECK(opened.faults.at(0).advice == advice);
}

TEST_CASE("of a key that is given twice the first value is kept") {
    CHECK(Opened("title: A\ntitle: B\n").document.text({"title"}) == "A");
}

TEST_CASE("a key without a value is told at the key") {
    const auto [text, fault] = GENERATE(table<std::string, std::string>({
        {"title:\n", "1:1 title has no value"},
        {"title: ~\n", "1:1 title has no value"},
        {"requirements:\n  slump: null\n", "2:3 requirements.slump has no value"},
        {"mixture: {fine: {sand: }}\n", "1:18 mixture.fine.sand has no value"},
    }));
    INFO(text);
    CHECK(faults_of(Opened(text).faults) == std::vector<std::string>{fault});
}

TEST_CASE("what stands under a key has the shape that the key asks for") {
    const auto [text, fault] = GENERATE(table<std::string, std::string>({
        {"requirements: 5\n", "1:15 requirements: expected keys and values, found a single value"},
        {"materials: []\n", "1:12 materials: expected keys and values, found a list"},
        {"requirements: {exposure: {F2: 1}}\n",
         "1:26 requirements.exposure: expected a list, found a mapping"},
        {"mixture: {fine: sand}\n",
         "1:17 mixture.fine: expected pairs of values, found a single value"},
        {"mixture: {fine: [sand]}\n", "1:17 mixture.fine: expected pairs of values, found a list"},
        {"mixture: {fine: {}}\n", "1:17 mixture.fine: expected pairs of values, found none"},
        {"requirements: {slump: [4 in]}\n",
         "1:23 requirements.slump: expected a length (in, ft, mm, m), found a list"},
    }));
    INFO(text);
    CHECK(faults_of(Opened(text).faults) == std::vector<std::string>{fault});
}

TEST_CASE("a table may be the word that stands for it") {
    const Opened opened{"materials: {reducer: {water_reduction: standard minimum}}\n"};
    CHECK(opened.faults.empty());
    const Reading& reduction = *opened.document.find({"materials", "reducer", "water_reduction"});
    REQUIRE(reduction.value);
    CHECK(reduction.value->is_word);
    CHECK(reduction.pairs.empty());
}

TEST_CASE("one wrong pair leaves the others and marks the table") {
    const Opened opened{"mixture: {fine: {coarse sand: 60, fine sand: 40 %}}\n"};
    const Reading& fine = *opened.document.find({"mixture", "fine"});
    CHECK_FALSE(fine.sound);
    REQUIRE(fine.pairs.size() == 1);
    CHECK(fine.pairs[0].key.text == "fine sand");
    CHECK(opened.faults.size() == 1);
}

TEST_CASE("names have one to eighty characters") {
    const auto material = [](const std::string& name) {
        return Opened("materials: {\"" + name + "\": {kind: pigment}}\n");
    };
    CHECK(material(std::string(80, 'a')).faults.empty());
    CHECK(material("水泥").faults.empty());
    CHECK(material(std::string(81, 'a')).faults.at(0).message ==
          "a name of 81 characters; at most 80 are read");
    CHECK(material("").faults.at(0).message == "a name is empty");
}

TEST_CASE("a table of a hundred pairs is read and one of more is not") {
    const auto table_of = [](int pairs) {
        std::string text = "requirements: {strength_curve: {";
        for (int i = 0; i < pairs; ++i) {
            text += std::to_string(0.2 + 0.001 * i) + ": 40 MPa, ";
        }
        return Opened(text + "}}\n");
    };
    CHECK(table_of(100).faults.empty());
    CHECK(table_of(101).faults.at(0).message ==
          "requirements.strength_curve has 101 pairs; at most 100 are read");
}

TEST_CASE("a path is written with points") {
    CHECK(dotted({}) == "");
    CHECK(dotted({"materials", "sand", "moisture"}) == "materials.sand.moisture");
}

TEST_CASE("a key that lacks the space before its value is asked about") {
    struct Row {
        const char* text;
        const char* fault;
        const char* advice;
    };
    for (const Row& row : {
             Row{"requirements: {slump:4 in, reinforced: no}\n",
                 "1:16 a space is missing after 'slump:'", "write 'slump: 4 in'"},
             // What only looks so is a key that is not known, or has no value.
             Row{"requirements: {:4 in, reinforced: no}\n",
                 "1:16 'requirements.:4 in' is not a key of this format", ""},
             Row{"requirements: {slump, reinforced: no}\n", "1:16 requirements.slump has no value",
                 ""},
         }) {
        INFO(row.text);
        const Opened opened{row.text};
        REQUIRE(faults_of(opened.faults) == std::vector<std::string>{row.fault});
        if (*row.advice) {
            CHECK(opened.faults.front().advice == row.advice);
        }
    }
}
