#pragma once

#include "table_form.hpp"

#include <string>
#include <string_view>
#include <variant>

namespace boardmark::input {

/// What is wrong with what is written, and what would be right.
struct FigureFault {
    std::string message;
    std::string advice;
};

/// What is wrong with the unit of a column of such figures, or nothing. No unit is none.
std::optional<FigureFault> fault_of_unit(std::string_view unit, const FigureForm& form);

/// A bare number in a unit of the table, or a quantity with its own, as an inside value; a share as
/// a part of one.
std::variant<double, FigureFault> read_figure(std::string_view written, std::string_view unit,
                                              const FigureForm& form);

} // namespace boardmark::input
