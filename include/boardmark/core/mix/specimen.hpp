#pragma once

#include <string_view>

namespace boardmark::core {

/// The specimen by which a compressive strength is stated. One is never turned into the other: only
/// a class that names both strengths pairs them.
enum class Specimen {
    cylinder, ///< twice as high as wide
    cube,     ///< 150 mm
};

/// "cylinders", "cubes".
constexpr std::string_view plural_of(Specimen specimen) {
    return specimen == Specimen::cube ? "cubes" : "cylinders";
}

} // namespace boardmark::core
