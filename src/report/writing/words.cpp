#include <boardmark/report/writing/words.hpp>
#include <boardmark/text/utf8.hpp>

#include "quantity_format.hpp"
#include "wrap.hpp"

#include <fmt/args.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <string>
#include <string_view>
#include <vector>

namespace boardmark::report {
namespace {

constexpr int most_digits_more = 4;
constexpr const char* limit_names[] = {"limit", "low", "high"};

const core::Quantity* quantity_named(const core::Phrase& phrase, std::string_view name) {
    const auto found = std::ranges::find(phrase.arguments, name, &core::Argument::name);
    return found == phrase.arguments.end() ? nullptr : std::get_if<core::Quantity>(&found->value);
}

/// Whether rounding to safe sides left the smaller of two the larger: 27.2 within 27.1.
bool out_of_order(const core::Quantity& value, const core::Quantity& limit,
                  const std::string& value_text, const std::string& limit_text) {
    char* value_unit = nullptr;
    char* limit_unit = nullptr;
    const double printed_value = std::strtod(value_text.c_str(), &value_unit);
    const double printed_limit = std::strtod(limit_text.c_str(), &limit_unit);
    return std::string_view{value_unit} == limit_unit &&
           (value.value < limit.value ? printed_value > printed_limit
                                      : printed_value < printed_limit);
}

/// Whether a reader sees which of the two is the greater.
bool told_apart(const core::Quantity& value, const core::Quantity& limit, core::UnitSystem system,
                int digits) {
    const std::string value_text = shown(value, system, digits);
    const std::string limit_text = shown(limit, system, digits);
    return value_text != limit_text && !out_of_order(value, limit, value_text, limit_text);
}

/// How many digits more tell a value from a limit.
int digits_apart(const core::Quantity& value, const core::Quantity& limit,
                 core::UnitSystem system) {
    int digits = 0;
    if (value.measure != limit.measure ||
        std::abs(value.value - limit.value) <= 1e-9 * std::abs(limit.value)) {
        return digits;
    }
    while (digits < most_digits_more && !told_apart(value, limit, system, digits)) {
        ++digits;
    }
    return digits;
}

/// Those that tell the value from each limit it is held against.
int digits_more(const core::Phrase& phrase, core::UnitSystem system) {
    const core::Quantity* value = quantity_named(phrase, "value");
    int digits = 0;
    for (const char* name : limit_names) {
        const core::Quantity* limit = quantity_named(phrase, name);
        if (value && limit) {
            digits = std::max(digits, digits_apart(*value, *limit, system));
        }
    }
    return digits;
}

/// Any other argument may have a limit of its own, which need not be told: `short_limit` of
/// `short`.
int own_digits(const core::Phrase& phrase, const core::Argument& argument,
               core::UnitSystem system) {
    constexpr std::string_view limit = "_limit";
    const auto* value = std::get_if<core::Quantity>(&argument.value);
    for (const core::Argument& other : phrase.arguments) {
        const std::string_view name = other.name;
        const auto* most = std::get_if<core::Quantity>(&other.value);
        if (value && most && name.size() == argument.name.size() + limit.size() &&
            name.starts_with(argument.name) && name.ends_with(limit)) {
            return digits_apart(*value, *most, system);
        }
    }
    return 0;
}

} // namespace

std::string in_us_trade_words(std::string text) {
    constexpr std::string_view word = "cementitious material";
    for (std::size_t at = 0; (at = text.find(word, at)) != std::string::npos;) {
        at += word.size();
        if (at == text.size() || text[at] != 's') {
            text.insert(at, "s");
        }
    }
    return text;
}

std::string words(const core::Phrase& phrase, core::UnitSystem system) {
    const int digits = digits_more(phrase, system);
    fmt::dynamic_format_arg_store<fmt::format_context> arguments;
    arguments.reserve(phrase.arguments.size(), phrase.arguments.size());
    std::vector<std::string> values; // looked at, not copied, while they are put in
    values.reserve(phrase.arguments.size());
    for (const core::Argument& argument : phrase.arguments) {
        const bool compared =
            argument.name == "value" || std::ranges::count(limit_names, argument.name) > 0;
        const auto* quantity = std::get_if<core::Quantity>(&argument.value);
        values.push_back(quantity ? shown(*quantity, system,
                                          compared ? digits : own_digits(phrase, argument, system))
                                  : text::printable(std::get<std::string>(argument.value)));
        arguments.push_back(fmt::arg(argument.name.c_str(), std::string_view{values.back()}));
    }
    return fmt::vformat(
        system == core::UnitSystem::us ? in_us_trade_words(phrase.text) : phrase.text, arguments);
}

std::string text(const core::Unresolved& unresolved, const std::string& file,
                 core::UnitSystem system, std::size_t width) {
    std::string result =
        wrapped(text::printable(file) + ": no mix follows: " + words(unresolved.what, system),
                {.first = "", .other = "    "}, width);
    result += "ways out:\n";
    for (std::size_t i = 0; i < unresolved.ways_out.size(); ++i) {
        result += wrapped(words(unresolved.ways_out[i], system),
                          {.first = fmt::format("  {}. ", i + 1), .other = "     "}, width);
    }
    return result;
}

} // namespace boardmark::report
