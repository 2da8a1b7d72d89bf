#pragma once

#include <boardmark/core/basis/size_row.hpp>
#include <boardmark/core/basis/typical_figure.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// A row of grades: cube strengths that share a figure.
struct GradeRow {
    double highest_mpa; ///< the row's last grade
    double value;
    Source source;
};

/// Coarse aggregate's share of all aggregate, by absolute volume, at the ratio of the table.
struct CoarseShareRow {
    int zone; ///< of the sand, 1 to 4
    SizeRow share;
};

/// Tables of IS 10262, one edition.
struct IndianTables {
    std::string edition;                    ///< "2019"
    std::vector<GradeRow> deviation_mpa;    ///< assumed without enough tests, increasing grades
    TypicalFigure fair_control_mpa;         ///< added to it where the site is less well run
    std::vector<GradeRow> least_margin_mpa; ///< empty in the edition that has none
    TypicalFigure deviations;               ///< by which the average lies above
    TypicalFigure least_tests;              ///< from which the site's own deviation counts
    std::optional<SizeRow> entrapped_air_percent; ///< absent in the edition that counts none
    SizeRow water_kg_m3;                          ///< of angular stone at the slump of the table
    TypicalFigure water_slump_mm;                 ///< up to which that water holds
    TypicalFigure water_step_percent;             ///< more for each step of slump above it
    TypicalFigure slump_step_mm;
    std::vector<TypicalFigure> less_water_kg_m3; ///< by StoneShape
    std::vector<CoarseShareRow> coarse_share;
    TypicalFigure share_ratio;      ///< the w/cm of the table
    TypicalFigure share_ratio_step; ///< for each step of w/cm below it the share grows
    TypicalFigure share_step;       ///< by this
    TypicalFigure pumped_share;     ///< times this where the concrete is pumped
};

} // namespace boardmark::core
