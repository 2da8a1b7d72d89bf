#include <boardmark/units/number.hpp>

#include <algorithm>
#include <cctype>
#include <cstdint>
#include <locale>
#include <optional>
#include <sstream>

namespace boardmark::units {
namespace {

bool is_digit(char character) {
    return character >= '0' && character <= '9';
}

std::size_t count_digits(std::string_view text, std::size_t from) {
    std::size_t end = from;
    while (end < text.size() && is_digit(text[end])) {
        ++end;
    }
    return end - from;
}

/// Digits, perhaps with one point, of which a double holds every step: their whole number and the
/// power of ten are exact, so the quotient is the nearest double, as the long way gives it.
std::optional<double> convert_exactly(std::string_view digits) {
    constexpr std::size_t most_digits = 15; // 10^15 < 2^53
    static constexpr double powers[] = {1e0, 1e1, 1e2,  1e3,  1e4,  1e5,  1e6,  1e7,
                                        1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15};
    std::int64_t whole = 0;
    std::size_t count = 0;
    std::size_t decimals = 0;
    bool point = false;
    for (const char character : digits) {
        if (character == '.') {
            point = true;
            continue;
        }
        if (!is_digit(character) || ++count > most_digits) {
            return std::nullopt;
        }
        whole = 10 * whole + (character - '0');
        decimals += point ? 1 : 0;
    }
    return static_cast<double>(whole) / powers[decimals];
}

/// Converts digits that the grammar has already accepted, whatever the process's locale is.
std::optional<double> convert(std::string_view digits) {
    if (const auto exact = convert_exactly(digits)) {
        return exact;
    }
    std::istringstream stream{std::string{digits}};
    stream.imbue(std::locale::classic());
    double value = 0;
    stream >> value;
    return stream ? std::optional{value} : std::nullopt;
}

std::string lower(std::string_view text) {
    std::string result{text};
    for (char& character : result) {
        character = static_cast<char>(std::tolower(static_cast<unsigned char>(character)));
    }
    return result;
}

Misreading no_digits(std::string_view text, std::size_t at) {
    const std::string rest = lower(text.substr(at));
    if (rest.starts_with(".nan") || rest.starts_with("nan") || rest.starts_with(".inf") ||
        rest.starts_with("inf")) {
        return {at, "'" + std::string{text} + "' is not a number that can be measured", ""};
    }
    return {at, "'" + std::string{text} + "' does not begin with a number", ""};
}

Misreading comma_in_number(std::string_view text, std::size_t comma) {
    std::string written{text};
    const std::size_t digits = count_digits(text, comma + 1);
    const bool groups_thousands = digits == 3;
    if (groups_thousands) {
        std::erase(written, ',');
        return {comma, "a number has no comma", "write '" + written + "'"};
    }
    written[comma] = '.';
    return {comma, "a number has no comma", "use a point: '" + written + "'"};
}

struct Fraction {
    double value;
    std::size_t end;
};

/// `/4` after the digits that end at `slash`, where those digits are the numerator.
Reading<Fraction> read_fraction(std::string_view text, std::size_t from, std::size_t slash) {
    const std::size_t denominator_length = count_digits(text, slash + 1);
    const auto numerator = convert(text.substr(from, slash - from));
    const auto denominator = convert(text.substr(slash + 1, denominator_length));
    if (!numerator || !denominator) {
        return Misreading{from, "the number is too large", ""};
    }
    if (*denominator == 0) {
        return Misreading{slash, "a fraction cannot divide by zero", ""};
    }
    return Fraction{*numerator / *denominator, slash + 1 + denominator_length};
}

bool is_fraction_bar(std::string_view text, std::size_t at) {
    return at + 1 < text.size() && text[at] == '/' && is_digit(text[at + 1]);
}

/// Where the fraction of a mixed number begins, as in `1 1/2` and `1-1/2`.
std::optional<std::size_t> mixed_fraction(std::string_view text, std::size_t after_whole) {
    if (after_whole >= text.size() || (text[after_whole] != ' ' && text[after_whole] != '-')) {
        return std::nullopt;
    }
    const std::size_t numerator = after_whole + 1;
    const std::size_t digits = count_digits(text, numerator);
    if (digits == 0 || !is_fraction_bar(text, numerator + digits)) {
        return std::nullopt;
    }
    return numerator;
}

std::size_t exponent_length(std::string_view text, std::size_t at) {
    if (at >= text.size() || (text[at] != 'e' && text[at] != 'E')) {
        return 0;
    }
    const std::size_t sign = at + 1 < text.size() && (text[at + 1] == '+' || text[at + 1] == '-');
    const std::size_t digits = count_digits(text, at + 1 + sign);
    return digits == 0 ? 0 : 1 + sign + digits;
}

Reading<LeadingNumber> read_unsigned(std::string_view text, std::size_t start) {
    const std::size_t whole_digits = count_digits(text, start);
    std::size_t end = start + whole_digits;
    const bool point = end < text.size() && text[end] == '.';
    const std::size_t decimals = point ? count_digits(text, end + 1) : 0;

    if (whole_digits == 0 && decimals == 0) {
        return no_digits(text, start);
    }
    if (whole_digits > 1 && text[start] == '0') {
        const std::size_t last_zero =
            std::min(text.find_first_not_of('0', start), start + whole_digits - 1);
        return Misreading{start, "a number has no leading zero",
                          "write '" + std::string{text.substr(last_zero)} + "'"};
    }
    if (whole_digits == 1 && text[start] == '0' && end < text.size() &&
        (text[end] == 'x' || text[end] == 'X')) {
        return Misreading{start, "numbers are decimal here", ""};
    }
    if (end < text.size() && text[end] == ',') {
        return comma_in_number(text, end);
    }
    if (point && decimals == 0) {
        return Misreading{end, "digits are missing after the point", ""};
    }
    if (is_fraction_bar(text, end)) {
        const auto fraction = read_fraction(text, start, end);
        if (const auto* wrong = std::get_if<Misreading>(&fraction)) {
            return *wrong;
        }
        const auto [value, fraction_end] = std::get<Fraction>(fraction);
        return LeadingNumber{value, fraction_end};
    }
    if (const auto numerator = mixed_fraction(text, end)) {
        const std::size_t slash = *numerator + count_digits(text, *numerator);
        const auto fraction = read_fraction(text, *numerator, slash);
        if (const auto* wrong = std::get_if<Misreading>(&fraction)) {
            return *wrong;
        }
        const auto whole = convert(text.substr(start, whole_digits));
        if (!whole) {
            return Misreading{start, "the number is too large", ""};
        }
        const auto [value, fraction_end] = std::get<Fraction>(fraction);
        return LeadingNumber{*whole + value, fraction_end};
    }
    if (point) {
        end += 1 + decimals;
        if (end < text.size() && text[end] == ',') {
            return Misreading{end, "a number has no comma",
                              "write one point and no other mark, as in 3000.5"};
        }
    }
    end += exponent_length(text, end);
    const auto value = convert(text.substr(start, end - start));
    if (!value) {
        return Misreading{start, "the number is too large", ""};
    }
    return LeadingNumber{*value, end};
}

} // namespace

Reading<LeadingNumber> read_leading_number(std::string_view text) {
    const bool negative = text.starts_with('-');
    const std::size_t start = negative || text.starts_with('+') ? 1 : 0;
    auto reading = read_unsigned(text, start);
    if (auto* number = std::get_if<LeadingNumber>(&reading); number && negative) {
        number->value = -number->value;
    }
    return reading;
}

Reading<double> read_number(std::string_view text) {
    const auto reading = read_leading_number(text);
    if (const auto* wrong = std::get_if<Misreading>(&reading)) {
        return *wrong;
    }
    const auto number = std::get<LeadingNumber>(reading);
    if (number.length != text.size()) {
        return Misreading{number.length,
                          "'" + std::string{text.substr(number.length)} +
                              "' follows the number; this value has no unit",
                          "write '" + std::string{text.substr(0, number.length)} + "'"};
    }
    return number.value;
}

} // namespace boardmark::units
