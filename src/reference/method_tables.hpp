#pragma once

#include <boardmark/core/basis/unit_system.hpp>
#include <boardmark/core/method/method_tables.hpp>

#include <vector>

namespace boardmark::reference {

/// Tables of ACI 211.1-91.
core::MethodTables method_tables(core::UnitSystem system);

/// Openings of the sieves whose sums make the fineness modulus.
std::vector<double> fineness_sieves_mm();

} // namespace boardmark::reference
