#pragma once

#include <cstddef>
#include <string>
#include <variant>

namespace boardmark::units {

/// Why a text is not the number or quantity that was expected.
struct Misreading {
    std::size_t offset = 0; ///< byte in the text where reading failed
    std::string what;       ///< the fault, to stand after "…: "
    std::string advice;     ///< what to write instead; may be empty
};

template <class T>
using Reading = std::variant<T, Misreading>;

} // namespace boardmark::units
