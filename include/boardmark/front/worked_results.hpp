#pragma once

#include <boardmark/core/strength/strength_findings.hpp>
#include <boardmark/report/strength/strength_report.hpp>

#include <string>
#include <utility>

namespace boardmark {

/// A file of strength results and what they show.
class WorkedResults {
public:
    /// @param today days since 1970-01-01
    WorkedResults(core::StrengthRecord record, core::StrengthFindings findings, int today)
        : record_{std::move(record)}
        , findings_{std::move(findings)}
        , today_{today} {}

    const core::StrengthRecord& record() const { return record_; }
    const core::StrengthFindings& findings() const { return findings_; }

    /// The reports that the program writes, in the units of the file.
    std::string text(bool explain = false) const;
    std::string json() const; ///< SI, unrounded
    std::string csv() const;
    std::string html() const; ///< one page that needs no network

private:
    report::StrengthResult result() const { return {record_, findings_, today_}; }

    core::StrengthRecord record_;
    core::StrengthFindings findings_;
    int today_;
};

} // namespace boardmark
