#include "quantity_value.hpp"

#include <boardmark/text/closest.hpp>
#include <boardmark/text/letter_case.hpp>
#include <boardmark/units/number.hpp>
#include <boardmark/units/quantity.hpp>

#include "currency.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <vector>

namespace boardmark::input {
namespace {

using units::Dimension;
using units::Misreading;
using units::Quantity;

bool accepts(const Value& value, Dimension dimension) {
    return std::ranges::count(value.dimensions, std::optional{dimension}) > 0;
}

/// A part of the value that is read as one quantity, and where it begins.
struct Part {
    std::string_view text;
    std::size_t offset;
};

std::nullopt_t unknown_unit(const Attempt& attempt, Part part, const Misreading& wrong) {
    std::string advice = wrong.advice;
    if (advice.empty()) {
        const std::string written = text::lower(part.text.substr(wrong.offset));
        std::vector<std::string> spellings;
        for (const units::Unit& unit : units::all_units()) {
            if (accepts(attempt.value, unit.dimension)) {
                spellings.push_back(text::lower(unit.spelling));
            }
        }
        const std::vector<std::string_view> known(spellings.begin(), spellings.end());
        if (const auto near = text::closest(written, known)) {
            for (const units::Unit& unit : units::all_units()) {
                if (text::equal_but_for_case(unit.spelling, *near)) {
                    advice = fmt::format("did you mean '{}'?", unit.spelling);
                }
            }
        }
    }
    return attempt.refuse(wrong.what, std::move(advice), part.offset + wrong.offset);
}

/// A number that lacks its percent sign; a fraction is taken for what it was meant to be.
std::string percent_example(std::string_view written) {
    const auto reading = units::read_number(written);
    const auto* number = std::get_if<double>(&reading);
    const bool fraction = number && *number > 0 && *number < 1;
    return fraction ? fmt::format("{:.6g} %", 100 * *number) : std::string{written} + " %";
}

std::nullopt_t without_unit(const Attempt& attempt, Part part) {
    // Where the example is a word (air: exposure), the number itself shows how it is written.
    const bool example_is_a_word = std::ranges::count(attempt.value.words, attempt.example) > 0;
    return attempt.refuse(
        fmt::format("'{}' has no unit; {} is expected", part.text,
                    describe_dimensions(attempt.value)),
        example_is_a_word ? fmt::format("write for example '{}'", percent_example(part.text)) : "",
        part.offset);
}

std::optional<Quantity> read_one_quantity(const Attempt& attempt, Part part) {
    const auto reading = units::read_quantity(part.text);
    if (const auto* wrong = std::get_if<Misreading>(&reading)) {
        return wrong->what.ends_with("has no unit") ? without_unit(attempt, part)
                                                    : unknown_unit(attempt, part, *wrong);
    }
    const Quantity quantity = std::get<Quantity>(reading);
    if (!accepts(attempt.value, quantity.unit->dimension)) {
        return attempt.refuse(fmt::format("'{}' is {}; {} is expected", part.text,
                                          units::describe(quantity.unit->dimension),
                                          describe_dimensions(attempt.value)),
                              "", part.offset);
    }
    return quantity;
}

/// The step of the last digit of a number as it is written: 0.1 for 43.4, 1 for a fraction or a
/// whole number.
double last_digit(std::string_view written) {
    const std::size_t point = written.find('.');
    if (point == std::string_view::npos) {
        return 1;
    }
    const std::size_t end = written.find_first_not_of("0123456789", point + 1);
    const std::size_t decimals = std::min(end, written.size()) - point - 1;
    return std::pow(10.0, -static_cast<double>(decimals));
}

} // namespace

std::string describe_dimensions(const Value& value) {
    std::string text{units::describe(*value.dimensions[0])};
    if (value.dimensions[1]) {
        text += fmt::format(" or {}", units::describe(*value.dimensions[1]));
    }
    return text;
}

std::optional<Parsed> read_quantity(const Attempt& attempt) {
    const auto quantity = read_one_quantity(attempt, {attempt.node.scalar, 0});
    if (!quantity) {
        return std::nullopt;
    }
    Parsed parsed = attempt.start();
    parsed.dimension = quantity->unit->dimension;
    parsed.step = last_digit(attempt.node.scalar) * quantity->unit->factor;
    return attempt.finish(std::move(parsed), quantity->inside(), quantity->unit);
}

std::optional<Parsed> read_window(const Attempt& attempt) {
    const std::string& written = attempt.node.scalar;
    const std::size_t to = written.find(" to ");
    if (to == std::string::npos) {
        return attempt.refuse("two values are expected, the lowest and the highest", "");
    }
    constexpr std::size_t between = 4; // " to "
    const std::string_view all = written;
    const auto low = read_one_quantity(attempt, {all.substr(0, to), 0});
    const auto high = read_one_quantity(attempt, {all.substr(to + between), to + between});
    if (!low || !high || !attempt.in_range(low->inside(), low->unit) ||
        !attempt.in_range(high->inside(), high->unit)) {
        return std::nullopt;
    }
    if (low->inside() >= high->inside()) {
        return attempt.refuse("the first value must be the lower one", "");
    }
    attempt.ask_back(low->inside(), low->unit);
    attempt.ask_back(high->inside(), high->unit);
    Parsed parsed = attempt.start();
    parsed.number = low->inside();
    parsed.high = high->inside();
    return parsed;
}

namespace {

constexpr std::string_view piece = "piece";

/// What the trade calls a piece.
bool is_a_piece(std::string_view word) {
    constexpr std::string_view names[] = {"sack", "bag",  "big bag", "drum", "pail", "barrel",
                                          "tote", "each", "ea",      "unit", "pc",   "pieces"};
    return std::ranges::count(names, word) > 0;
}

/// A price by something that is no unit: a piece under another name, or a unit misspelt.
std::nullopt_t wrong_price_unit(const Attempt& attempt, std::string_view number,
                                std::string_view word, std::size_t offset) {
    if (is_a_piece(word)) {
        return attempt.refuse(fmt::format("'{}' is not a unit", word),
                              fmt::format("write '{}/piece', and what one piece holds as "
                                          "'piece: 94 lb'",
                                          number),
                              offset);
    }
    const auto named = units::read_quantity("1 " + std::string{word});
    if (const auto* wrong = std::get_if<Misreading>(&named); wrong && !wrong->advice.empty()) {
        return attempt.refuse(wrong->what, wrong->advice, offset);
    }
    return attempt.refuse(
        fmt::format("'{}' is not a price by mass, volume or piece", attempt.node.scalar), "");
}

} // namespace

std::optional<Parsed> read_price(const Attempt& attempt) {
    const std::string_view written = attempt.node.scalar;
    const auto amount = units::read_leading_number(written);
    if (const auto* wrong = std::get_if<Misreading>(&amount)) {
        return attempt.refuse(wrong->what, wrong->advice, wrong->offset);
    }
    const auto [number, length] = std::get<units::LeadingNumber>(amount);
    const std::size_t currency = written.find_first_not_of(' ', length);
    const std::size_t slash = written.find('/', length);
    const std::string_view word =
        slash == std::string_view::npos ? std::string_view{} : written.substr(slash + 1);
    const bool by_piece = word == piece;
    const units::Unit* unit = by_piece ? nullptr : units::find_unit(word);
    const bool by_mass_or_volume =
        unit && (unit->dimension == Dimension::mass || unit->dimension == Dimension::volume);
    if (!word.empty() && !by_piece && !unit) {
        return wrong_price_unit(attempt, written.substr(0, slash), word, slash + 1);
    }
    if (!(by_mass_or_volume || by_piece) ||
        !is_currency(written.substr(currency, slash - currency))) {
        return attempt.refuse(fmt::format("'{}' is not a price by mass, volume or piece", written),
                              "");
    }
    auto price = attempt.finish(attempt.start(), number, nullptr);
    if (price) {
        price->currency = written.substr(currency, slash - currency);
        if (unit) {
            price->dimension = unit->dimension;
            price->number /= unit->factor;
        }
    }
    return price;
}

} // namespace boardmark::input
