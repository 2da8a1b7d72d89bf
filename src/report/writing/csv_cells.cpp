#include "csv_cells.hpp"

#include <boardmark/text/utf8.hpp>
#include <boardmark/units/unit.hpp>

#include <fmt/format.h>

#include <string_view>

namespace boardmark::report {

std::string csv_cell(std::string text) {
    constexpr std::string_view starts_a_formula = "=+-@\t\r";
    if (!text.empty() && starts_a_formula.find(text.front()) != std::string_view::npos) {
        text.insert(0, 1, '\'');
    }
    text = text::printable_lines(text);
    constexpr std::string_view blanks = " \t"; // at an end they are lost without quotes
    const bool has_blank_ends = !text.empty() && (blanks.find(text.front()) != blanks.npos ||
                                                  blanks.find(text.back()) != blanks.npos);
    if (!has_blank_ends && text.find_first_of(",\"\r\n") == std::string::npos) {
        return text;
    }
    std::string quoted = "\"";
    for (const char character : text) {
        quoted += character == '"' ? "\"\"" : std::string{character};
    }
    return quoted + "\"";
}

std::string csv_cell(std::optional<double> value) {
    // Twelve digits: no figure knows more, and conversion leaves noise in the last ones.
    return value ? fmt::format("{:.12g}", *value == 0 ? 0.0 : *value) : "";
}

std::string csv_row(const std::vector<std::string>& cells) {
    return fmt::format("{}\r\n", fmt::join(cells, ","));
}

std::string csv_cell_in(std::optional<double> inside, std::string_view unit) {
    return inside ? csv_cell(units::unit(unit).from_inside(*inside)) : "";
}

std::string remark(const core::Proportions& proportions, const std::vector<core::Check>& checks) {
    std::string text = proportions.estimate ? "estimate, must not be batched" : "";
    for (const core::Check& check : checks) {
        if (check.verdict == core::Verdict::fails) {
            text += (text.empty() ? "" : "; ") + std::string{"not met: "} + check.id;
        }
    }
    return text;
}

} // namespace boardmark::report
