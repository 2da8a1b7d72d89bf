#include "row_header.hpp"

#include <boardmark/text/closest.hpp>
#include <boardmark/text/letter_case.hpp>

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::input {
namespace {

using core::RecordColumn;

std::string trimmed(std::string_view text) {
    const std::size_t first = text.find_first_not_of(" \t");
    if (first == std::string_view::npos) {
        return "";
    }
    return std::string{text.substr(first, text.find_last_not_of(" \t") - first + 1)};
}

template <class Row>
std::string heading_text(const RecordColumn<Row>& column) {
    return column.si_unit.empty() ? std::string{column.name}
                                  : fmt::format("{} ({})", column.name, column.si_unit);
}

/// A header that is being read.
template <class Row>
class Header {
public:
    Header(const std::vector<Node>& cells, Diagnostics& diagnostics)
        : cells_(cells)
        , diagnostics_(diagnostics) {}

    std::optional<std::vector<FileColumn<Row>>> read() {
        const std::size_t before = diagnostics_.size();
        std::vector<FileColumn<Row>> found;
        for (const Node& cell : cells_) {
            if (const auto column = read(cell)) {
                const bool twice =
                    std::ranges::count(found, column->column, &FileColumn<Row>::column) > 0;
                if (twice) {
                    refuse(cell,
                           fmt::format("the column '{}' is given twice", column->column->name),
                           "delete one");
                }
                found.push_back(*column);
            }
        }
        if (diagnostics_.size() == before) { // else one that is missing may be a misspelt one
            demand_required(found);
        }
        return diagnostics_.size() == before ? std::optional{found} : std::nullopt;
    }

private:
    std::nullopt_t refuse(const Node& cell, std::string message, std::string advice) {
        diagnostics_.push_back(
            cell.source->diagnostic(cell.underline(), std::move(message), std::move(advice)));
        return std::nullopt;
    }

    std::optional<FileColumn<Row>> read(const Node& cell) {
        const Heading heading = heading_of(cell);
        const auto known = core::record_columns<Row>();
        const auto column = std::ranges::find_if(known, [&](const RecordColumn<Row>& candidate) {
            return text::equal_but_for_case(candidate.name, heading.name);
        });
        if (column == known.end()) {
            return refuse_unknown(cell, heading);
        }
        return with_unit(cell, heading, *column);
    }

    std::nullopt_t refuse_unknown(const Node& cell, const Heading& heading) {
        std::vector<std::string_view> names;
        for (const auto& column : core::record_columns<Row>()) {
            names.push_back(column.name);
        }
        if (cells_.size() == 1 && cell.scalar.find(';') != std::string::npos) {
            return refuse(cell, "the columns are separated by semicolons",
                          "save the file with commas between the cells");
        }
        const auto near = text::closest(heading.name, names);
        return refuse(cell, fmt::format("'{}' is not a column known here", heading.name),
                      near ? fmt::format("did you mean '{}'?", *near)
                           : fmt::format("one of: {}", fmt::join(names, ", ")));
    }

    std::optional<FileColumn<Row>> with_unit(const Node& cell, const Heading& heading,
                                             const RecordColumn<Row>& column) {
        const std::string advice = fmt::format("write '{}'", heading_text(column));
        if (column.si_unit.empty()) {
            if (!heading.unit.empty()) {
                return refuse(cell, fmt::format("'{}' has no unit", column.name), advice);
            }
            return FileColumn<Row>{&column, nullptr};
        }
        if (heading.unit.empty()) {
            return refuse(cell, fmt::format("'{}' does not say its unit", column.name), advice);
        }
        const units::Unit* unit = units::find_unit(heading.unit);
        if (!unit) {
            return refuse(cell, fmt::format("'{}' is not a unit known here", heading.unit), advice);
        }
        const auto dimension = units::unit(column.si_unit).dimension;
        if (unit->dimension != dimension) {
            return refuse(cell,
                          fmt::format("'{}' is {}; {} is expected", heading.unit,
                                      units::describe(unit->dimension), units::describe(dimension)),
                          advice);
        }
        return FileColumn<Row>{&column, unit};
    }

    void demand_required(const std::vector<FileColumn<Row>>& found) {
        for (const auto& column : core::record_columns<Row>()) {
            if (column.required &&
                std::ranges::count(found, &column, &FileColumn<Row>::column) == 0) {
                refuse(cells_.front(), fmt::format("there is no column '{}'", column.name),
                       fmt::format("add '{}'", heading_text(column)));
            }
        }
    }

    const std::vector<Node>& cells_;
    Diagnostics& diagnostics_;
};

} // namespace

Heading heading_of(const Node& cell) {
    const std::string text = trimmed(cell.scalar);
    const std::size_t opened = text.rfind('(');
    if (opened == std::string::npos || !text.ends_with(')')) {
        return {text, ""};
    }
    return {trimmed(text.substr(0, opened)),
            trimmed(text.substr(opened + 1, text.size() - opened - 2))};
}

template <class Row>
std::optional<std::vector<FileColumn<Row>>> columns_of(const std::vector<Node>& header,
                                                       Diagnostics& diagnostics) {
    return Header<Row>{header, diagnostics}.read();
}

template std::optional<std::vector<FileColumn<core::RecordedTrial>>>
columns_of(const std::vector<Node>&, Diagnostics&);
template std::optional<std::vector<FileColumn<core::RecordedSpecimen>>>
columns_of(const std::vector<Node>&, Diagnostics&);

} // namespace boardmark::input
