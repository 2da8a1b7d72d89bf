#pragma once

#include <boardmark/core/phrase.hpp>

#include <string>
#include <utility>

namespace boardmark::core {

inline Argument quantity(std::string name, Quantity value) {
    return {.name = std::move(name), .value = value};
}

inline Argument word(std::string name, std::string value) {
    return {.name = std::move(name), .value = std::move(value)};
}

} // namespace boardmark::core
