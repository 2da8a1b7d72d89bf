#pragma once

#include <boardmark/core/check.hpp>
#include <boardmark/core/mix.hpp>
#include <boardmark/core/proportions.hpp>
#include <boardmark/core/tables.hpp>
#include <boardmark/core/unresolved.hpp>
#include <boardmark/input/read_mix.hpp>
#include <boardmark/report/batch_report.hpp>
#include <boardmark/report/mix_report.hpp>

#include "arguments.hpp"
#include "exit_code.hpp"
#include "failure.hpp"

#include <map>
#include <string>

namespace boardmark::commands {

/// A mix that was read and proportioned, with the tables it was done with.
struct WorkedMix {
    std::string title;
    core::UnitSystem system; ///< of the file
    core::Requirements requirements;
    core::Tables tables;
    core::Proportions proportions;
    std::vector<core::Check> checks;
    std::vector<std::string> files_read; ///< no output may replace them
};

/// Reads the file of the arguments, proportions or accepts the mix and runs the checks. Warnings go
/// to standard error. Throws Failure where the file is wrong or no mix follows from it.
WorkedMix open_mix(const Arguments& arguments, input::Purpose purpose,
                    const std::map<std::string, double>& moisture_percent = {});

/// How text is to be written: units, explanation, colour.
report::TextStyle text_style(const Arguments& arguments, core::UnitSystem system_of_file);

/// Writes a result, already in its form, where the arguments say.
void write_where_asked(const std::string& written, const Arguments& arguments,
                       const WorkedMix& worked);

/// Writes a result in the form and to the place that the arguments ask for.
template <class Result>
void deliver(const Result& result, const Arguments& arguments, const WorkedMix& worked) {
    const report::TextStyle style = text_style(arguments, worked.system);
    switch (arguments.format()) {
    case Format::text:
        return write_where_asked(report::text(result, style), arguments, worked);
    case Format::json:
        return write_where_asked(report::json(result), arguments, worked);
    case Format::csv:
        return write_where_asked(report::csv(result, style.system), arguments, worked);
    }
}

/// 1 where a requirement is not met, else 0.
ExitCode verdict(const std::vector<core::Check>& checks);

/// What is told where no mix follows from well-formed inputs.
Failure no_mix_follows(const core::Unresolved& unresolved, const Arguments& arguments,
                       core::UnitSystem system_of_file);

} // namespace boardmark::commands
