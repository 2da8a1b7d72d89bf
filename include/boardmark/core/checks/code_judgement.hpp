#pragma once

#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/code/code_tables.hpp>

#include <string>
#include <vector>

namespace boardmark::core {

/// One mix held against one code: what that code asks, and nothing else.
struct CodeJudgement {
    std::string code;                  ///< "EN 206"
    std::string edition;               ///< "2013+A2:2021"; empty where none is known
    std::vector<std::string> exposure; ///< in the code's own words, those by the site too
    std::vector<Check> checks;
};

/// Holds proportions against the code that their own file names.
///
/// @param tables with that code
CodeJudgement judged_by_own_code(CompleteRequirements requirements, const Proportions& proportions,
                                 const Tables& tables);

/// Holds them against another code, with the classes that the file states under
/// `exposure_by_code` and those that follow from its site. No class of one code is turned into a
/// class of another.
///
/// @param tables of the mix, with its own code
/// @param code   the other one, in the system of the tables
CodeJudgement judged_by_other_code(CompleteRequirements requirements,
                                   const Proportions& proportions, const Tables& tables,
                                   const CodeTables& code);

} // namespace boardmark::core
