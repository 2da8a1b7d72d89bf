#include "bar_size.hpp"

#include <boardmark/units/quantity.hpp>

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace boardmark::input {
namespace {

constexpr std::string_view number_sign = "No. ";

bool is_bar_digit(char letter) {
    return letter >= '0' && letter <= '9';
}

/// The digits of a text that holds one whole number: 4 of `#4`; nothing of `1/2 in`.
std::string only_number(const std::string& written) {
    const auto first = std::ranges::find_if(written, is_bar_digit);
    const auto end = std::find_if_not(first, written.end(), is_bar_digit);
    return std::any_of(end, written.end(), is_bar_digit) ? "" : std::string(first, end);
}

/// The millimetres of `16 mm`, or nothing.
std::optional<double> millimetres(const std::string& written) {
    const auto reading = units::read_quantity(written);
    const auto* quantity = std::get_if<units::Quantity>(&reading);
    return quantity && quantity->unit->spelling == "mm" ? std::optional{quantity->inside()}
                                                        : std::nullopt;
}

const core::BarSize* find_bar(const std::string& written, const std::vector<core::BarSize>& sizes) {
    const auto mm = millimetres(written);
    const auto found = std::ranges::find_if(sizes, [&](const core::BarSize& size) {
        return size.name == written || (mm && !size.name.starts_with(number_sign) &&
                                        std::abs(size.diameter_mm - *mm) < 1e-6);
    });
    return found == sizes.end() ? nullptr : &*found;
}

/// The names of the sizes that carry a number, or of those in millimetres.
std::string names(const std::vector<core::BarSize>& sizes, bool numbered) {
    std::vector<std::string_view> names;
    for (const core::BarSize& size : sizes) {
        if (size.name.starts_with(number_sign) == numbered) {
            names.push_back(size.name);
        }
    }
    return fmt::format("made are {}", fmt::join(names, ", "));
}

/// What was meant by `#4`, `4`, `no 4`; by `T16`, `16`; else both ways to write a bar.
std::string advice(const std::string& written, const std::vector<core::BarSize>& sizes) {
    if (millimetres(written)) {
        return names(sizes, false);
    }
    const std::string digits = only_number(written);
    const std::string numbered = std::string{number_sign} + digits;
    if (!digits.empty() && find_bar(numbered, sizes)) {
        const std::string in_mm = digits + " mm";
        return find_bar(in_mm, sizes) ? fmt::format("write '{}' or '{}'", numbered, in_mm)
                                      : fmt::format("write '{}'", numbered);
    }
    if (written.starts_with(number_sign)) {
        return names(sizes, true);
    }
    if (!digits.empty() && find_bar(digits + " mm", sizes)) {
        return fmt::format("write '{} mm'", digits);
    }
    return "write for example 'No. 4' or '16 mm'";
}

} // namespace

const core::BarSize* read_bar(const Section& section, const std::vector<core::BarSize>& sizes) {
    const Parsed* bar = section.value("bar");
    if (!bar) {
        return nullptr;
    }
    const core::BarSize* size = find_bar(bar->text, sizes);
    if (!size) {
        section.refuse("bar", ": '" + bar->text + "' is not a size of bar known here",
                       advice(bar->text, sizes));
    }
    return size;
}

} // namespace boardmark::input
