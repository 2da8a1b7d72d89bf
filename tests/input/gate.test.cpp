// What the gate lets through and what it refuses. The places are counted by hand in the text.

#include "tree.hpp"

#include <catch2/catch.hpp>

#include <string>

using namespace boardmark::input;
using boardmark::test::tree_of;

namespace {

/// The one fault for which the gate refuses a text.
Diagnostic refusal(const std::string& text) {
    const SourceText source{"test.yaml", text};
    Diagnostics diagnostics;
    REQUIRE_FALSE(pass_gate(source, diagnostics).has_value());
    REQUIRE(diagnostics.size() == 1);
    return diagnostics.front();
}

} // namespace

TEST_CASE("the tree holds what is written with its places") {
    const auto tree = tree_of("title: Quay\nlist: [a, 'b c']\n");
    REQUIRE(tree.root.kind == Node::Kind::mapping);
    const Node& title = tree.root.find("title")->value;
    CHECK(title.scalar == "Quay");
    CHECK(title.spot.line == 0);
    CHECK(title.spot.byte == 7);
    CHECK(title.length == 4);
    CHECK_FALSE(title.quoted);

    const Node& list = tree.root.find("list")->value;
    REQUIRE(list.items.size() == 2);
    CHECK(list.items[1].scalar == "b c");
    CHECK(list.items[1].spot.line == 1);
    CHECK(list.items[1].spot.byte == 10);
    CHECK(list.items[1].length == 5); // with its quotes
    CHECK(list.items[1].quoted);
}

TEST_CASE("the entries of a mapping keep the order of the file") {
    const auto tree = tree_of("b: 1\na: 2\nc: 3\n");
    REQUIRE(tree.root.entries.size() == 3);
    CHECK(tree.root.entries[0].key.scalar == "b");
    CHECK(tree.root.entries[1].key.scalar == "a");
    CHECK(tree.root.entries[2].key.scalar == "c");
}

TEST_CASE("texts that are let through") {
    const auto text = GENERATE(as<std::string>{},
                               "a: 1",                    // no line end
                               "a: 1\r\nb: 2\r\n",        // line ends of Windows
                               "# note\n\na: 1 # note\n", // notes and empty lines
                               "a: 'it''s: a # text'\n",  // quotes protect
                               "a: \"<<\"\n",             // text, not a merge key
                               "a: größe 水泥\n",         // any language
                               "--- \na: 1\n...\n");      // one document with its marks
    INFO(text);
    CHECK(tree_of(text).root.find("a") != nullptr);
}

TEST_CASE("what YAML has and this format does not") {
    struct Case {
        std::string text;
        std::size_t line;
        std::size_t column;
        std::string message;
    };
    const auto [text, line, column, message] = GENERATE(values<Case>({
        {"a: 1\n---\nb: 2\n", 2, 1, "a second document begins here; a file holds one mix"},
        {"a: &x 1\n", 1, 4, "anchors and aliases are not supported"},
        {"a: *x\n", 1, 4, "anchors and aliases are not supported"},
        {"a: 1\nb: &x [1]\n", 2, 4, "anchors and aliases are not supported"},
        {"b: &x {c: 1}\n", 1, 4, "anchors and aliases are not supported"},
        {"a: !quay 1\n", 1, 4, "tags are not supported"},
        {"a: !quay [1]\n", 1, 4, "tags are not supported"},
        {"a:\n  <<: {b: 1}\n", 2, 3, "merge keys are not supported"},
        {"[a]: 1\n", 1, 1, "a key is a single word, not a list"},
        {"{a: 1}: 1\n", 1, 1, "a key is a single word, not a mapping"},
        {"~: 1\n", 1, 1, "a key is a single word, not no value"},
    }));
    INFO(text);
    const Diagnostic fault = refusal(text);
    CHECK(fault.message == message);
    CHECK(fault.line == line);
    CHECK(fault.column == column);
}

TEST_CASE("values end on their line") {
    const auto [text, line, column,
                message] = GENERATE(table<std::string, std::size_t, std::size_t, std::string>({
        {"a: \"b\nc: 1\n", 1, 4, "the quote opened at line 1 is not closed on that line"},
        {"x: 1\na: 'b\nc: 'd'\n", 2, 4, "the quote opened at line 2 is not closed on that line"},
        {"a: b\n  c\n", 1, 4, "the value runs on over the next line"},
        {"a: >-\n  b\n", 1, 4, "block text is not supported"},
    }));
    INFO(text);
    const Diagnostic fault = refusal(text);
    CHECK(fault.message == message);
    CHECK(fault.line == line);
    CHECK(fault.column == column);
}

