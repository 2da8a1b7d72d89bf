#include "code_data.hpp"

#include <algorithm>

namespace boardmark::reference {

const EmbeddedTable* CodeData::find(std::string_view subject) const {
    const std::string name = prefix + "-" + std::string{subject};
    const auto found = std::ranges::find(tables, name, &EmbeddedTable::name);
    return found == tables.end() ? nullptr : &*found;
}

std::vector<CodeData> codes_of(std::span<const EmbeddedTable> tables) {
    constexpr std::string_view ending = "-exposure";
    std::vector<CodeData> codes;
    for (const EmbeddedTable& table : tables) {
        if (table.name.ends_with(ending)) {
            const auto prefix = table.name.substr(0, table.name.size() - ending.size());
            codes.push_back({tables, std::string{prefix}});
        }
    }
    return codes;
}

} // namespace boardmark::reference
