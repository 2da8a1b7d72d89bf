#include "option_values.hpp"

#include <boardmark/units/number.hpp>

#include "failure.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace boardmark::commands {
namespace {

std::string trimmed(std::string_view text) {
    const std::size_t first = text.find_first_not_of(' ');
    if (first == std::string_view::npos) {
        return "";
    }
    return std::string{text.substr(first, text.find_last_not_of(' ') - first + 1)};
}

std::string described(const std::vector<Permitted>& permitted) {
    std::string text;
    for (const Permitted& one : permitted) {
        text += (text.empty() ? "" : " or ") + std::string{units::describe(one.dimension)};
    }
    return text;
}

[[noreturn]] void out_of_range(const OptionText& text, const std::string& least,
                               const std::string& most) {
    throw wrong_command_line(
        fmt::format("--{}: {} is out of range ({} to {})", text.option, text.written, least, most));
}

[[noreturn]] void misread(const OptionText& text, const units::Misreading& wrong,
                          const std::string& advice) {
    throw wrong_command_line(fmt::format("--{}: {}", text.option, wrong.what),
                             wrong.advice.empty() ? advice : wrong.advice);
}

/// A bound as it is told: whole where it is, else three digits.
std::string rough(double bound) {
    const std::string exactly = fmt::format("{:.6g}", bound);
    constexpr double largest_with_decimals = 1000;
    if (exactly.find_first_of(".e") == std::string::npos) {
        return exactly;
    }
    return std::abs(bound) < largest_with_decimals
               ? fmt::format("{:.3g}", bound)
               : fmt::format("{:.0f}", std::round(bound / 100) * 100);
}

} // namespace

units::Quantity read_quantity_option(const OptionText& text, std::vector<Permitted> permitted) {
    const auto reading = units::read_quantity(text.written);
    if (const auto* wrong = std::get_if<units::Misreading>(&reading)) {
        misread(text, *wrong, fmt::format("write {}", described(permitted)));
    }
    const auto quantity = std::get<units::Quantity>(reading);
    const auto found =
        std::ranges::find(permitted, quantity.unit->dimension, &Permitted::dimension);
    if (found == permitted.end()) {
        throw wrong_command_line(
            fmt::format("--{}: '{}' is {}; {} is expected", text.option, text.written,
                        units::describe(quantity.unit->dimension), described(permitted)));
    }
    const Bounds& bounds = found->bounds;
    if (!(quantity.inside() >= bounds.least && quantity.inside() <= bounds.most)) {
        const auto in_unit = [&](double inside) {
            return fmt::format("{} {}", rough(quantity.unit->from_inside(inside)),
                               quantity.unit->spelling);
        };
        out_of_range(text, in_unit(bounds.least), in_unit(bounds.most));
    }
    return quantity;
}

double read_option(const OptionText& text, units::Dimension dimension, Bounds bounds) {
    return read_quantity_option(text, {{dimension, bounds}}).inside();
}

double read_number_option(const OptionText& text, Bounds bounds) {
    const auto reading = units::read_number(text.written);
    if (const auto* wrong = std::get_if<units::Misreading>(&reading)) {
        misread(text, *wrong, "write a plain number");
    }
    const double number = std::get<double>(reading);
    if (!(number >= bounds.least && number <= bounds.most)) {
        out_of_range(text, fmt::format("{:.6g}", bounds.least), fmt::format("{:.6g}", bounds.most));
    }
    return number;
}

double read_whole_option(const OptionText& text, Bounds bounds) {
    const double number = read_number_option(text, bounds);
    if (number != std::floor(number)) {
        throw wrong_command_line(
            fmt::format("--{}: '{}' is not a whole number", text.option, text.written),
            fmt::format("write for example --{} 1000", text.option));
    }
    return number;
}

std::vector<NamedText> read_pairs(const OptionText& text, const PairForm& form) {
    std::vector<NamedText> pairs;
    for (const std::string& part : split(text.written, ',')) {
        const std::size_t equals = part.rfind('=');
        if (equals == std::string::npos || equals == 0) {
            throw wrong_command_line(
                fmt::format("--{}: '{}' is not {}", text.option, part, form.form),
                fmt::format("write for example --{} {}", text.option, form.example));
        }
        NamedText pair{trimmed(std::string_view{part}.substr(0, equals)),
                       trimmed(std::string_view{part}.substr(equals + 1))};
        if (std::ranges::count(pairs, pair.name, &NamedText::name) > 0) {
            throw wrong_command_line(
                fmt::format("--{}: '{}' is named twice", text.option, pair.name));
        }
        pairs.push_back(std::move(pair));
    }
    return pairs;
}

std::vector<std::string> split(const std::string& text, char separator) {
    std::vector<std::string> parts;
    std::size_t start = 0;
    for (std::size_t end; (end = text.find(separator, start)) != std::string::npos;
         start = end + 1) {
        parts.push_back(trimmed(std::string_view{text}.substr(start, end - start)));
    }
    parts.push_back(trimmed(std::string_view{text}.substr(start)));
    return parts;
}

} // namespace boardmark::commands
