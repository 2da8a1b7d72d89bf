#pragma once

#include "../reading/attempt.hpp"

namespace boardmark::input {

/// The dimensions of a value in the words of a message: "a length (in, ft, mm, m)".
std::string describe_dimensions(const Value& value);

/// `4500 psi`
std::optional<Parsed> read_quantity(const Attempt& attempt);

/// `6 in to 8 in`
std::optional<Parsed> read_window(const Attempt& attempt);

/// `165 USD/short ton`: the amount, a currency of three capital letters, a mass, a volume or a
/// piece, which has no dimension.
std::optional<Parsed> read_price(const Attempt& attempt);

} // namespace boardmark::input
