#pragma once

#include <boardmark/core/basis/phrase.hpp>

#include <string>
#include <string_view>
#include <utility>

namespace boardmark::core {

inline Argument quantity(std::string name, Quantity value) {
    return {.name = std::move(name), .value = value};
}

/// A bound that somebody keeps to: shown rounded to its safe side.
inline Argument no_more_than(std::string name, Quantity value) {
    value.keep = Keep::at_most;
    return {.name = std::move(name), .value = value};
}

inline Argument no_less_than(std::string name, Quantity value) {
    value.keep = Keep::at_least;
    return {.name = std::move(name), .value = value};
}

inline Argument concentration(std::string name, double kg_m3) {
    return quantity(std::move(name), {kg_m3, Measure::concentration});
}

inline Argument strength(std::string name, double mpa) {
    return quantity(std::move(name), {mpa, Measure::strength});
}

inline Argument percent_of(std::string name, double percent) {
    return quantity(std::move(name), {percent, Measure::percent});
}

inline Argument word(std::string name, std::string_view value) {
    return {.name = std::move(name), .value = std::string{value}};
}

} // namespace boardmark::core
