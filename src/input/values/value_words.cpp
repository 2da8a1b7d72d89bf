#include "value_words.hpp"

#include <boardmark/core/mix/kind.hpp>
#include <boardmark/units/quantity.hpp>

#include "bounds.hpp"
#include "quantity_value.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <iterator>

namespace boardmark::input {
namespace {

/// The unit in which the example of a key is written, or else the inside unit of a dimension.
const units::Unit* unit_told(units::Dimension dimension, std::string_view example) {
    for (std::size_t at = example.find_first_of("0123456789"); at < example.size();
         at = example.find_first_of("0123456789", at + 1)) {
        const std::size_t end = example.find_first_of(",:}]", at);
        std::string_view part = example.substr(at, end == example.npos ? end : end - at);
        part = part.substr(0, part.find(" to "));
        part = part.substr(0, part.find(" at "));
        const auto reading = units::read_quantity(part);
        const auto* quantity = std::get_if<units::Quantity>(&reading);
        if (quantity && quantity->unit->dimension == dimension) {
            return quantity->unit;
        }
    }
    for (const units::Unit& unit : units::all_units()) {
        if (unit.dimension == dimension && unit.factor == 1) {
            return &unit;
        }
    }
    return nullptr;
}

bool is_bounded(const Range& range) {
    return std::isfinite(range.low) && std::isfinite(range.high);
}

std::string range_words(const Value& value, std::string_view example) {
    if (!is_bounded(value.range)) {
        return "";
    }
    const units::Unit* unit =
        value.dimensions[0] ? unit_told(*value.dimensions[0], example) : nullptr;
    return ", " + words_of(value.range, unit, has_told_end(value.range, unit));
}

std::vector<std::string_view> names_of_kinds() {
    std::vector<std::string_view> names;
    std::ranges::transform(core::all_kinds(), std::back_inserter(names), &core::KindName::name);
    return names;
}

std::string form_words(const Value& value, std::string_view example) {
    switch (value.form) {
    case Form::text:
        return "words of your own or of the trade";
    case Form::flag:
        return "yes or no";
    case Form::word:
        return fmt::format("one of: {}", fmt::join(value.words, ", "));
    case Form::kind:
        return fmt::format("one of: {}", fmt::join(names_of_kinds(), ", "));
    case Form::number:
        return "a number without a unit" + range_words(value, example);
    case Form::count:
        return "a whole number" + range_words(value, example);
    case Form::quantity:
        return describe_dimensions(value) + range_words(value, example);
    case Form::window:
        return describe_dimensions(value) + " to another" + range_words(value, example);
    case Form::price:
        return "a price, its currency in three letters, by mass, volume or piece";
    case Form::date:
        return "a date, year-month-day";
    case Form::price_range:
        return "a price, or the lowest to the highest and the likely one";
    }
    return "";
}

std::string one_value(const Value& value, std::string_view example) {
    const bool has_words = value.form != Form::word && !value.words.empty();
    return form_words(value, example) +
           (has_words ? fmt::format("; or: {}", fmt::join(value.words, ", ")) : "");
}

std::string pairs(const Field& field) {
    return "pairs in braces: " + one_value(field.key, field.example) + "; to each " +
           one_value(field.value, field.example);
}

} // namespace

std::string value_words(const Field& field) {
    const std::string file = field.from_file ? "; or 'from FILE'" : "";
    switch (field.shape) {
    case Shape::value:
        return one_value(field.value, field.example) + file;
    case Shape::list:
        return "a list in brackets, each " + one_value(field.value, field.example) + file;
    case Shape::list_or_one:
        return "a list in brackets, or one alone, each " + one_value(field.value, field.example) +
               file;
    case Shape::table:
    case Shape::table_or_point:
        return pairs(field) + file;
    case Shape::value_or_table:
        return one_value(field.whole.value_or(field.value), field.example) + "; or " +
               pairs(field) + file;
    case Shape::section:
        return "keys of its own" + file;
    }
    return "";
}

} // namespace boardmark::input
