#pragma once

#include <boardmark/core/basis/unit_system.hpp>
#include <boardmark/core/code/alkali_rules.hpp>

namespace boardmark::reference {

/// Most alkali by level of prevention, and what stands beside it.
core::AlkaliRules alkali_rules(core::UnitSystem system);

} // namespace boardmark::reference
