#pragma once

#include <boardmark/core/basis/tables.hpp>

namespace boardmark::reference {

core::JointTables joint_tables(core::UnitSystem system);

} // namespace boardmark::reference
