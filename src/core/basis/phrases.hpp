#pragma once

#include <boardmark/core/basis/phrase.hpp>

#include <string>
#include <string_view>
#include <utility>

namespace boardmark::core {

inline Argument quantity(std::string name, Quantity value) {
    return {.name = std::move(name), .value = value};
}

inline Argument concentration(std::string name, double kg_m3) {
    return quantity(std::move(name), {kg_m3, Measure::concentration});
}

inline Argument word(std::string name, std::string_view value) {
    return {.name = std::move(name), .value = std::string{value}};
}

} // namespace boardmark::core
