#pragma once

#include "checks.hpp"

namespace boardmark::core {

/// Where no results of its own tell a mix's strength, a table of portland cement does: `watch`
/// where less of the binder is such cement than such tables serve, `not checked` where none is.
Verdict table_doubt(const CheckContext& context);

/// Says so.
void append_table_doubt(const CheckContext& context, Phrase& message);

} // namespace boardmark::core
