#include "value_reader.hpp"

#include <boardmark/text/closest.hpp>
#include <boardmark/text/letter_case.hpp>
#include <boardmark/text/utf8.hpp>
#include <boardmark/units/number.hpp>
#include <boardmark/units/quantity.hpp>

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <vector>

namespace boardmark::input {
namespace {

using units::Dimension;
using units::Misreading;
using units::Quantity;

constexpr std::size_t longest_text = 200;

/// One value that is being read, with what a message needs.
struct Attempt {
    const Node& node;
    const Value& value;
    const std::string& path;
    std::string_view example;
    Diagnostics& diagnostics;

    std::nullopt_t refuse(std::string what, std::string advice, std::size_t caret = 0) const {
        Underline where = node.underline();
        where.caret = caret + (node.quoted ? 1 : 0);
        diagnostics.push_back(node.source->diagnostic(
            where, path + ": " + std::move(what),
            advice.empty() && !example.empty() ? fmt::format("write for example '{}'", example)
                                               : std::move(advice)));
        return std::nullopt;
    }

    void warn(std::string what, std::string advice) const {
        refuse(std::move(what), std::move(advice));
        diagnostics.back().severity = Severity::warning;
    }
};

std::string joined(std::span<const std::string_view> words) {
    return fmt::format("'{}'", fmt::join(words, "', '"));
}

bool accepts(const Value& value, Dimension dimension) {
    return std::ranges::count(value.dimensions, std::optional{dimension}) > 0;
}

std::string describe_dimensions(const Value& value) {
    std::string text{units::describe(*value.dimensions[0])};
    if (value.dimensions[1]) {
        text += fmt::format(" or {}", units::describe(*value.dimensions[1]));
    }
    return text;
}

bool below(double number, const Range& range) {
    return range.low_itself ? number < range.low : number <= range.low;
}

/// A number that is out of range by a factor that points to another unit.
std::string rescaled(double amount, const Value& value, const std::string& unit_text) {
    for (const double factor : {0.001, 0.01, 0.1, 100.0}) {
        const double guess = amount * factor;
        if (!below(guess, value.range) && guess <= value.range.high && amount != 0) {
            return fmt::format("{:.6g}{}?", guess, unit_text);
        }
    }
    return "";
}

const Range& range_of(const Value& value, const units::Unit* unit) {
    const bool second = unit && value.dimensions[1] == unit->dimension;
    return second ? value.second_range : value.range;
}

/// Checks a range in the unit in which the value was written.
bool in_range(const Attempt& attempt, double inside, const units::Unit* unit) {
    const Range& range = range_of(attempt.value, unit);
    if (!below(inside, range) && inside <= range.high) {
        return true;
    }
    const auto written = [&](double bound) {
        const double amount = unit ? unit->from_inside(bound) : bound;
        return fmt::format("{:.6g}{}", amount, unit ? " " + std::string{unit->spelling} : "");
    };
    constexpr double largest_bound_told = 1e6; // beyond it the bound only guards the arithmetic
    const bool tells_high = inside > range.high || (unit ? unit->from_inside(range.high)
                                                         : range.high) < largest_bound_told;
    const std::string before = !range.low_itself ? "above " : tells_high ? "" : "at least ";
    const std::string allowed =
        before + written(range.low) + (tells_high ? " to " + written(range.high) : "");
    std::string advice = unit ? "" : rescaled(inside, attempt.value, "");
    attempt.refuse(fmt::format("{} is out of range ({})", attempt.node.scalar, allowed),
                   advice.empty() ? "check the figure and its unit" : std::move(advice));
    return false;
}

std::optional<Parsed> finished(const Attempt& attempt, Parsed parsed, double inside,
                               const units::Unit* unit) {
    if (!in_range(attempt, inside, unit)) {
        return std::nullopt;
    }
    if (inside > 0 && inside < attempt.value.suspicious_below) {
        attempt.warn(
            fmt::format("{} is unusually small", attempt.node.scalar),
            fmt::format("{:.6g} %, perhaps? a percentage is read, not a fraction", 100 * inside));
    }
    parsed.number = inside;
    return parsed;
}

Parsed start(const Node& node) {
    Parsed parsed;
    parsed.node = &node;
    parsed.text = node.scalar;
    return parsed;
}

std::optional<Parsed> read_text(const Attempt& attempt) {
    const std::size_t length = text::count_characters(attempt.node.scalar);
    if (attempt.node.scalar.find_first_not_of(' ') == std::string::npos) {
        return attempt.refuse("the text is empty", "");
    }
    if (length > longest_text) {
        return attempt.refuse(
            fmt::format("the text has {} characters; at most {} are read", length, longest_text),
            "shorten it");
    }
    return start(attempt.node);
}

std::optional<Parsed> read_flag(const Attempt& attempt) {
    const std::string& written = attempt.node.scalar;
    if (written != "yes" && written != "no" && written != "true" && written != "false") {
        return attempt.refuse(fmt::format("'{}' is neither yes nor no", written),
                              "write 'yes' or 'no'");
    }
    Parsed parsed = start(attempt.node);
    parsed.flag = written == "yes" || written == "true";
    return parsed;
}

std::optional<Parsed> read_word(const Attempt& attempt) {
    const auto near = text::closest(attempt.node.scalar, attempt.value.words);
    return attempt.refuse(
        fmt::format("'{}' is not one of {}", attempt.node.scalar, joined(attempt.value.words)),
        near ? fmt::format("did you mean '{}'?", *near) : "");
}

std::optional<Parsed> read_kind(const Attempt& attempt) {
    std::vector<std::string_view> names;
    for (const core::KindName& known : core::all_kinds()) {
        if (known.name == attempt.node.scalar) {
            Parsed parsed = start(attempt.node);
            parsed.kind = known.kind;
            return parsed;
        }
        names.push_back(known.name);
    }
    const auto near = text::closest(attempt.node.scalar, names);
    return attempt.refuse(
        fmt::format("'{}' is not a kind of material known here", attempt.node.scalar),
        near ? fmt::format("did you mean '{}'?", *near)
             : fmt::format("one of: {}", fmt::join(names, ", ")));
}

/// A ratio that was written in percent.
std::string advice_for_percent(const std::string& written, const Misreading& wrong) {
    const auto leading = units::read_leading_number(written);
    const auto* number = std::get_if<units::LeadingNumber>(&leading);
    return number && written.ends_with('%') ? fmt::format("write '{:.6g}'", number->value / 100)
                                            : wrong.advice;
}

std::optional<Parsed> read_number(const Attempt& attempt) {
    const auto reading = units::read_number(attempt.node.scalar);
    if (const auto* wrong = std::get_if<Misreading>(&reading)) {
        return attempt.refuse(wrong->what, advice_for_percent(attempt.node.scalar, *wrong),
                              wrong->offset);
    }
    return finished(attempt, start(attempt.node), std::get<double>(reading), nullptr);
}

std::optional<Parsed> read_count(const Attempt& attempt) {
    const auto number = read_number(attempt);
    if (number && number->number != std::floor(number->number)) {
        return attempt.refuse(fmt::format("{} is not a whole number", attempt.node.scalar), "");
    }
    return number;
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

std::optional<Parsed> read_quantity(const Attempt& attempt) {
    const auto quantity = read_one_quantity(attempt, {attempt.node.scalar, 0});
    if (!quantity) {
        return std::nullopt;
    }
    Parsed parsed = start(attempt.node);
    parsed.dimension = quantity->unit->dimension;
    return finished(attempt, std::move(parsed), quantity->inside(), quantity->unit);
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
    if (!low || !high || !in_range(attempt, low->inside(), low->unit) ||
        !in_range(attempt, high->inside(), high->unit)) {
        return std::nullopt;
    }
    if (low->inside() >= high->inside()) {
        return attempt.refuse("the first value must be the lower one", "");
    }
    Parsed parsed = start(attempt.node);
    parsed.number = low->inside();
    parsed.high = high->inside();
    return parsed;
}

bool is_currency(std::string_view word) {
    return word.size() == 3 &&
           std::ranges::all_of(word, [](char letter) { return letter >= 'A' && letter <= 'Z'; });
}

/// `165 USD/short ton`: the amount, a currency of three capital letters, a mass or a volume.
std::optional<Parsed> read_price(const Attempt& attempt) {
    const std::string_view written = attempt.node.scalar;
    const auto amount = units::read_leading_number(written);
    if (const auto* wrong = std::get_if<Misreading>(&amount)) {
        return attempt.refuse(wrong->what, wrong->advice, wrong->offset);
    }
    const auto [number, length] = std::get<units::LeadingNumber>(amount);
    const std::size_t currency = written.find_first_not_of(' ', length);
    const std::size_t slash = written.find('/', length);
    const units::Unit* unit =
        slash == std::string_view::npos ? nullptr : units::find_unit(written.substr(slash + 1));
    const bool by_mass_or_volume =
        unit && (unit->dimension == Dimension::mass || unit->dimension == Dimension::volume);
    if (slash != std::string_view::npos && !unit) {
        const auto named = units::read_quantity("1 " + std::string{written.substr(slash + 1)});
        if (const auto* wrong = std::get_if<Misreading>(&named); wrong && !wrong->advice.empty()) {
            return attempt.refuse(wrong->what, wrong->advice, slash + 1);
        }
    }
    if (!by_mass_or_volume || !is_currency(written.substr(currency, slash - currency))) {
        return attempt.refuse(fmt::format("'{}' is not a price by mass or volume", written), "");
    }
    return finished(attempt, start(attempt.node), number, nullptr);
}

} // namespace

std::string describe(const Value& value) {
    switch (value.form) {
    case Form::text:
        return "a text";
    case Form::flag:
        return "yes or no";
    case Form::word:
        return "one of " + joined(value.words);
    case Form::kind:
        return "a kind of material";
    case Form::number:
        return "a number";
    case Form::count:
        return "a whole number";
    case Form::window:
        return "two values, 'A to B'";
    case Form::price:
        return "a price by mass or volume";
    case Form::quantity:
        break;
    }
    return describe_dimensions(value);
}

std::optional<Parsed> read_value(const Node& node, const Value& value, const std::string& path,
                                 std::string_view example, Diagnostics& diagnostics) {
    const Attempt attempt{node, value, path, example, diagnostics};
    if (node.kind != Node::Kind::scalar) {
        return attempt.refuse(
            fmt::format("expected {}, found {}", describe(value), input::describe(node.kind)), "");
    }
    if (std::ranges::count(value.words, std::string_view{node.scalar}) > 0) {
        Parsed parsed = start(node);
        parsed.is_word = true;
        return parsed;
    }
    const auto near =
        value.form == Form::word ? std::nullopt : text::closest(node.scalar, value.words);
    if (near) {
        return attempt.refuse(fmt::format("'{}' is not a value known here", node.scalar),
                              fmt::format("did you mean '{}'?", *near));
    }
    switch (value.form) {
    case Form::text:
        return read_text(attempt);
    case Form::flag:
        return read_flag(attempt);
    case Form::word:
        return read_word(attempt);
    case Form::kind:
        return read_kind(attempt);
    case Form::number:
        return read_number(attempt);
    case Form::count:
        return read_count(attempt);
    case Form::quantity:
        return read_quantity(attempt);
    case Form::window:
        return read_window(attempt);
    case Form::price:
        return read_price(attempt);
    }
    return std::nullopt;
}

} // namespace boardmark::input
