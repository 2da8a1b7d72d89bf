#pragma once

#include <boardmark/report/batch/batch_report.hpp>

#include "../writing/flow.hpp"

namespace boardmark::report {

/// Blanks for what is read of a batch, by the keys of the trial file and in their order, so that
/// the file can be filled from the ticket line by line; then the times.
Flow text_of_readings(const BatchResult& result, core::UnitSystem system);

} // namespace boardmark::report
