#include <boardmark/report/mix/row_report.hpp>
#include <boardmark/report/writing/words.hpp>
#include <boardmark/text/utf8.hpp>
#include <boardmark/units/unit.hpp>

#include "../writing/csv_cells.hpp"
#include "row_columns.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <iterator>
#include <stdexcept>

namespace boardmark::report {
namespace {

constexpr DescribedColumn mass_column{
    "mass.*", "lb/yd3", "kg/m3",
    "of each ingredient by its name; aggregates saturated surface-dry, admixtures the whole "
    "product; empty where it is dosed as needed"};
constexpr DescribedColumn asked_back_column{
    "asked_back", "", "", "figures of the file that are possible but hardly true"};
constexpr DescribedColumn error_column{"error", "", "", "why there is no mix"};

std::string_view row_unit(const DescribedColumn& column, core::UnitSystem system) {
    return system == core::UnitSystem::us ? column.us_unit : column.si_unit;
}

std::string row_heading(std::string_view name, std::string_view unit) {
    return csv_cell(unit.empty() ? std::string{name} : fmt::format("{} [{}]", name, unit));
}

double in_row_unit(double inside, std::string_view unit) {
    if (unit == "per yd3") {
        return inside * units::unit("yd3").to_inside(1);
    }
    return unit.empty() || unit == "per m3" ? inside : units::unit(unit).from_inside(inside);
}

/// Twelve digits. The library's own way takes a third of the time, where it has one.
void append_number(std::string& text, double number) {
#ifdef __cpp_lib_to_chars
    constexpr int digits = 12;
    std::array<char, 32> written;
    const auto end = std::to_chars(written.data(), written.data() + written.size(), number,
                                   std::chars_format::general, digits);
    text.append(written.data(), end.ptr);
#else
    fmt::format_to(std::back_inserter(text), "{:.12g}", number);
#endif
}

void append_figure(std::string& text, std::optional<double> inside, std::string_view unit) {
    if (!inside) {
        return;
    }
    if (!std::isfinite(*inside)) {
        throw std::logic_error{"a figure of a row is not finite"};
    }
    const double shown = in_row_unit(*inside, unit);
    append_number(text, shown == 0 ? 0.0 : shown);
}

std::string asked_back(const core::Requirements& requirements, core::UnitSystem system) {
    std::string told;
    for (const core::Phrase& phrase : requirements.improbable) {
        told += (told.empty() ? "" : "; ") + words(phrase, system);
    }
    return csv_cell(text::printable(told));
}

constexpr const char* row_end = "\r\n";

} // namespace

std::vector<DescribedColumn> row_columns() {
    std::vector<DescribedColumn> described;
    for (const RowColumn& column : columns_of_figures()) {
        described.push_back(column.described);
    }
    described.insert(described.end(), {mass_column, asked_back_column, error_column});
    return described;
}

std::vector<std::string> row_ingredients(const core::AnyCompleteMix& mix) {
    std::vector<const core::Material*> materials = core::materials_of(mix);
    std::ranges::stable_sort(materials, {},
                             [](const core::Material* one) { return core::role_of(one->kind); });
    std::vector<std::string> names{"water"};
    for (const core::Material* material : materials) {
        names.push_back(material->name);
    }
    return names;
}

RowWriter::RowWriter(std::vector<std::string> ingredients, core::UnitSystem system)
    : ingredients_{std::move(ingredients)}
    , system_{system} {}

std::string RowWriter::header() const {
    std::string text;
    for (const RowColumn& column : columns_of_figures()) {
        text += row_heading(column.described.name, row_unit(column.described, system_)) + ",";
    }
    for (const std::string& ingredient : ingredients_) {
        text += row_heading("mass." + ingredient, row_unit(mass_column, system_)) + ",";
    }
    return text + std::string{asked_back_column.name} + "," + std::string{error_column.name} +
           row_end;
}

std::string RowWriter::row(const RowResult& result) const {
    const core::Proportions& proportions = result.proportions;
    RowSource source{result, {}, core::cost_of(proportions), core::carbon_of(proportions)};
    source.verdict.add(result.findings);
    std::string text;
    constexpr std::size_t usual_length = 512;
    text.reserve(usual_length);
    for (const RowColumn& column : columns_of_figures()) {
        if (column.text) {
            text += column.text(source);
        } else {
            append_figure(text, column.figure(source), row_unit(column.described, system_));
        }
        text += ',';
    }
    for (const std::string& name : ingredients_) {
        const auto found =
            std::ranges::find(proportions.ingredients, name, &core::Ingredient::name);
        if (found != proportions.ingredients.end() && !found->by_trial) {
            append_figure(text, found->kg_m3, row_unit(mass_column, system_));
        }
        text += ',';
    }
    return text + asked_back(result.requirements, system_) + "," + row_end;
}

std::string RowWriter::row(const std::string& title, const core::Requirements& requirements,
                           const core::Unresolved& unresolved) const {
    const std::size_t between = columns_of_figures().size() + ingredients_.size();
    return csv_cell(title) + empty_cells(between) + asked_back(requirements, system_) + "," +
           csv_cell("no mix follows: " + words(unresolved.what, system_)) + row_end;
}

std::string RowWriter::row_of_error(const std::string& error) const {
    const std::size_t before = columns_of_figures().size() + ingredients_.size() + 1;
    return empty_cells(before) + csv_cell(text::printable(error)) + row_end;
}

std::string RowWriter::empty_cells(std::size_t count) const {
    return std::string(count, ',');
}

} // namespace boardmark::report
