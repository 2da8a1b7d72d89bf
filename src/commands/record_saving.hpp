#pragma once

#include <boardmark/report/record_report.hpp>

#include "arguments.hpp"

namespace boardmark::commands {

/// Saves the rows that `--import` names, all or none. Throws Failure where a row is wrong or the
/// record holds it otherwise.
report::SavedRows import_rows(const Arguments& arguments);

/// Saves what `--add` names: a trial.
report::SavedRows add_file(const Arguments& arguments);

} // namespace boardmark::commands
