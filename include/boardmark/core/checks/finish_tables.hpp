#pragma once

#include <boardmark/core/basis/size_row.hpp>
#include <boardmark/core/basis/source.hpp>
#include <boardmark/core/basis/typical_figure.hpp>

#include <vector>

namespace boardmark::core {

/// Most fines up to a size of stone, kg/m3: linear between two amounts of cement.
struct MostFines {
    double up_to_mm;
    double cement_low_kg_m3;
    double at_low_kg_m3;
    double cement_high_kg_m3;
    double at_high_kg_m3;
    double raised_by_kg_m3; ///< at most, for cement above the second amount and for pozzolans
    Source source;
};

/// What a board-marked face is advised to have.
struct FinishTables {
    TypicalFigure least_paste_percent;
    TypicalFigure least_mortar_percent;
    TypicalFigure largest_size_mm;
    TypicalFigure w_cm_change;   ///< that shows in colour
    Source constancy_source;     ///< of one plant and unchanged materials
    TypicalFigure bleeding_w_cm; ///< above it a sign of bleeding
    TypicalFigure bleeding_signs;
    TypicalFigure redosings; ///< of a reducer on site, at most
    TypicalFigure redose_revolutions;
    SizeRow least_fines_kg_m3;
    double least_fines_below_mm; ///< the sieve below which they count
    double most_fines_below_mm;
    double most_fines_strength_mpa;             ///< up to which a maximum is published
    std::vector<MostFines> most_fines_freezing; ///< increasing sizes
    std::vector<MostFines> most_fines_other;
};

} // namespace boardmark::core
