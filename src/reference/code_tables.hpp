#pragma once

#include <boardmark/core/basis/deferred.hpp>
#include <boardmark/core/basis/unit_system.hpp>
#include <boardmark/core/code/code_tables.hpp>

#include "code_data.hpp"

namespace boardmark::reference {

/// A code from its tables, in one system of units. Asserts that the ones it must have are there:
/// PREFIX-exposure and PREFIX-aggregate-size. Average strength is one practice for all codes.
///
/// @param site  how it leads from a site to classes, see site_rules
core::CodeTables code_tables(const CodeData& data, core::UnitSystem system,
                             core::Deferred<core::SiteRules> site);

} // namespace boardmark::reference
