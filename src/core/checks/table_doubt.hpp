#pragma once

#include "checks.hpp"

namespace boardmark::core {

/// Where no results of its own tell a mix's strength, a table does, one of portland cement and of
/// the usual air: `watch` where less of the binder is such cement than such tables serve, or where
/// the concrete holds more air, `not checked` where no portland cement is in it.
Verdict table_doubt(const CheckContext& context);

/// Says so.
void append_table_doubt(const CheckContext& context, Phrase& message);

} // namespace boardmark::core
