#pragma once

#include <boardmark/core/basis/unit_system.hpp>
#include <boardmark/core/mix/vocabulary.hpp>
#include <boardmark/core/strength/strength_tables.hpp>

#include <vector>

namespace boardmark::reference {

/// How strength tests are judged and evaluated.
core::StrengthTables strength_tables(core::UnitSystem system);

/// Classes by cylinder and by cube.
std::vector<core::StrengthClass> strength_classes();

/// Every class by which a code states a strength: those of each table CODE-strength-class.
std::vector<core::StrengthName> strength_names();

} // namespace boardmark::reference
