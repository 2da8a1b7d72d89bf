#pragma once

#include <boardmark/core/mix/complete_mix.hpp>

#include <string>
#include <variant>
#include <vector>

namespace boardmark::core {

/// What both kinds of mix have.
inline UnitSystem system_of(const AnyCompleteMix& mix) {
    return std::visit([](const auto& either) { return either->system; }, mix);
}
inline const std::string& title_of(const AnyCompleteMix& mix) {
    return std::visit([](const auto& either) -> const std::string& { return either->title; }, mix);
}
inline const Requirements& requirements_of(const AnyCompleteMix& mix) {
    return std::visit(
        [](const auto& either) -> const Requirements& { return either->requirements; }, mix);
}

/// Every material of a mix, those of it that are dosed as needed too. They live as long as the mix.
std::vector<const Material*> materials_of(const Mix& mix);
std::vector<const Material*> materials_of(const SubmittedMix& mix);
std::vector<const Material*> materials_of(const AnyCompleteMix& mix);

} // namespace boardmark::core
