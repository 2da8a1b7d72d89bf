#pragma once

#include <boardmark/core/code/code_tables.hpp>

#include "code_data.hpp"

namespace boardmark::reference {

/// How a code leads from a site to classes: PREFIX-site and PREFIX-soil-sulfate. A code without
/// such a table gives a site no class.
core::SiteRules site_rules(const CodeData& data);

} // namespace boardmark::reference
