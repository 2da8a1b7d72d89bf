#pragma once

#include <boardmark/core/basis/unresolved.hpp>
#include <boardmark/core/checks/check.hpp>
#include <boardmark/input/gate/diagnostic.hpp>
#include <boardmark/report/mix/mix_report.hpp>

#include "arguments.hpp"
#include "exit_code.hpp"
#include "failure.hpp"
#include "files_read.hpp"
#include "waiting_line.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace boardmark::commands {

/// Where a result came from.
struct Origin {
    core::UnitSystem system; ///< of the file
    FilesRead files_read;
};

/// How text is to be written: units, explanation, colour.
report::TextStyle text_style(const Arguments& arguments, core::UnitSystem system_of_file);

/// Writes a result, already in its form, where the arguments say.
void write_where_asked(const std::string& written, const Arguments& arguments,
                       const Origin& origin);

/// Writes a text that has one form only. Throws Failure where `--format` asks for a form.
void write_only_form(const std::string& written, const Arguments& arguments);

/// The JSON of a result, made whatever form is asked for: it holds every figure, and writing it
/// stops at one that is not finite. Where the figures can be looked at by themselves, and nobody
/// asks for it, it is left empty; in the page too, which tells a result anew as one types: there a
/// figure is looked at where it is written, and one that is not shown misleads nobody.
template <class Result>
std::string json_or_fault(const Result& result, Format asked) {
    // By the room of the result, so that what writes it may be declared after this header.
    using report::json;
    if (asked == Format::json) {
        return json(result);
    }
#ifdef BOARDMARK_IN_PAGE
    return {};
#else
    using report::all_finite;
    if constexpr (requires { all_finite(result); }) {
        if (all_finite(result)) {
            return {};
        }
    }
    return json(result);
#endif
}

/// A result in a form that is asked for.
template <class Result>
std::string in_form(const Result& result, Format asked, const report::TextStyle& style) {
    std::string in_si = json_or_fault(result, asked);
    using report::csv; // as in json_or_fault
    using report::html;
    using report::text;
    switch (asked) {
    case Format::text:
        return text(result, style);
    case Format::json:
        break;
    case Format::csv:
#ifdef BOARDMARK_IN_PAGE // it shows none, and need not carry what nothing calls
        return {};
#else
        return csv(result, style.system);
#endif
    case Format::html:
        return html(result, style);
    }
    return in_si;
}

/// Writes a result in the form and to the place that the arguments ask for.
template <class Result>
void deliver(const Result& result, const Arguments& arguments, const Origin& origin) {
    const std::string written = while_waiting("writing", arguments, [&] {
        return in_form(result, arguments.format(), text_style(arguments, origin.system));
    });
    write_where_asked(written, arguments, origin);
}

/// What was found wrong in a file goes to standard error: errors end the command, warnings do not
/// unless there is no result.
void demand_sound(bool has_result, const input::Diagnostics& diagnostics,
                  const Arguments& arguments,
                  std::string_view consequence = "nothing was calculated");

/// Figures that are possible but hardly true, as warnings on standard error.
void tell(const std::vector<core::Phrase>& improbable, const Arguments& arguments,
          core::UnitSystem system_of_file);

/// 1 where a requirement is not met, else 0.
ExitCode verdict(const std::vector<core::Check>& checks);

/// What is told where no mix follows from well-formed inputs.
Failure no_mix_follows(const core::Unresolved& unresolved, const Arguments& arguments,
                       core::UnitSystem system_of_file);

/// The same of another file than the one of the command line.
Failure no_mix_follows(const core::Unresolved& unresolved, const std::string& file,
                       const Arguments& arguments, core::UnitSystem system_of_file);

} // namespace boardmark::commands
