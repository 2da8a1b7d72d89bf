#pragma once

#include "checks.hpp"

namespace boardmark::core {

/// What stands between a mix and the strength that is read for it. Where no results of its own tell
/// it, a table does, one of portland cement and of the usual air: `watch` where less of the binder
/// is such cement than such tables serve, or where the concrete holds more air, `not checked` where
/// no portland cement is in it. By the line of a results file: `watch` where its batches held less
/// air or do not tell, or had too few specimens.
Verdict strength_doubt(const CheckContext& context);

/// Says so.
void append_strength_doubt(const CheckContext& context, Phrase& message);

} // namespace boardmark::core
