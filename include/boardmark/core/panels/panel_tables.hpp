#pragma once

#include <boardmark/core/basis/typical_figure.hpp>
#include <boardmark/core/panels/panel_wishes.hpp>

#include <string>
#include <vector>

namespace boardmark::core {

/// A published fraction of a two-level design.
struct PublishedDesign {
    int factors;
    int runs;       ///< a power of two
    int resolution; ///< 3: main effects are mixed with pairs; 4: with triples; 5: pairs clear too
    /// Words of the factors beyond the first log2(runs), as the print has them: "D=AB".
    std::vector<std::string> generators;
    Source source;
};

/// Face that something needs to be judged by itself. What the wall gives is 0 here.
struct PanelField {
    PanelFeature feature;
    double length_mm;
    double height_mm;
    Source source;
};

/// What a programme of sample panels is made from.
struct PanelTables {
    std::vector<PublishedDesign> designs;
    std::vector<PanelField> fields;  ///< one of each feature
    TypicalFigure viewing_m;         ///< least distance
    TypicalFigure around_box_out_mm; ///< concrete at each of its sides
    TypicalFigure courses;           ///< of boards that show how they lie
    TypicalFigure lifts;             ///< that show the line between them
    TypicalFigure least_void_mm;     ///< across, that is counted
    TypicalFigure size_step_mm;      ///< to which proposed sizes are rounded up
};

} // namespace boardmark::core
