#pragma once

// What each target does with any bytes at all. A target is a program of its own: libFuzzer's, or the
// replay of kept inputs.

#include <boardmark/input/reading/loader.hpp>

#include <string>

namespace boardmark::fuzz {

/// Files of examples/ that a fuzzed file may name; no other file is read.
input::Loader example_files();

/// Ends the program where an output is not what its form promises: JSON that parses, text that does
/// not steer a terminal, rows of one width, a page without a script.
void demand_text(const std::string& text);
void demand_json(const std::string& json);
void demand_csv(const std::string& csv);
void demand_html(const std::string& page);

/// All forms of a worked result.
template <class Worked>
void demand_outputs(const Worked& worked) {
    demand_text(worked.text());
    demand_text(worked.text(true));
    demand_json(worked.json());
    demand_csv(worked.csv());
    demand_html(worked.html());
}

} // namespace boardmark::fuzz
