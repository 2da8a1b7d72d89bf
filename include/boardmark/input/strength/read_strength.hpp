#pragma once

#include <boardmark/core/strength/complete_record.hpp>
#include <boardmark/core/strength/strength_tables.hpp>
#include <boardmark/input/gate/diagnostic.hpp>
#include <boardmark/input/reading/loader.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::input {

struct StrengthOptions {
    Loader load;                              ///< gets the file of specimens
    std::vector<core::StrengthClass> classes; ///< of EN 206
    std::optional<int> today = {};            ///< days since 1970-01-01; no age lies after it
};

/// Strength results, complete and in SI, or the reasons why there are none.
struct StrengthReading {
    std::optional<core::CompleteRecord> record;
    Diagnostics diagnostics;
};

/// Reads a results file, and the CSV file of specimens that it may name. Every error of both is
/// found in one run; nothing is thrown for a wrong text.
StrengthReading read_strength(std::string text, std::string file, const StrengthOptions& options);

} // namespace boardmark::input
