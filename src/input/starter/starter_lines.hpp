#pragma once

#include <boardmark/core/mix/mix.hpp>

#include "../fields/fields.hpp"

#include <span>
#include <string_view>

namespace boardmark::input {

/// A key of a starter file with a value in either system. A key without a value begins a section.
struct StarterLine {
    std::string_view path; ///< names of the user's are written out: "materials.stone.absorption"
    std::string_view us = {};
    std::string_view si = {}; ///< empty: the same in both

    std::string_view value(core::UnitSystem system) const {
        return system == core::UnitSystem::us || si.empty() ? us : si;
    }
};

/// A starter file: what is said on top of it, its lines, the keys that explain them.
struct StarterFile {
    std::string_view heading;
    std::span<const StarterLine> lines;
    std::span<const Field> fields;
};

// Invented figures of a usual concrete and a usual wall: the user's own papers replace them.
StarterFile mix_starter();
StarterFile trial_starter();
StarterFile results_starter();
StarterFile wall_starter();

} // namespace boardmark::input
