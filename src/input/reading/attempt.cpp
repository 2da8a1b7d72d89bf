#include "attempt.hpp"

#include "../values/bounds.hpp"

#include <fmt/format.h>

namespace boardmark::input {
namespace {

bool below(double number, const Range& range) {
    return range.low_itself ? number < range.low : number <= range.low;
}

/// A number that is out of range by a factor that points to another unit: first by one that makes
/// it usual, so that a w/cm of 40 is 0.40 and not 0.04.
std::string rescaled(double amount, const Value& value) {
    for (const Range& range : {value.usual, value.range}) {
        for (const double factor : {0.001, 0.01, 0.1, 100.0}) {
            const double guess = amount * factor;
            const bool possible = !below(guess, value.range) && guess <= value.range.high;
            if (possible && !below(guess, range) && guess <= range.high && amount != 0) {
                return fmt::format("{:.6g}?", guess);
            }
        }
    }
    return "";
}

const Range& range_of(const Value& value, const units::Unit* unit) {
    const bool second = unit && value.dimensions[1] == unit->dimension;
    return second ? value.second_range : value.range;
}

} // namespace

std::nullopt_t Attempt::refuse(std::string what, std::string advice, std::size_t caret) const {
    Underline where = node.underline();
    where.caret = caret + (node.quoted ? 1 : 0);
    diagnostics.push_back(node.source->diagnostic(
        where, dotted(path) + ": " + std::move(what),
        advice.empty() && !example.empty() ? fmt::format("write for example '{}'", example)
                                           : std::move(advice)));
    return std::nullopt;
}

void Attempt::warn(std::string what, std::string advice) const {
    refuse(std::move(what), std::move(advice));
    diagnostics.back().severity = Severity::warning;
}

Parsed Attempt::start() const {
    Parsed parsed;
    parsed.node = &node;
    parsed.text = node.scalar;
    return parsed;
}

bool Attempt::in_range(double inside, const units::Unit* unit) const {
    const Range& range = range_of(value, unit);
    if (!below(inside, range) && inside <= range.high) {
        return true;
    }
    const std::string allowed =
        words_of(range, unit, inside > range.high || has_told_end(range, unit));
    std::string advice = unit ? "" : rescaled(inside, value);
    refuse(fmt::format("{} is out of range ({})", node.scalar, allowed),
           advice.empty() ? "check the figure and its unit" : std::move(advice));
    return false;
}

void Attempt::ask_back(double inside, const units::Unit* unit) const {
    const bool second = unit && value.dimensions[1] == unit->dimension;
    const Range& usual = second ? value.second_usual : value.usual;
    const bool low = below(inside, usual);
    if (!low && inside <= usual.high) {
        return;
    }
    const double bound = low ? usual.low : usual.high;
    warn(fmt::format("{} is unusual, rarely {} {}{}", node.scalar, low ? "below" : "above",
                     roughly(unit ? unit->from_inside(bound) : bound),
                     unit ? " " + std::string{unit->spelling} : ""),
         "check the figure and its unit; it is used as written");
}

std::optional<Parsed> Attempt::finish(Parsed parsed, double inside, const units::Unit* unit) const {
    if (!in_range(inside, unit)) {
        return std::nullopt;
    }
    if (inside > 0 && inside < value.suspicious_below) {
        warn(fmt::format("{} is unusually small", node.scalar),
             fmt::format("{:.6g} %, perhaps? a percentage is read, not a fraction", 100 * inside));
    } else if (inside != 0) {
        ask_back(inside, unit);
    }
    parsed.number = inside;
    return parsed;
}

} // namespace boardmark::input
