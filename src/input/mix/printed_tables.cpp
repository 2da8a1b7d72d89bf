#include "printed_tables.hpp"

#include "loose_words.hpp"
#include "printed_table.hpp"
#include "printed_words.hpp"
#include "table_form.hpp"

#include <algorithm>
#include <utility>

namespace boardmark::input {
namespace {

std::vector<std::string_view> subjects() {
    std::vector<std::string_view> names;
    for (const TableForm& form : table_forms()) {
        names.push_back(form.subject);
    }
    return names;
}

/// Whether the row of the code says that chloride is counted by the concrete: its limits stand in
/// other tables, with other units then.
bool counts_by_concrete(const Node& root) {
    const Entry* tables = root.find("tables");
    const Entry* exposure = tables ? tables->value.find("exposure") : nullptr;
    const Entry* rows = exposure ? exposure->value.find("rows") : nullptr;
    return rows && std::ranges::any_of(rows->value.items, [](const Node& row) {
               const Entry* group = row.find("group");
               const Entry* of = row.find("chloride_of");
               return group && group->value.scalar == "code" && of &&
                      of->value.scalar == "concrete";
           });
}

} // namespace

std::optional<core::PrintedCode> read_printed_code(const Node& root, const core::Vocabulary& known,
                                                   Diagnostics& diagnostics) {
    core::PrintedCode code;
    Node top;
    top.source = root.source;
    const Entry* name = root.find("code");
    PrintedWords words{diagnostics};
    const TableOfCode of{name ? name->value.scalar : "", counts_by_concrete(root)};
    words.refuse_unknown_keys(root, {"boardmark", "code", "tables"}, "the file of a code");
    code.name = words.demanded_text(root, top, "code");
    if (std::ranges::count(known.codes, code.name) > 0) {
        words.wrong(name->value,
                    "code: '" + code.name + "' is the name of a code that is known here",
                    "give it a name of its own, with its edition");
    }
    const Entry* tables = root.find("tables");
    if (!tables || tables->value.kind != Node::Kind::mapping) {
        words.wrong(tables ? tables->value : top, "'tables' is missing: it holds the code's tables",
                    "write 'tables:' and below it 'exposure:'");
        return std::nullopt;
    }
    for (const Entry& entry : tables->value.entries) {
        const TableForm* form = find_table_form(entry.key.scalar);
        if (tables->value.find(entry.key.scalar) != &entry) {
            words.wrong(entry.key, "'" + entry.key.scalar + "' is given a second time", "keep one");
        } else if (!form) {
            words.unknown(entry.key, "'" + entry.key.scalar + "' is not a table of a code",
                          subjects());
        } else {
            code.tables.push_back(read_printed_table(entry, *form, of, words));
        }
    }
    if (!tables->value.find("exposure")) {
        words.wrong(tables->key, "the code has no table 'exposure'", "add it");
    }
    if (words.sound()) {
        tell_loose_words(code, known, tables->value,
                         [&](const Node& node, std::string message, std::string advice) {
                             words.wrong(node, std::move(message), std::move(advice));
                         });
    }
    return words.sound() ? std::optional{std::move(code)} : std::nullopt;
}

} // namespace boardmark::input
