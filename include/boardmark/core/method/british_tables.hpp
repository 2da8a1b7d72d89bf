#pragma once

#include <boardmark/core/basis/size_row.hpp>
#include <boardmark/core/basis/typical_figure.hpp>
#include <boardmark/core/mix/method.hpp>

#include <vector>

namespace boardmark::core {

/// Strength of cubes at the ratio at which the chart of BRE is entered.
struct StartStrength {
    double cement_class;
    Surface coarse;
    double age_d;
    double strength_mpa;
    Source source;
};

/// Free water of one range of slump and one surface.
struct FreeWaterRow {
    double high_mm; ///< slump up to which it holds, from where the row before it ends
    Surface surface;
    SizeRow water_kg_m3;
};

/// What multiplies the deviation for a share of results that may be defective.
struct DefectiveFactor {
    double percent;
    double factor;
    Source source;
};

/// Tables of the British method.
struct BritishTables {
    std::vector<StartStrength> start;
    std::vector<FreeWaterRow> water;
    std::vector<DefectiveFactor> defective; ///< falling shares
    TypicalFigure deviation_mpa;            ///< without results, from the strength below on
    TypicalFigure deviation_from_mpa;       ///< strength from which it is constant
    TypicalFigure least_deviation_mpa;      ///< with results
    TypicalFigure least_tests;              ///< from which own results count
    TypicalFigure air_strength_share;       ///< of strength lost for each percent of air
    TypicalFigure air_density_step;         ///< kg/m3 for each percent of air and relative density
    TypicalFigure fine_water_share;         ///< of the water by the fine aggregate's surface
};

} // namespace boardmark::core
