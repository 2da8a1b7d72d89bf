#pragma once

#include <boardmark/core/basis/unit_system.hpp>
#include <boardmark/core/forms/form_tables.hpp>

namespace boardmark::reference {

/// Pressure of fresh concrete on forms and loads of form ties. What a system prints in its own
/// units comes as SI.
core::FormTables form_tables(core::UnitSystem system);

/// Classes of flow and where each ends.
core::FlowClasses flow_classes();

} // namespace boardmark::reference
