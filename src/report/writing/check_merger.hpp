#pragma once

#include "flow.hpp"

#include <string>
#include <vector>

namespace boardmark::report {

/// Checks of several mixes in one list: what is told alike of several stands once, after the names
/// of all.
class CheckMerger {
public:
    void add(const std::string& label, const std::vector<core::Check>& checks,
             core::UnitSystem system);

    std::vector<CheckRow> rows() const;

private:
    struct Merged {
        CheckRow row;
        std::string told; ///< of the row
        std::vector<std::string> labels;
    };
    std::vector<Merged> merged_;
};

} // namespace boardmark::report
