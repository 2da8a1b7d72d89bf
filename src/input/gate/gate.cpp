#include "gate.hpp"

#include "encoding.hpp"
#include "plain_tree.hpp"
#include "tree_builder.hpp"

#include <yaml-cpp/exceptions.h>
#include <yaml-cpp/parser.h>

#include <sstream>

namespace boardmark::input {
namespace {

void refuse_tabs(const SourceText& source) {
    for (std::size_t number = 0; number < source.line_count(); ++number) {
        const std::string_view line = source.line(number);
        const std::size_t text_at = line.find_first_not_of(" \t");
        const std::size_t tab_at = line.find('\t');
        if (text_at != std::string_view::npos && line[text_at] != '#' && tab_at < text_at) {
            throw Refused{{{number, tab_at}},
                          "line " + std::to_string(number + 1) + " is indented with a tab",
                          "use spaces"};
        }
    }
}

bool is_word(std::string_view text) {
    constexpr std::string_view letters =
        "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789_-";
    return !text.empty() && text.find_first_not_of(letters) == std::string_view::npos;
}

/// The last line up to a place that reads `key:value`, with no space after the colon.
std::optional<Refused> missing_space(const SourceText& source, std::size_t last_line) {
    for (std::size_t back = 0; back <= last_line && back < 3; ++back) {
        const std::size_t number = last_line - back;
        const std::string_view line = source.line(number);
        const std::size_t start = line.find_first_not_of(' ');
        const std::size_t colon = line.find(':');
        if (start == std::string_view::npos || colon == std::string_view::npos ||
            colon + 1 >= line.size() || line[colon + 1] == ' ' ||
            !is_word(line.substr(start, colon - start))) {
            continue;
        }
        const std::string key{line.substr(start, colon - start)};
        return Refused{{{number, start}, line.size() - start, colon - start},
                       "a space is missing after '" + key + ":'",
                       "write '" + key + ": " + std::string{line.substr(colon + 1)} + "'"};
    }
    return std::nullopt;
}

/// A line up to a place on which text follows a closing quote.
std::optional<Refused> text_after_quote(const SourceText& source, std::size_t last_line) {
    for (std::size_t back = 0; back <= last_line && back < 2; ++back) {
        const std::size_t number = last_line - back;
        const std::string_view line = source.line(number);
        const std::size_t colon = line.find(": ");
        const std::size_t quote =
            colon == std::string_view::npos ? colon : line.find_first_not_of(' ', colon + 1);
        if (quote == std::string_view::npos || (line[quote] != '"' && line[quote] != '\'')) {
            continue;
        }
        const std::size_t length = source.quoted_length({number, quote});
        const std::size_t after = line.find_first_not_of(' ', quote + length);
        if (length > 0 && after != std::string_view::npos && line[after] != '#') {
            return Refused{{{number, quote}, line.size() - quote, after - quote},
                           "text follows the closing quote",
                           "put all of it between quotes, of the other kind if need be"};
        }
    }
    return std::nullopt;
}

/// The YAML library's complaint in the words of this program.
Refused translated(const SourceText& source, const YAML::ParserException& fault,
                   const Node* innermost_flow) {
    const Spot spot = spot_of(fault.mark);
    if (const auto hint = missing_space(source, std::min(spot.line, source.line_count()))) {
        return *hint;
    }
    if (const auto hint = text_after_quote(source, std::min(spot.line, source.line_count()))) {
        return *hint;
    }
    const std::string_view complaint = fault.msg;
    const auto says = [&](std::string_view words) {
        return complaint.find(words) != std::string_view::npos;
    };
    if (says("anchor") || says("alias")) {
        return {{spot}, "anchors and aliases are not supported", "write the value out"};
    }
    if (innermost_flow && says("flow")) {
        return not_closed(*innermost_flow);
    }
    constexpr std::size_t longest_key = 1024; // where the YAML library stops looking for the colon
    if (says("illegal map value") && spot.byte > longest_key) {
        return {{{spot.line, 0}}, "a name is too long", "give it a short name"};
    }
    if (says("illegal map value")) {
        return {{spot},
                "there is a colon and a space inside this value",
                "put the text between quotes"};
    }
    if (says("unknown token")) {
        return {{spot}, "no value begins with this character", "put the text between quotes"};
    }
    if (says("end of map not found")) {
        return {{spot},
                "this line does not belong to the mapping above",
                "indent it like the keys beside it, and write 'key: value'"};
    }
    if (says("illegal EOF in scalar")) {
        return {{spot}, "a quote is never closed", "close it on its line"};
    }
    if (says("tab")) {
        return {{spot}, "there is a tab where spaces belong", "use spaces"};
    }
    return {{spot}, "this is not YAML: " + std::string{complaint}};
}

Node parsed(const SourceText& source, bool by_library) {
    if (!by_library) {
        if (auto plain = plain_tree(source)) {
            return std::move(*plain);
        }
    }
    std::istringstream stream{source.text()};
    TreeBuilder builder{source};
    try {
        YAML::Parser parser{stream};
        if (!parser.HandleNextDocument(builder)) {
            throw Refused{{}, "the file is empty", "copy a file of the examples and change it"};
        }
        Node root = builder.take_root();
        parser.HandleNextDocument(builder);
        return root;
    } catch (const YAML::ParserException& fault) {
        throw translated(source, fault, builder.innermost_flow_node());
    }
}

std::optional<Node> passed(const SourceText& source, bool by_library, Diagnostics& diagnostics) {
    try {
        if (source.text().size() > largest_file) {
            throw Refused{{}, "the file is larger than 1 MiB; a mix file has a few kilobytes"};
        }
        demand_text(source);
        refuse_tabs(source);
        return parsed(source, by_library);
    } catch (const Refused& refused) {
        Diagnostic diagnostic = source.diagnostic(refused.where, refused.message, refused.advice);
        const bool whole_file = source.text().size() > largest_file || source.line_count() == 0;
        if (whole_file) {
            diagnostic.line = 0;
            diagnostic.excerpt.clear();
        }
        diagnostics.push_back(std::move(diagnostic));
        return std::nullopt;
    }
}

} // namespace

std::optional<Node> pass_gate(const SourceText& source, Diagnostics& diagnostics) {
    return passed(source, false, diagnostics);
}

std::optional<Node> pass_gate_by_library(const SourceText& source, Diagnostics& diagnostics) {
    return passed(source, true, diagnostics);
}

} // namespace boardmark::input
