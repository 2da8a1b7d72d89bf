#pragma once

#include "../basis/phrases.hpp"

#include <string>
#include <utility>

/// Arguments of clauses, each in its measure.
namespace boardmark::core {

inline Argument as_length(std::string name, double mm) {
    return quantity(std::move(name), {mm, Measure::length});
}
inline Argument as_metres(std::string name, double m) {
    return quantity(std::move(name), {m, Measure::line_length});
}
inline Argument as_count(std::string name, double value) {
    return quantity(std::move(name), {value, Measure::count});
}
inline Argument as_days(std::string name, double days) {
    return quantity(std::move(name), {days, Measure::age});
}
inline Argument as_hours(std::string name, double hours) {
    return quantity(std::move(name), {hours, Measure::duration});
}
inline Argument as_percent(std::string name, double percent) {
    return quantity(std::move(name), {percent, Measure::percent});
}
inline Argument as_strength(std::string name, double mpa) {
    return quantity(std::move(name), {mpa, Measure::strength});
}
inline Argument as_warmth(std::string name, double celsius) {
    return quantity(std::move(name), {celsius, Measure::temperature});
}

} // namespace boardmark::core
