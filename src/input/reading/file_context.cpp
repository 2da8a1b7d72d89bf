#include "file_context.hpp"

#include "refuse.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::input {
namespace {

/// Whether a path is one of a pattern: `*` stands for any name.
bool matches(std::string_view pattern, const Path& path) {
    for (std::size_t i = 0; i < path.size(); ++i) {
        const std::size_t dot = pattern.find('.');
        const std::string_view part = pattern.substr(0, dot);
        const bool last = i + 1 == path.size();
        if ((part != "*" && part != path[i]) || last != (dot == std::string_view::npos)) {
            return false;
        }
        pattern.remove_prefix(last ? pattern.size() : dot + 1);
    }
    return true;
}

} // namespace

void FileContext::refuse(const Node& node, std::string message, std::string advice) const {
    input::refuse(node, std::move(message), std::move(advice), diagnostics);
}

void FileContext::ask_back(const Node& node, std::string message, std::string advice) const {
    refuse(node, std::move(message), std::move(advice));
    diagnostics.back().severity = Severity::warning;
}

void FileContext::missing(const Path& parent, std::string_view key, const std::string& why,
                          const std::string& advice) const {
    const Reading* reading = document.find(parent);
    const bool parent_is_told =
        !parent.empty() && (!reading || reading->node->kind != Node::Kind::mapping);
    if (parent_is_told) {
        return; // the parent's own fault says enough
    }
    const std::string what = (parent.empty() ? "the file" : dotted(parent)) + " has no '" +
                             std::string{key} + "'" + (why.empty() ? "" : "; " + why);
    if (reading) {
        refuse(*reading->key, what, advice);
    } else {
        Node top;
        top.source = root.source;
        refuse(top, what, advice);
    }
}

void FileContext::demand(const Path& path, const std::string& why) const {
    if (!has(path)) {
        missing(path.parent(), path.back(), why, add_example(path));
    }
}

std::string FileContext::add_example(const Path& path) const {
    std::string_view example;
    for (const std::span<const Field> table : fields.all()) {
        const auto field = std::ranges::find_if(
            table, [&](const Field& candidate) { return matches(candidate.path, path); });
        if (field != table.end()) {
            example = field->example;
            break;
        }
    }
    return fmt::format("add for example '{}'", example);
}

} // namespace boardmark::input
