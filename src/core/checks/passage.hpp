#pragma once

#include <boardmark/core/checks/check.hpp>

namespace boardmark::core {

/// Something that the largest stone must pass through.
struct Passage {
    const char* id;
    const char* what;
    const char* key; ///< of the mix file's section, where it is missing
    std::optional<double> dimension_mm;
    double fraction;
    const Source* source;
    bool only_advises = false;
};

Check check_passage(const Passage& passage, double size_mm);

} // namespace boardmark::core
