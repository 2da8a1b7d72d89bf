#pragma once

#include <boardmark/report/writing/input_file.hpp>

#include "flow.hpp"

#include <string>

namespace boardmark::report {

/// What stands around a result on its page.
struct PageWords {
    std::string title;   ///< the user's words
    std::string command; ///< that made the result
    InputFiles inputs = {};
    bool one_sheet = false; ///< a ticket or card: printed on one sheet, Letter or A4
};

/// The flow as one page for a browser: no network, no script, a policy that forbids both, light and
/// dark, for the screen and for paper. Every text is escaped.
std::string html_of(const Flow& flow, const PageWords& words);

} // namespace boardmark::report
