#pragma once

#include "findings.hpp"

#include <optional>

namespace boardmark::core {

/// Something that the largest stone must pass through.
struct Passage {
    CheckId id;
    const char* what;
    const char* key; ///< of the mix file's section, where it is missing
    std::optional<double> dimension_mm;
    double fraction;
    const Source* source;
    bool only_advises = false;
};

void check_passage(const Passage& passage, double size_mm, Findings& findings);

} // namespace boardmark::core
