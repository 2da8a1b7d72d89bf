#pragma once

#include <boardmark/core/paper/specification.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// One paper that is handed in.
struct SubmittalItem {
    std::string paper; ///< "Mill certificate of cement"
    std::string by;    ///< "supplier", "contractor", "laboratory"
    Phrase when;       ///< "21 d before the mock-up"
    std::optional<Day> due = {};
    std::string age = {};               ///< "at most 24 months"; empty: none is asked
    std::vector<std::string> keys = {}; ///< of the submitted file, that `check` reads
    bool past = false;                  ///< due before the day of the paper
    Source source = {};
};

/// What is handed in, in the order of its days.
struct SubmittalList {
    std::vector<SubmittalItem> items;
    std::vector<Phrase> how;   ///< in which form, what comes back
    std::vector<Check> checks; ///< `schedule.papers`, `schedule.mockup`
};

SubmittalList submittal_list_of(const PaperCase& papers);

} // namespace boardmark::core
