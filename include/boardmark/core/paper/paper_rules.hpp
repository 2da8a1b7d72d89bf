#pragma once

#include <boardmark/core/basis/typical_figure.hpp>
#include <boardmark/core/paper/job_papers.hpp>

#include <map>
#include <string>
#include <string_view>

namespace boardmark::core {

/// How old a paper may be, and who says so.
struct PaperAgeRule {
    PaperAge age;
    Source source;
    bool stated = false; ///< by the file, in place of what is usual
};

/// Published figures behind the papers of a job, by the names of their rows.
class PaperRules {
public:
    std::map<Paper, PaperAgeRule> ages;           ///< a paper without one has no age that is asked
    std::map<std::string, TypicalFigure> figures; ///< times in days, else in the inside units

    /// Asserts that there is one of that name.
    const TypicalFigure& operator()(std::string_view name) const;
};

} // namespace boardmark::core
