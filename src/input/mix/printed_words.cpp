#include "printed_words.hpp"

#include <boardmark/text/closest.hpp>
#include <boardmark/text/utf8.hpp>

#include "../reading/refuse.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace boardmark::input {
namespace {

/// Texts become part of phrases with arguments in braces; a reason may have the sulfate as one.
bool has_braces(std::string_view key, std::string text) {
    constexpr std::string_view sulfate = "{sulfate}";
    if (const auto at = text.find(sulfate); key == "reason" && at != std::string::npos) {
        text.erase(at, sulfate.size());
    }
    return text.find_first_of("{}") != std::string::npos;
}

} // namespace

void PrintedWords::wrong(const Node& node, std::string message, std::string advice) {
    refuse(node, std::move(message), std::move(advice), diagnostics_);
    sound_ = false;
}

std::string PrintedWords::text_of(const Node& node, const std::string& key) {
    if (node.kind != Node::Kind::scalar || node.scalar.empty()) {
        wrong(node, fmt::format("{}: expected a text, found {}", key, describe(node.kind)),
              "write words");
        return "";
    }
    if (text::printable(node.scalar) != node.scalar) {
        wrong(node, key + ": the text holds characters that cannot be printed",
              "write plain words");
        return "";
    }
    if (has_braces(key, node.scalar)) {
        wrong(node, key + ": the text holds '{' or '}', which stand for figures in reports",
              "write it without them");
        return "";
    }
    return node.scalar;
}

std::string PrintedWords::demanded_text(const Node& parent, const Node& at,
                                        const std::string& key) {
    const Entry* entry = parent.find(key);
    if (!entry) {
        wrong(at, fmt::format("'{}' is missing", key), "add it");
        return "";
    }
    return text_of(entry->value, key);
}

void PrintedWords::refuse_unknown_keys(const Node& node,
                                       std::initializer_list<std::string_view> known,
                                       const std::string& where) {
    for (const Entry& entry : node.entries) {
        if (node.find(entry.key.scalar) != &entry) {
            wrong(entry.key, fmt::format("'{}' is given a second time", entry.key.scalar),
                  "keep one");
        } else if (std::ranges::count(known, std::string_view{entry.key.scalar}) == 0) {
            const std::vector<std::string_view> words(known);
            unknown(entry.key, fmt::format("{} has no key '{}'", where, entry.key.scalar), words);
        }
    }
}

void PrintedWords::unknown(const Node& node, std::string message,
                           const std::vector<std::string_view>& words) {
    const auto near = text::closest(node.scalar, words);
    wrong(node, std::move(message),
          near ? fmt::format("did you mean '{}'?", *near)
               : fmt::format("known here: {}", fmt::join(words, ", ")));
}

} // namespace boardmark::input
