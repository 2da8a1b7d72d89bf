#pragma once

#include <boardmark/core/brief/brief.hpp>
#include <boardmark/core/panels/panel_design.hpp>
#include <boardmark/core/panels/panel_room.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// A concrete that panels are cast of.
struct PanelMix {
    std::string file;                ///< as the wall file names it
    bool of_the_wall = false;        ///< the one that the wall is meant to be of
    std::optional<double> w_cm = {}; ///< absent where no mix follows from the file
    std::optional<double> density_kg_m3 = {};
    std::vector<Check> checks = {};
};

/// One small panel.
struct SamplePanel {
    int number; ///< that stands on it, without a hint of what it is of
    PanelRow levels;
    bool repeat = false; ///< of the first panel
    int batch = 0;
    int place = 0; ///< in the order of casting
};

/// Concrete mixed at once, for panels in the order of casting.
struct PanelBatch {
    int number;
    std::size_t mix; ///< place among the mixes
    std::vector<int> panels;
    std::optional<double> panels_m3 = {}; ///< absent where no size is stated
    std::optional<double> mixed_m3 = {};  ///< with the allowance
};

/// Something that is scored on each panel.
struct ScoreItem {
    std::string name; ///< "colour even"
    Phrase how;
};

/// Sample panels and the mock-up: what is cast, in which order, what it can show, how it is judged.
struct PanelProgramme {
    PanelDesign design;
    std::vector<PanelDesign> others; ///< what else could be cast, increasing panels
    std::vector<PanelMix> mixes;     ///< in the order of the factor's levels; else the wall's
    std::vector<SamplePanel> panels; ///< by number, repeats last
    std::vector<PanelBatch> batches; ///< in the order of casting
    std::optional<double> panel_m3 = {};
    std::optional<double> panel_kg = {}; ///< of the heaviest concrete
    PanelRoom room;
    PanelRoom mockup_room;
    std::vector<ScoreItem> scores;
    std::vector<BriefSection> rules; ///< casting, what to write down, viewing, signing
    std::vector<Phrase> cautions;
    std::vector<Check> checks; ///< without those of the mixes
    std::vector<Source> sources;
};

/// Plans the panels that a wall file asks for. Asserts that it asks for them.
///
/// @param mixes in the order of the factor `mix`; the wall's own alone where that is no factor
PanelProgramme panel_programme(const Wall& wall, const WallPlan& plan, std::vector<PanelMix> mixes,
                               const Tables& tables);

} // namespace boardmark::core
