#include "table_figure.hpp"

#include <boardmark/units/number.hpp>
#include <boardmark/units/quantity.hpp>
#include <boardmark/units/unit.hpp>

#include <fmt/format.h>

namespace boardmark::input {
namespace {

using units::Dimension;

bool is_share(const FigureForm& form) {
    return form.dimension == Dimension::mass_ratio;
}

bool is_percent(const units::Unit& unit) {
    return unit.dimension == Dimension::percentage;
}

bool fits(const units::Unit& unit, const FigureForm& form) {
    return unit.dimension == form.dimension || (is_share(form) && is_percent(unit));
}

std::string_view described(const FigureForm& form) {
    return is_share(form) ? "a ratio (a bare number, %)" : units::describe(form.dimension);
}

std::string_view inside_unit(const FigureForm& form) {
    switch (form.dimension) {
    case Dimension::length:
        return " mm";
    case Dimension::stress:
        return " MPa";
    case Dimension::mass_per_volume:
        return " kg/m3";
    case Dimension::percentage:
        return " %";
    default:
        return "";
    }
}

FigureFault wrong_dimension(std::string_view written, const units::Unit& unit,
                            const FigureForm& form) {
    return {fmt::format("'{}' is {}; {} is expected", written, units::describe(unit.dimension),
                        described(form)),
            is_share(form)
                ? "write no unit, or '%'"
                : fmt::format("write it in a unit such as '{}'", inside_unit(form).substr(1))};
}

std::variant<double, FigureFault> in_range(std::string_view written, double value,
                                           const FigureForm& form) {
    if (value >= form.least && value <= form.most) {
        return value;
    }
    return FigureFault{fmt::format("'{}' is outside of {:g} to {:g}{}", written, form.least,
                                   form.most, inside_unit(form)),
                       is_share(form) ? "check the figure; 40 % is written 0.40 or '40 %'"
                                      : "check the figure and its unit"};
}

std::variant<double, FigureFault> inside(std::string_view written, double amount,
                                         const units::Unit& unit, const FigureForm& form) {
    if (!fits(unit, form)) {
        return wrong_dimension(written, unit, form);
    }
    const double value = unit.to_inside(amount);
    return in_range(written, is_share(form) && is_percent(unit) ? value / 100 : value, form);
}

} // namespace

std::optional<FigureFault> fault_of_unit(std::string_view unit, const FigureForm& form) {
    if (unit.empty()) {
        return std::nullopt;
    }
    const units::Unit* known = units::find_unit(unit);
    if (!known) {
        return FigureFault{fmt::format("'{}' is not a unit known here", unit),
                           "write for example 'MPa', 'kg/m3' or '%'"};
    }
    return fits(*known, form) ? std::nullopt : std::optional{wrong_dimension(unit, *known, form)};
}

std::variant<double, FigureFault> read_figure(std::string_view written, std::string_view unit,
                                              const FigureForm& form) {
    const auto bare = units::read_number(written);
    if (const auto* number = std::get_if<double>(&bare)) {
        if (const units::Unit* known = units::find_unit(unit)) {
            return inside(written, *number, *known, form);
        }
        if (is_share(form)) {
            return in_range(written, *number, form);
        }
        return FigureFault{
            fmt::format("'{}' has no unit; {} is expected", written, described(form)),
            "write it here, or as 'unit' of the column or the table"};
    }
    const auto reading = units::read_quantity(written);
    if (const auto* quantity = std::get_if<units::Quantity>(&reading)) {
        return inside(written, quantity->amount, *quantity->unit, form);
    }
    return FigureFault{fmt::format("'{}' is not a figure", written),
                       "write a number, a quantity with its unit, or ~ for a gap"};
}

} // namespace boardmark::input
