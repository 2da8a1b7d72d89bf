#pragma once

#include <boardmark/core/checks/code_judgement.hpp>

#include "arguments.hpp"
#include "worked_mix.hpp"

#include <vector>

namespace boardmark::commands {

/// Options of `check` that hold a mix against more codes than its own.
inline constexpr Option code_option{"code", "CODE",
                                    "check it against this code as well: \"EN 206\", IS 456 …"};
inline constexpr Option all_codes_option{
    "all-codes", "", "check it against every code that the file states classes of"};

/// The mix held against its own code and those that the options ask for; nothing where none is
/// asked. Throws Failure where a code is not known or the file states no class of it.
std::vector<core::CodeJudgement> asked_codes(const WorkedMix& worked, const Arguments& arguments);

} // namespace boardmark::commands
