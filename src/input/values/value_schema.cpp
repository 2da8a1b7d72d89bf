#include "value_schema.hpp"

#include <boardmark/units/unit.hpp>

#include "price_range.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace boardmark::input {
namespace {

/// The numbers of units::read_leading_number: `4500`, `-5`, `0.45`, `.45`, `1.5e3`, `3/4`, `1 1/2`.
constexpr std::string_view number_pattern =
    R"([-+]?(?:\d+[- ]\d+/\d+|\d+/\d+|(?:\d+(?:\.\d+)?|\.\d+)(?:[eE][-+]?\d+)?))";

/// `3 ft 6 in`
constexpr std::string_view feet_and_inches_pattern =
    R"([-+]?\d+ *ft +(?:(?:[0-9]|1[01])(?:\.\d+)?|(?:[0-9]|1[01])[- ]\d+/\d+|\d+/\d+) *in)";

/// A unit's pattern with raised figures beside its plain ones: yd3 or yd³.
std::string raised(std::string pattern) {
    for (const auto& [plain, either] : {std::pair{'2', "(?:2|²)"}, std::pair{'3', "(?:3|³)"}}) {
        for (std::size_t at = pattern.find(plain); at != std::string::npos;
             at = pattern.find(plain, at + std::string_view{either}.size())) {
            pattern.replace(at, 1, either);
        }
    }
    return pattern;
}

/// A text as a pattern that means itself.
std::string literal(std::string_view text) {
    std::string pattern;
    for (const char character : text) {
        if (std::string_view{R"(\^$.|?*+()[]{})"}.find(character) != std::string_view::npos) {
            pattern += '\\';
        }
        pattern += character;
    }
    return pattern;
}

std::string units_pattern(std::initializer_list<std::optional<units::Dimension>> dimensions) {
    std::string pattern;
    for (const units::Unit& unit : units::all_units()) {
        for (const auto& dimension : dimensions) {
            if (dimension == unit.dimension) {
                pattern += (pattern.empty() ? "" : "|") + raised(literal(unit.spelling));
            }
        }
    }
    return "(?:" + pattern + ")";
}

std::string quantity_pattern(const Value& value) {
    const std::string plain = fmt::format(
        "{} *{}", number_pattern, units_pattern({value.dimensions[0], value.dimensions[1]}));
    const bool length = value.dimensions[0] == units::Dimension::length ||
                        value.dimensions[1] == units::Dimension::length;
    return length ? fmt::format("(?:{}|{})", plain, feet_and_inches_pattern) : plain;
}

std::string pattern_of(const Value& value) {
    switch (value.form) {
    case Form::number:
    case Form::count:
        return std::string{number_pattern};
    case Form::quantity:
        return quantity_pattern(value);
    case Form::window:
        return fmt::format("{0} to {0}", quantity_pattern(value));
    case Form::price:
        return fmt::format("{} *[A-Z]{{3}}/(?:{}|piece)", number_pattern,
                           units_pattern({units::Dimension::mass, units::Dimension::volume}));
    case Form::price_range:
        return fmt::format("{0}(?: to {0})? *[A-Z]{{3}}/(?:{1})(?: likely {0})?", number_pattern,
                           fmt::join(denominators_of(value.per), "|"));
    case Form::date:
        return R"(\d{4}-\d{2}-\d{2})";
    case Form::text:
    case Form::flag:
    case Form::word:
    case Form::kind:
        break;
    }
    return ".+";
}

/// The first spelling of a dimension: "in" of a length.
std::string_view first_unit(units::Dimension dimension) {
    const auto units = units::all_units();
    return std::ranges::find(units, dimension, &units::Unit::dimension)->spelling;
}

/// A value of the form where the field's own example shows none, for it is a word or a table.
std::string plain_example(const Value& value) {
    return value.form == Form::quantity && value.dimensions[0]
               ? fmt::format("5 {}", first_unit(*value.dimensions[0]))
               : "2";
}

std::string message_for(const Value& value, std::string_view example) {
    const bool shows_none = example.empty() || std::ranges::count(value.words, example) > 0;
    return fmt::format("write {}, for example {}", described(value),
                       shows_none ? plain_example(value) : std::string{example});
}

/// A bare number, which YAML reads as a number, or a fraction, which it reads as a text.
Schema number_schema(const Value& value, std::string_view example) {
    Schema number{{"type", value.form == Form::count ? "integer" : "number"}};
    if (std::isfinite(value.range.low)) {
        number[value.range.low_itself ? "minimum" : "exclusiveMinimum"] = value.range.low;
    }
    if (std::isfinite(value.range.high)) {
        number["maximum"] = value.range.high;
    }
    return {
        {"anyOf", {number, matching(std::string{number_pattern}, message_for(value, example))}}};
}

Schema words_schema(std::span<const std::string_view> words) {
    Schema schema{{"enum", Schema::array()}};
    for (const std::string_view word : words) {
        schema["enum"].push_back(word);
    }
    return schema;
}

Schema kinds_schema() {
    Schema schema{{"enum", Schema::array()}};
    for (const core::KindName& kind : core::all_kinds()) {
        schema["enum"].push_back(kind.name);
    }
    return schema;
}

Schema schema_without_words(const Value& value, std::string_view example) {
    switch (value.form) {
    case Form::text:
        return {{"type", {"string", "number"}}};
    case Form::flag:
        return {{"enum", {"yes", "no", true, false}}};
    case Form::word:
        return words_schema(value.words);
    case Form::kind:
        return kinds_schema();
    case Form::number:
    case Form::count:
        return number_schema(value, example);
    default:
        return matching(pattern_of(value), message_for(value, example));
    }
}

} // namespace

Schema matching(const std::string& pattern, const std::string& message) {
    return {{"type", "string"},
            {"pattern", "^" + pattern + "$"},
            {"patternErrorMessage", message},
            {"errorMessage", message}}; // where it is no text at all, as in 'strength: 5000'
}

std::string described(const Value& value) {
    switch (value.form) {
    case Form::number:
        return "a plain number without a unit";
    case Form::count:
        return "a whole number without a unit";
    case Form::quantity: {
        std::string quantity{units::describe(*value.dimensions[0])};
        if (value.dimensions[1]) {
            quantity += fmt::format(" or {}", units::describe(*value.dimensions[1]));
        }
        return quantity + " with its unit";
    }
    case Form::window:
        return "the lowest and the highest value with 'to' between them";
    case Form::price:
        return "an amount, a currency and what it is paid for";
    case Form::price_range:
        return "a price or a range of prices";
    case Form::date:
        return "a year, month and day";
    case Form::kind:
        return "a kind of material";
    case Form::text:
    case Form::flag:
    case Form::word:
        break;
    }
    return "a name";
}

Schema schema_of_value(const Value& value, std::string_view example) {
    Schema schema = schema_without_words(value, example);
    if (value.words.empty() || value.form == Form::word) {
        return schema;
    }
    return {{"anyOf", {words_schema(value.words), schema}}};
}

std::string pattern_of_key(const Value& key) {
    std::string pattern = pattern_of(key);
    if (key.form == Form::kind) {
        pattern.clear();
        for (const core::KindName& kind : core::all_kinds()) {
            pattern += (pattern.empty() ? "" : "|") + literal(kind.name);
        }
    }
    for (const std::string_view word : key.words) {
        pattern += "|" + literal(word);
    }
    return "(?:" + pattern + ")";
}

} // namespace boardmark::input
