#pragma once

#include "arguments.hpp"

#include <map>
#include <string>
#include <vector>

namespace boardmark::commands {

/// The words that follow a command, told apart.
struct ParsedWords {
    std::vector<std::string> files;
    /// By the option's name, what was given for it; of a switch one empty value.
    std::map<std::string, std::vector<std::string>, std::less<>> values;
};

/// Tells options and files apart. Throws Failure where an option is unknown or has no value.
///
/// @param help where the options are told: "see 'boardmark help batch'"
ParsedWords parse(const std::vector<const Option*>& options, const std::vector<std::string>& words,
                  const std::string& help);

} // namespace boardmark::commands
