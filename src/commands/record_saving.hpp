#pragma once

#include <boardmark/report/strength/record_report.hpp>

#include "arguments.hpp"
#include "files_read.hpp"

#include <string>
#include <vector>

namespace boardmark::commands {

/// Saves the rows that `--import` names, all or none. Throws Failure where a row is wrong or the
/// record holds it otherwise. Adds to `files_read` what was read.
report::SavedRows import_rows(const Arguments& arguments, FilesRead& files_read);

/// Saves what `--add` names: a trial or strength results. Adds to `files_read` what was read.
report::SavedRows add_file(const Arguments& arguments, FilesRead& files_read);

} // namespace boardmark::commands
