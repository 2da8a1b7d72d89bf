#include "code_data.hpp"

#include "lookup.hpp"

#include <algorithm>

namespace boardmark::reference {

const EmbeddedTable* CodeData::find(std::string_view subject) const {
    const auto is_named_so = [&](std::string_view name) {
        return name.size() == prefix.size() + 1 + subject.size() && name.ends_with(subject) &&
               name.starts_with(prefix) && name[prefix.size()] == '-';
    };
    const auto found = std::ranges::find_if(tables, is_named_so, &EmbeddedTable::name);
    return found == tables.end() ? nullptr : &*found;
}

namespace {

/// A code among tables that stand in the order of their names.
CodeData code_among(std::span<const EmbeddedTable> tables, std::string_view prefix) {
    const auto first = std::ranges::lower_bound(tables, prefix, {}, &EmbeddedTable::name);
    const auto end = std::find_if_not(first, tables.end(), [&](const EmbeddedTable& table) {
        return table.name.starts_with(prefix);
    });
    return {std::span{first, end}, std::string{prefix}};
}

/// The codes that a list names, in its order.
std::vector<CodeData> listed_codes(const EmbeddedTable& list,
                                   std::span<const EmbeddedTable> tables) {
    std::vector<CodeData> codes;
    for (const EmbeddedRow& line : list.rows) {
        codes.push_back(code_among(tables, line.name));
    }
    return codes;
}

} // namespace

std::string_view code_note(const CodeData& data, std::string_view name) {
    const EmbeddedTable& printed = *data.find("exposure");
    const auto line = std::ranges::find(printed.rows, "code", &EmbeddedRow::group);
    return line == printed.rows.end() ? std::string_view{} : note(*line, name);
}

std::vector<CodeData> codes_of(std::span<const EmbeddedTable> tables) {
    const auto list = std::ranges::find(tables, "codes", &EmbeddedTable::name);
    if (list != tables.end()) {
        return listed_codes(*list, tables);
    }
    constexpr std::string_view ending = "-exposure";
    std::vector<CodeData> codes;
    for (const EmbeddedTable& table : tables) {
        if (table.name.ends_with(ending)) {
            const auto prefix = table.name.substr(0, table.name.size() - ending.size());
            codes.push_back(code_among(tables, prefix));
        }
    }
    return codes;
}

const std::vector<CodeData>& embedded_codes() {
    static const std::vector<CodeData> codes = codes_of(embedded_tables());
    return codes;
}

} // namespace boardmark::reference
