#pragma once

namespace boardmark::core {

/// The specimen by which a compressive strength is stated. One is never turned into the other: only
/// a class that names both strengths pairs them.
enum class Specimen {
    cylinder, ///< twice as high as wide
    cube,     ///< 150 mm
};

} // namespace boardmark::core
