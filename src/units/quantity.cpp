#include <boardmark/units/number.hpp>
#include <boardmark/units/quantity.hpp>

#include <algorithm>
#include <cctype>

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
        return {at, "an invisible no-break space stands before the unit", "write a plain space"};
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
    const Unit* unit = find_unit(text.substr(unit_at));
    if (!unit) {
        return unknown_unit(text, unit_at);
    }
    return Quantity{amount, unit};
}

} // namespace boardmark::units
