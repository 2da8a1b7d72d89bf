#include "code_file.hpp"

#include "../reading/refuse.hpp"
#include "printed_tables.hpp"

#include <algorithm>

namespace boardmark::input {
namespace {

constexpr std::string_view named_by = "from ";

Node* value_at(Node& section, std::string_view key) {
    const auto found = std::ranges::find_if(
        section.entries, [&](const Entry& entry) { return entry.key.scalar == key; });
    return found == section.entries.end() ? nullptr : &found->value;
}

} // namespace

std::shared_ptr<const core::CodeTables> fetch_code(Node& root, Files& files,
                                                   const ReadOptions& options,
                                                   Diagnostics& diagnostics) {
    Node* asked = value_at(root, "requirements");
    Node* code = asked ? value_at(*asked, "code") : nullptr;
    if (!code || code->kind != Node::Kind::scalar || !code->scalar.starts_with(named_by)) {
        return nullptr;
    }
    const std::string name = code->scalar.substr(named_by.size());
    const SourceText* source =
        fetch(*code, "requirements.code", name, options.load, files, diagnostics);
    const auto tree = source ? read_tree(*source, diagnostics) : std::nullopt;
    if (!tree) {
        return nullptr;
    }
    const auto printed = read_printed_code(*tree, options.vocabulary, diagnostics);
    if (!printed || !options.vocabulary.code_of_print) {
        return nullptr;
    }
    const Node* reporting = value_at(root, "reporting");
    const bool us = reporting && reporting->scalar == "us";
    return std::make_shared<const core::CodeTables>(options.vocabulary.code_of_print(
        *printed, us ? core::UnitSystem::us : core::UnitSystem::si));
}

} // namespace boardmark::input
