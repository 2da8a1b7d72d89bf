#pragma once

#include <boardmark/core/tables.hpp>

namespace boardmark::reference {

core::JointTables joint_tables(core::UnitSystem system);

} // namespace boardmark::reference
