// The short way through the gate builds the tree that the YAML library builds, or none.

#include "input/gate/plain_tree.hpp"

#include <boardmark/input/starter/starter.hpp>

#include "input/gate/gate.hpp"

#include <catch2/catch.hpp>

#include <random>
#include <string>

using namespace boardmark;
using namespace boardmark::input;

namespace {

bool same(const Node& left, const Node& right) {
    const bool same_itself =
        left.kind == right.kind && left.source == right.source &&
        left.spot.line == right.spot.line && left.spot.byte == right.spot.byte &&
        left.length == right.length && left.quoted == right.quoted && left.scalar == right.scalar &&
        left.items.size() == right.items.size() && left.entries.size() == right.entries.size();
    if (!same_itself) {
        return false;
    }
    for (std::size_t i = 0; i < left.items.size(); ++i) {
        if (!same(left.items[i], right.items[i])) {
            return false;
        }
    }
    for (std::size_t i = 0; i < left.entries.size(); ++i) {
        if (!same(left.entries[i].key, right.entries[i].key) ||
            !same(left.entries[i].value, right.entries[i].value)) {
            return false;
        }
    }
    return true;
}

enum class Found { same, given_up, other };

Found found_in(const std::string& text) {
    const SourceText source{"mix.yaml", text};
    const auto plain = plain_tree(source);
    if (!plain) {
        return Found::given_up;
    }
    Diagnostics faults;
    const auto by_library = pass_gate_by_library(source, faults);
    return by_library && same(*plain, *by_library) ? Found::same : Found::other;
}

} // namespace

TEST_CASE("what is written plainly is read the short way") {
    const std::string text = GENERATE(
        as<std::string>{}, "a: 1", "a: 1\n", "a: 1\r\nb: 2\r\n", "a: -5 degC\n", "a: .45\nb: +3\n",
        "# a comment\n\na: 1 # behind it\n", "a:\n  b: 1\n  c:\n    d: 2\ne: 3\n",
        "a: # a section\n  b: 1\n\n  # another\n  c: 2\n", "a: \"in: quotes\"\nb: 'x # y'\n",
        "a: {b: 1, c: [x, y z], d: {e: 2}}\n", "a: {b: 1,\n    c: 2}\nd: 3\n",
        "4 fl oz/cwt: 8 %\n1-1/2 in: 3/4 in\n", "a: {4 fl oz/cwt: 8 %, 8 fl oz/cwt: 16 %}\n",
        "a: wall, of the quay's edge\n", "a: {b: \"q\" , c: 1 }\n", "  a: 1\n  b: 2\n");
    INFO(text);
    CHECK(found_in(text) == Found::same);
}

TEST_CASE("what is not plain is left to the library") {
    const std::string text = GENERATE(
        as<std::string>{}, "", "# only a comment\n", "word\n", "a:\n", "a: 1\nb:\nc: 2\n", "- a\n",
        "a:\n  - b\n", "a: |\n  text\n", "a: &x 1\nb: *x\n", "a: !tag 1\n", "a: 1\n   b: 2\n",
        "a: 1\n b\n", "a:\n  b: 1\n c: 2\n", "a: b: c\n", "a: {b: 1\n", "a: {b: 1,}\n", "a: {}\n",
        "a: [1, 2\n", "a: \"open\nb: 1\n", "a: \"x\\ty\"\n", "a: 'it''s'\n", "a: null\n", "a: ~\n",
        "a: {b}\n", "a :1\n", "a : 1\n", "a:1\n", "\ta: 1\n", "a: 1\t\n", "a:\t1\n", "---\na: 1\n",
        "a: 1\n...\n", "%YAML 1.2\n", "a: 1\n---\nb: 2\n", "a: caf\xC3\xA9\n", "a: \"x\"y\n",
        "? a\n: b\n", "a: 12:30\n", "a: x#y\n", "# c\rb: 1\na: 2\n", "a: {b: 1, # c\n  d: 2}\n",
        "a: {b: 1,\nc: 2}\n", "a: @x\n", "<<: 1\n");
    INFO(text);
    CHECK(found_in(text) == Found::given_up);
}

TEST_CASE("the starter file is plain") {
    const auto system = GENERATE(core::UnitSystem::us, core::UnitSystem::si);
    CHECK(found_in(starter(FileKind::mix, system)) == Found::same);
}

TEST_CASE("a file of too many values or too deep is left to the library") {
    std::string many;
    for (int i = 0; i < 6000; ++i) {
        many += "k" + std::to_string(i) + ": 1\n";
    }
    CHECK(found_in(many) == Found::given_up);
    CHECK(found_in("a: " + std::string(14, '[') + "1" + std::string(14, ']') + "\n") ==
          Found::given_up);
    CHECK(found_in("a: " + std::string(1100, 'x') + "\n") == Found::given_up);
}

// Slips of a few characters anywhere: where the short way still gives a tree, it is the library's.
TEST_CASE("no slip of the hand makes the two ways differ") {
    const auto seed = GENERATE(take(1, random(1U, 0xFFFFFFFFU)));
    INFO("seed " << seed);
    std::mt19937 random{seed};
    const auto below = [&](std::size_t end) { return random() % end; };
    const std::string sound =
        "boardmark: 1 # one\ntitle: \"A wall\"\nmaterials:\n  cement: {kind: "
        "portland cement, c3a: 6 %}\n  stone:\n    kind: coarse aggregate\n"
        "    sieves: {1 in: 100 %,\n       No. 4: 5 %}\n\n# mixture\nmixture:\n"
        "  binder: {cement: 100 %}\n  exposure: [F2, S0]\nvolume: 'x'\n";
    constexpr std::string_view marks = ":,{}[]'\"#-? \n\r\t|>&*!%@`.~a1\\<";
    int given = 0;
    for (int i = 0; i < 4000; ++i) {
        std::string text = sound;
        for (std::size_t slips = 1 + below(3); slips > 0; --slips) {
            const std::size_t at = below(text.size());
            const char mark = marks[below(marks.size())];
            switch (below(4)) {
            case 0:
                text.erase(at, 1 + below(3));
                break;
            case 1:
                text.insert(at, 1, mark);
                break;
            case 2:
                text.insert(at, text.substr(below(text.size()), below(12)));
                break;
            default:
                text[at] = mark;
            }
            text += text.empty() ? "a" : "";
        }
        const Found found = found_in(text);
        given += found == Found::same;
        if (found == Found::other) {
            FAIL("differs:\n" << text);
        }
    }
    CHECK(given > 100);
}
