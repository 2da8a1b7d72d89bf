#include "in_si.hpp"

#include <boardmark/units/number.hpp>
#include <boardmark/units/rounding.hpp>
#include <boardmark/units/unit.hpp>

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <cmath>

namespace boardmark::input {
namespace {

struct Counterpart {
    std::string_view us;
    std::string_view si;
};

constexpr Counterpart counterparts[] = {
    {"in", "mm"},        {"ft", "m"},        {"yd", "m"},
    {"lb", "kg"},        {"short ton", "t"}, {"fl oz", "mL"},
    {"gal", "L"},        {"ft3", "L"},       {"yd3", "m3"},
    {"psi", "MPa"},      {"psf", "kPa"},     {"lb/ft3", "kg/m3"},
    {"lb/yd3", "kg/m3"}, {"degF", "degC"},   {"fl oz/cwt", "mL/100 kg"},
    {"in2", "mm2"},      {"ft2", "m2"},      {"lbf", "kN"},
    {"ft/h", "m/h"},     {"mph", "km/h"},    {"yd3/h", "m3/h"}};

bool is_part_of_a_word(char letter) {
    return std::isalnum(static_cast<unsigned char>(letter)) != 0 ||
           std::string_view{"_/.-"}.find(letter) != std::string_view::npos;
}

/// The unit that a text begins with, the longest of those that fit, with its counterpart.
const Counterpart* leading_unit(std::string_view text) {
    const Counterpart* found = nullptr;
    for (const Counterpart& one : counterparts) {
        const bool whole = text.starts_with(one.us) && (text.size() == one.us.size() ||
                                                        !is_part_of_a_word(text[one.us.size()]));
        if (whole && (!found || found->us.size() < one.us.size())) {
            found = &one;
        }
    }
    return found;
}

/// To two digits, a temperature to the degree.
std::string amount_in_si(double amount, const Counterpart& unit) {
    const units::Unit& si = units::unit(unit.si);
    const double value = si.from_inside(units::unit(unit.us).to_inside(amount));
    const bool whole = si.dimension == units::Dimension::temperature || value == 0;
    const double step = whole ? 1 : std::pow(10, std::floor(std::log10(std::abs(value))) - 1);
    return fmt::format("{:.6g} {}", units::nearest({value, step}), unit.si);
}

} // namespace

std::string in_si(std::string_view text) {
    std::string written;
    for (std::size_t at = 0; at < text.size();) {
        const bool begins = std::isdigit(static_cast<unsigned char>(text[at])) != 0 &&
                            (at == 0 || !is_part_of_a_word(text[at - 1]));
        const auto reading = units::read_leading_number(text.substr(at));
        const auto* number = begins ? std::get_if<units::LeadingNumber>(&reading) : nullptr;
        if (!number) {
            written += text[at++];
            continue;
        }
        const std::size_t end = at + number->length;
        const std::size_t unit_at = std::min(text.find_first_not_of(' ', end), text.size());
        const Counterpart* unit = leading_unit(text.substr(unit_at));
        written += unit ? amount_in_si(number->value, *unit) : text.substr(at, end - at);
        at = unit ? unit_at + unit->us.size() : end;
    }
    return written;
}

} // namespace boardmark::input
