#pragma once

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/mix/proportions.hpp>
#include <boardmark/core/paper/job_papers.hpp>
#include <boardmark/core/paper/paper_rules.hpp>
#include <boardmark/core/wall/wall_plan.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// What papers are written from: a mix, and the wall that it is for where there is one.
struct PaperCase {
    const Requirements& asked;
    const Proportions& mix;
    const std::vector<Check>& mix_checks;
    const Tables& tables;
    const PaperRules& rules;
    const JobPapers& job;
    const Wall* wall = nullptr;
    const WallPlan* plan = nullptr; ///< of the wall; there where it is
    std::optional<Day> today = {};  ///< on which the papers are written, where it is stated
};

/// One requirement that somebody can check.
struct Clause {
    std::string number;                    ///< "joints 2": by its subject
    Phrase text;                           ///< an open choice stands in it in brackets
    std::vector<std::string> options = {}; ///< of the open choice; none where it is settled
    std::string settles = {};              ///< the key that settles it
    Phrase advice = {};                    ///< beside an open choice
    Phrase reason = {};
    Source source = {};

    bool is_open() const { return !settles.empty(); }
};

/// The clauses of one subject.
struct ClauseGroup {
    std::string division; ///< "GENERAL", "MATERIALS", "WORK"
    std::string subject;  ///< "joints"
    std::vector<Clause> clauses;
};

/// The clauses of a job in the order of the trade. No subject without a clause, no clause whose
/// subject the files do not hold.
struct Specification {
    std::vector<ClauseGroup> groups;
    std::vector<Phrase> cautions;

    std::size_t open() const; ///< choices that the files do not settle
};

/// Writes what is required, filled from the files.
Specification specification_of(const PaperCase& papers);

} // namespace boardmark::core
