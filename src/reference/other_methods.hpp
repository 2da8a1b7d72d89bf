#pragma once

#include <boardmark/core/basis/unit_system.hpp>
#include <boardmark/core/method/method_tables.hpp>
#include <boardmark/core/mix/method.hpp>

namespace boardmark::reference {

/// Names the method in the tables and adds its own; those of ACI 211.1 stay beside them.
void choose_method(core::Method method, core::UnitSystem system, core::MethodTables& tables);

} // namespace boardmark::reference
