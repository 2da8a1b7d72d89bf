#pragma once

#include <boardmark/core/basis/phrase.hpp>

#include <string>
#include <string_view>
#include <utility>

namespace boardmark::core {

inline Argument quantity(std::string name, Quantity value) {
    return {.name = std::move(name), .value = value};
}

/// A name for an argument that speaks of something named by a table or a file: "limit_F3".
inline std::string argument_name(std::string_view what, std::string_view of) {
    std::string name{what};
    name += '_';
    for (const char letter : of) {
        const bool plain = (letter >= '0' && letter <= '9') || (letter >= 'a' && letter <= 'z') ||
                           (letter >= 'A' && letter <= 'Z');
        name += plain ? letter : '_';
    }
    return name;
}

inline Argument concentration(std::string name, double kg_m3) {
    return quantity(std::move(name), {kg_m3, Measure::concentration});
}

inline Argument word(std::string name, std::string_view value) {
    return {.name = std::move(name), .value = std::string{value}};
}

} // namespace boardmark::core
