#pragma once

#include <boardmark/core/mix/mix.hpp>

#include <string>
#include <variant>

namespace boardmark::core {

/// What both kinds of mix have.
inline UnitSystem system_of(const AnyMix& mix) {
    return std::visit([](const auto& either) { return either.system; }, mix);
}
inline const std::string& title_of(const AnyMix& mix) {
    return std::visit([](const auto& either) -> const std::string& { return either.title; }, mix);
}

} // namespace boardmark::core
