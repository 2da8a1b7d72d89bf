#pragma once

#include "findings.hpp"

#include <optional>
#include <string>

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
    /// The code whose own rule is not known here, so that another's stands in; else nullptr.
    const std::string* borrowed_for = nullptr;
};

void check_passage(const Passage& passage, double size_mm, Findings& findings);

} // namespace boardmark::core
