#include <boardmark/units/number.hpp>
#include <boardmark/units/quantity.hpp>

#include <algorithm>
#include <cctype>
#include <cmath>
#include <optional>
#include <string>
#include <utility>

namespace boardmark::units {
namespace {

bool equal_but_for_case(std::string_view left, std::string_view right) {
    return std::ranges::equal(left, right, [](unsigned char a, unsigned char b) {
        return std::tolower(a) == std::tolower(b);
    });
}

/// Spellings met in the trade that are not read, and what to write for them.
struct Refused {
    std::string_view spelling;
    std::string_view why;
    std::string_view write;
};
constexpr Refused refused_units[] = {
    {"ton", "'ton' has three meanings", "'short ton' (2000 lb) or 't' (1000 kg)"},
    {"tons", "'tons' has three meanings", "'short ton' (2000 lb) or 't' (1000 kg)"},
    {"ksi", "'ksi' is not a unit known here", "psi (3 ksi is 3000 psi)"},
    {"lb/in2", "'lb/in2' is not a unit known here", "'psi'"},
    {"oz/cwt", "'oz/cwt' does not say which ounce", "'fl oz/cwt'"},
    {"oz", "'oz' does not say which ounce", "'fl oz' for a liquid"},
    {"kips", "'kips' is not a unit known here", "'kip'"},
    {"lbs", "'lbs' is not a unit known here", "'lb'"},
    {"sf", "'sf' is not a unit known here", "'ft2'"},
    {"sqft", "'sqft' is not a unit known here", "'ft2'"},
    {"mi/h", "'mi/h' is not a unit known here", "'mph'"},
    {"kph", "'kph' is not a unit known here", "'km/h'"},
    {"cy/h", "'cy/h' is not a unit known here", "'yd3/h'"},
    {"\"", "'\"' is not a unit known here", "'in'"},
    {"'", "''' is not a unit known here", "'ft'"},
};

Misreading unknown_unit(std::string_view text, std::size_t at) {
    const std::string amount{text.substr(0, at)};
    const std::string_view spelling = text.substr(at);
    for (const Refused& refused : refused_units) {
        if (refused.spelling == spelling) {
            return {at, std::string{refused.why}, "write " + std::string{refused.write}};
        }
    }
    constexpr std::string_view no_break_space = "\xC2\xA0";
    if (spelling.starts_with(no_break_space)) {
        return {at, "there is an invisible no-break space before the unit", "write a plain space"};
    }
    const std::string what = "'" + std::string{spelling} + "' is not a unit known here";
    for (const Unit& known : all_units()) {
        if (equal_but_for_case(known.spelling, spelling)) {
            return {at, what,
                    "write '" + amount + std::string{known.spelling} +
                        "' (units are case-sensitive)"};
        }
    }
    return {at, what, ""};
}

/// `3 ft 6 in`: feet and inches, as rulers are read.
std::optional<Reading<Quantity>> read_feet_and_inches(std::string_view text, double feet,
                                                      std::size_t unit_at) {
    constexpr std::string_view between = "ft ";
    const std::size_t inches_at = text.find_first_not_of(' ', unit_at + between.size());
    if (!text.substr(unit_at).starts_with(between) || inches_at == std::string_view::npos) {
        return std::nullopt;
    }
    const auto reading = read_leading_number(text.substr(inches_at));
    const auto* inches = std::get_if<LeadingNumber>(&reading);
    if (!inches) {
        return std::nullopt;
    }
    const std::size_t second = text.find_first_not_of(' ', inches_at + inches->length);
    if (second == std::string_view::npos || text.substr(second) != "in") {
        return std::nullopt;
    }
    constexpr double inches_of_a_foot = 12;
    if (inches->value < 0 || inches->value >= inches_of_a_foot || feet != std::floor(feet)) {
        return Misreading{inches_at, "whole feet and less than 12 inches are expected",
                          "write for example '3 ft 6 in'"};
    }
    const double part = inches->value / inches_of_a_foot;
    return Quantity{text.starts_with('-') ? feet - part : feet + part, find_unit("ft")};
}

/// The unit with its raised figure written plain: yd³ is yd3.
std::string plain(std::string_view spelling) {
    std::string result{spelling};
    for (const auto& [raised, figure] : {std::pair{std::string_view{"\xC2\xB2"}, "2"},
                                         std::pair{std::string_view{"\xC2\xB3"}, "3"}}) {
        for (std::size_t at = result.find(raised); at != std::string::npos;
             at = result.find(raised)) {
            result.replace(at, raised.size(), figure);
        }
    }
    return result;
}

/// A number that is one in its own unit may be beyond all numbers in the one inside.
Reading<Quantity> finite(Reading<Quantity> reading) {
    const auto* quantity = std::get_if<Quantity>(&reading);
    if (quantity && !std::isfinite(quantity->inside())) {
        return Misreading{0, "the number is too large", ""};
    }
    return reading;
}

} // namespace

Reading<Quantity> read_quantity(std::string_view text) {
    const auto reading = read_leading_number(text);
    if (const auto* wrong = std::get_if<Misreading>(&reading)) {
        return *wrong;
    }
    const auto [amount, length] = std::get<LeadingNumber>(reading);
    const std::size_t unit_at = text.find_first_not_of(' ', length);
    if (unit_at == std::string_view::npos) {
        return Misreading{0, "'" + std::string{text} + "' has no unit", ""};
    }
    if (auto lengths = read_feet_and_inches(text, amount, unit_at)) {
        return finite(*std::move(lengths));
    }
    const Unit* unit = find_unit(text.substr(unit_at));
    unit = unit ? unit : find_unit(plain(text.substr(unit_at)));
    if (!unit) {
        return unknown_unit(text, unit_at);
    }
    return finite(Quantity{amount, unit});
}

} // namespace boardmark::units
