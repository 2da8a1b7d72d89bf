#pragma once

#include <boardmark/core/basis/unit_system.hpp>
#include <boardmark/core/paper/paper_rules.hpp>

namespace boardmark::reference {

/// Ages of papers, days ahead, rates of testing, patching and aftercare, in one system of units.
core::PaperRules paper_rules(core::UnitSystem system);

} // namespace boardmark::reference
