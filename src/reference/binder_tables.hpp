#pragma once

#include <boardmark/core/basis/unit_system.hpp>
#include <boardmark/core/code/code_tables.hpp>

#include "code_data.hpp"

namespace boardmark::reference {

/// What the code counts as binder; its categories and classes are known already.
core::BinderRules binder_rules(const CodeData& data, const core::CodeTables& code,
                               core::UnitSystem system);

} // namespace boardmark::reference
