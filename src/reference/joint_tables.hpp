#pragma once

#include <boardmark/core/basis/unit_system.hpp>
#include <boardmark/core/wall/joint_tables.hpp>

namespace boardmark::reference {

core::JointTables joint_tables(core::UnitSystem system);

} // namespace boardmark::reference
