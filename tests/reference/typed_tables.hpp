#pragma once

#include <filesystem>
#include <fstream>
#include <map>
#include <string>
#include <string_view>
#include <vector>

/// tests/reference/typed: the figures of data/ typed a second time, from the print and not from
/// data/.
///
/// source: where the figures were read, or "memory"   table NAME | NAME   unit UNIT of bare cells
/// columns NAME [unit] | NAME [unit], or the axis: columns us: 1 in | 2 in (si:, both:)
/// NAME {GROUP} @ PLACE = CELL | CELL ; NOTE: TEXT — with a place `3 in`, `1 in to 2 in` or
/// `1 in & 25 mm` (inch-pound & metric). A dash is a gap in the print. A star marks a rule of this
/// project, or a bound that no print has: the second copy holds it and proves nothing. A tilde
/// marks a figure of this print from which data/ differs.
namespace typed {

struct Row {
    std::string name;
    std::string group;
    std::string place;
    std::vector<std::string> cells;
    std::map<std::string, std::string> notes;
    std::string line;
};

struct Table {
    std::string source{};
    std::vector<std::string> names{}; ///< tables of data/ that print the same
    std::string unit{};
    std::vector<std::string> columns{}; ///< their names; none of an axis
    std::vector<std::string> units{};   ///< of the columns, where they have their own
    std::map<std::string, std::vector<std::string>> axes{}; ///< under us, si or both
    std::vector<Row> rows{};
};

inline std::string trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(' ');
    const auto last = text.find_last_not_of(' ');
    return first == std::string_view::npos ? "" : std::string{text.substr(first, last - first + 1)};
}

inline std::vector<std::string> parts(std::string_view text, std::string_view separator) {
    std::vector<std::string> found;
    while (true) {
        const auto at = text.find(separator);
        found.push_back(trimmed(text.substr(0, at)));
        if (at == std::string_view::npos) {
            return found;
        }
        text.remove_prefix(at + separator.size());
    }
}

/// Cuts what stands between both marks, and the marks, out of the text.
inline std::string cut(std::string& text, char open, char close) {
    const auto begin = text.find(open);
    const auto end = text.rfind(close);
    if (begin == std::string::npos || end == std::string::npos) {
        return "";
    }
    const std::string inside = trimmed(std::string_view{text}.substr(begin + 1, end - begin - 1));
    text = trimmed(text.erase(begin, end - begin + 1));
    return inside;
}

inline void read_columns(const std::string& text, Table& table) {
    for (const std::string axis : {"us", "si", "both"}) {
        if (text.starts_with(axis + ": ")) {
            table.axes[axis] = parts(text.substr(axis.size() + 2), "|");
            return;
        }
    }
    for (std::string column : parts(text, "|")) {
        table.units.push_back(cut(column, '[', ']'));
        table.columns.push_back(column);
    }
}

inline Row read_row(const std::string& line) {
    Row row;
    row.line = line;
    const auto equals = line.find(" = ");
    std::string head = line.substr(0, equals);
    std::vector<std::string> said = parts(line.substr(equals + 3), " ; ");
    row.cells = parts(said.front(), "|");
    said.erase(said.begin());
    for (const std::string& note : said) {
        const auto colon = note.find(": ");
        row.notes[note.substr(0, colon)] = note.substr(colon + 2);
    }
    if (const auto at = head.find("@ "); at != std::string::npos) {
        row.place = head.substr(at + 2);
        head.erase(at);
    }
    row.group = cut(head, '{', '}');
    row.name = trimmed(head);
    return row;
}

inline std::vector<Table> tables(const std::filesystem::path& folder) {
    std::vector<Table> found;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        std::ifstream file{entry.path()};
        std::string source;
        for (std::string line; std::getline(file, line);) {
            if (line.empty() || line.starts_with("#")) {
                continue;
            }
            if (line.starts_with("source: ")) {
                source = line.substr(8);
            } else if (line.starts_with("table ")) {
                found.push_back({.source = source, .names = parts(line.substr(6), "|")});
            } else if (line.starts_with("unit ")) {
                found.back().unit = line.substr(5);
            } else if (line.starts_with("columns ")) {
                read_columns(line.substr(8), found.back());
            } else {
                found.back().rows.push_back(read_row(line));
            }
        }
    }
    return found;
}

} // namespace typed
