#pragma once

#include "../reading/attempt.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace boardmark::input {

/// What a price is by, in the words of a message: "by area, as in 'USD/ft2'".
std::string priced_by(std::string_view per);

/// The units that may stand behind the bar of such a price.
std::vector<std::string_view> denominators_of(std::string_view per);

/// Reads a price as a range, for one of what the value's `per` says (an SI unit, `piece`, `job`).
///
/// Accepted: `2.80 USD/ft`, `2.80 to 3.60 USD/ft`, `2.80 to 3.60 USD/ft likely 3.00`.
/// Refused: a range that does not rise, a likely price outside its range or without one, another
/// denominator, a comma, a price without its currency of three capital letters.
std::optional<Parsed> read_price_range(const Attempt& attempt);

} // namespace boardmark::input
