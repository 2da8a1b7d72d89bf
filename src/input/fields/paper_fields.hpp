#pragma once

#include "fields.hpp"

namespace boardmark::input {

/// Dates of the papers of a mix: a mix file's.
std::span<const Field> dated_paper_fields();

/// Schedule, who carries the concrete, ages of papers, decisions: of mix and wall files.
std::span<const Field> job_fields();

} // namespace boardmark::input
