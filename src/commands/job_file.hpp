#pragma once

#include <boardmark/core/paper/paper_rules.hpp>
#include <boardmark/core/paper/specification.hpp>
#include <boardmark/report/paper/specification_report.hpp>

#include "planned_wall.hpp"
#include "worked_mix.hpp"

#include <optional>
#include <variant>
#include <vector>

namespace boardmark::commands {

/// The option that says of which day the papers are.
constexpr Option paper_date_option{
    "date", "YYYY-MM-DD", "day of the paper; ages count to it (default: to the first pour)"};

/// The day that `--date` says. Throws Failure where it is none.
std::optional<core::Day> paper_date(const Arguments& arguments);

/// A wall with its mix, or a mix alone, worked through, and what its files say of the papers.
struct JobFile {
    std::variant<PlannedWall, WorkedMix> opened;
    core::JobPapers papers;
    core::PaperRules rules;
    std::optional<core::Day> date;

    const PlannedWall* wall() const { return std::get_if<PlannedWall>(&opened); }
    core::PaperCase paper_case() const;
    const core::AnyCompleteMix& mix() const;
    const std::vector<core::Check>& mix_checks() const;
    std::vector<core::Check> wall_checks() const; ///< none of a mix alone
    const core::Tables& tables() const;
    const Origin& origin() const;
    std::string title() const;

    /// What a paper made of it stands on; the checks must outlive it.
    report::PaperHeading heading(const std::vector<core::Check>& mix_checks,
                                 const std::vector<core::Check>& checks) const;
};

/// Opens the file of the arguments, whichever of the two it is. Throws Failure where it is wrong;
/// gives it back where no mix follows.
std::variant<JobFile, Failure> open_job(const Arguments& arguments);

} // namespace boardmark::commands