TEST_CASE("bytes that no text of a mix holds") {
    struct Case {
        std::string text;
        std::size_t line;
        std::size_t column;
        std::string message;
    };
    const auto [text, line, column, message] = GENERATE(values<Case>({
        {std::string("a: x\0y\n", 7), 1, 5, "there is a control character here"},
        {"a: 1\nb: \x1B[31m\n", 2, 4, "there is a control character here"},
        {"a: \x7F\n", 1, 4, "there is a control character here"},
        {"a: \xC2\x85\n", 1, 4, "there is a control character here"}, // C1, in two bytes
        {"a: M\xFCnster\n", 1, 5, "the text is not UTF-8 here"},
        {"ö: \xC3(\n", 1, 4, "the text is not UTF-8 here"},        // a character cut in two
        {"a: \xED\xA0\x80\n", 1, 4, "the text is not UTF-8 here"}, // half of a UTF-16 pair
        {"\xFF\xFE"
         "a",
         1, 1, "the file is UTF-16 or UTF-32, not UTF-8"},
        {"\xFE\xFF"
         "a",
         1, 1, "the file is UTF-16 or UTF-32, not UTF-8"},
        {"a: \"\\x1B[31m\"\n", 1, 4, "the value holds a control character"},
        {"\"a\\nb\": 1\n", 1, 1, "the value holds a control character"},
        {"a: \"\\0\"\n", 1, 4, "the value holds a control character"},
    }));
    INFO(text);
    const Diagnostic fault = refusal(text);
    CHECK(fault.message == message);
    CHECK(fault.line == line);
    CHECK(fault.column == column);
}

TEST_CASE("tabs do not indent") {
    const auto [text, line] = GENERATE(table<std::string, std::size_t>({
        {"a:\n\tb: 1\n", 2},
        {"a:\n  b: 1\n  \tc: 1\n", 3},
    }));
    INFO(text);
    const Diagnostic fault = refusal(text);
    CHECK(fault.message == "line " + std::to_string(line) + " is indented with a tab");
    CHECK(fault.line == line);
}

TEST_CASE("a key without a space behind its colon is told with both lines in sight") {
    const auto [text, line, advice] = GENERATE(table<std::string, std::size_t, std::string>({
        {"a:1\nb: 2\n", 1, "write 'a: 1'"},
        {"a: 1\nslump:4 in\nb: 2\n", 2, "write 'slump: 4 in'"},
        {"a:\n  slump:4 in\n  b: 2\n", 2, "write 'slump: 4 in'"},
    }));
    INFO(text);
    const Diagnostic fault = refusal(text);
    CHECK(fault.line == line);
    CHECK(fault.advice == advice);
    CHECK(fault.message.starts_with("a space is missing after '"));
}

TEST_CASE("nesting is read to sixteen levels and no deeper") {
    const auto nested = [](int levels) {
        std::string text;
        for (int level = 0; level < levels; ++level) {
            text += std::string(static_cast<std::size_t>(level), ' ') + "a:\n";
        }
        return text;
    };
    CHECK(tree_of(nested(16)).root.kind == Node::Kind::mapping);
    CHECK(refusal(nested(17)).message == "the file is nested too deeply (more than 16 levels)");
}

TEST_CASE("a file is read to its cap and not a byte above") {
    const std::string text = "a: 1\n#";
    const std::string at_the_cap = text + std::string(largest_file - text.size(), '-');
    CHECK(tree_of(at_the_cap).root.find("a") != nullptr);

    const Diagnostic fault = refusal(at_the_cap + "-");
    CHECK(fault.message == "the file is larger than 1 MiB; a mix file has a few kilobytes");
    CHECK(fault.line == 0); // it concerns the file as a whole
    CHECK(fault.excerpt.empty());
}

TEST_CASE("ten thousand values are read and one more is not") {
    const auto list_of = [](std::size_t items) {
        std::string text = "[";
        for (std::size_t item = 0; item < items; ++item) {
            text += "1,";
        }
        return text + "]";
    };
    CHECK(tree_of(list_of(9999)).root.items.size() == 9999); // the list is a value as well
    CHECK(refusal(list_of(10000)).message == "the file has more than 10000 values");
}

TEST_CASE("a file without a value is empty") {
    const auto text = GENERATE(as<std::string>{}, "", "\n", "# only a note\n");
    INFO(text);
    CHECK(refusal(text).message == "the file is empty");
}
