#include "value_reader.hpp"

#include <boardmark/text/closest.hpp>
#include <boardmark/text/letter_case.hpp>
#include <boardmark/text/utf8.hpp>
#include <boardmark/units/date.hpp>
#include <boardmark/units/number.hpp>

#include "../reading/attempt.hpp"
#include "out_of_scope.hpp"
#include "price_range.hpp"
#include "quantity_value.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <vector>

namespace boardmark::input {
namespace {

using units::Misreading;

constexpr std::size_t longest_text = 200;

std::string joined(std::span<const std::string_view> words) {
    return fmt::format("'{}'", fmt::join(words, "', '"));
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
    return attempt.start();
}

std::optional<Parsed> read_flag(const Attempt& attempt) {
    const std::string& written = attempt.node.scalar;
    if (written != "yes" && written != "no" && written != "true" && written != "false") {
        return attempt.refuse(fmt::format("'{}' is neither yes nor no", written),
                              "write 'yes' or 'no'");
    }
    Parsed parsed = attempt.start();
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
            Parsed parsed = attempt.start();
            parsed.kind = known.kind;
            return parsed;
        }
        names.push_back(known.name);
    }
    if (const auto scope = kind_out_of_scope(attempt.node.scalar)) {
        return attempt.refuse(scope->reason, scope->advice);
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
    return attempt.finish(attempt.start(), std::get<double>(reading), nullptr);
}

std::optional<Parsed> read_count(const Attempt& attempt) {
    const auto number = read_number(attempt);
    if (number && number->number != std::floor(number->number)) {
        return attempt.refuse(fmt::format("{} is not a whole number", attempt.node.scalar), "");
    }
    return number;
}

std::optional<Parsed> read_date(const Attempt& attempt) {
    const auto days = units::read_date(attempt.node.scalar);
    if (!days) {
        return attempt.refuse(fmt::format("'{}' is not a date", attempt.node.scalar),
                              "write year, month and day, as in '2026-03-02'");
    }
    Parsed parsed = attempt.start();
    parsed.number = *days;
    return parsed;
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
        return "a price by mass, volume or piece";
    case Form::date:
        return "a date, 'YEAR-MONTH-DAY'";
    case Form::price_range:
        return "a price " + priced_by(value.per);
    case Form::quantity:
        break;
    }
    return describe_dimensions(value);
}

std::optional<Parsed> read_value(const Node& node, const Value& value, const Path& path,
                                 std::string_view example, Diagnostics& diagnostics) {
    const Attempt attempt{node, value, path, example, diagnostics};
    if (node.kind != Node::Kind::scalar) {
        return attempt.refuse(
            fmt::format("expected {}, found {}", describe(value), input::describe(node.kind)), "");
    }
    if (const auto scope = value_out_of_scope(node.scalar); scope && value.form == Form::quantity) {
        return attempt.refuse(scope->reason, scope->advice);
    }
    if (std::ranges::count(value.words, std::string_view{node.scalar}) > 0) {
        Parsed parsed = attempt.start();
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
    case Form::date:
        return read_date(attempt);
    case Form::price_range:
        return read_price_range(attempt);
    }
    return std::nullopt;
}

} // namespace boardmark::input
