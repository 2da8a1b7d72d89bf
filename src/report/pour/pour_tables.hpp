#pragma once

#include <boardmark/report/pour/pour_report.hpp>

#include "../writing/flow.hpp"

namespace boardmark::report {

// The tables of the card, with blanks for what is measured on the day.

Flow loads_table(const PourResult& result, core::UnitSystem system);
Flow lifts_table(const PourResult& result, core::UnitSystem system);
Flow forms_table(const core::PourCard& card, core::UnitSystem system);
Flow tests_table(const core::PourCard& card, core::UnitSystem system);

} // namespace boardmark::report
