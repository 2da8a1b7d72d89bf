#pragma once

#include <boardmark/core/panels/panel_wishes.hpp>
#include <boardmark/core/wall/wall_plan.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

struct PanelTables;

/// Something to be shown and the face that it takes.
struct FeatureRoom {
    PanelFeature feature;
    std::optional<double> length_mm = {}; ///< absent where the wall file lacks the figure
    std::optional<double> height_mm = {}; ///< likewise
    std::string missing = {};             ///< key of the wall file that would give it
    bool wished = false;
    bool fits_alone = false; ///< on the panel with nothing beside it
    bool fits = false;       ///< beside what is wished for before it
};

/// What a panel has room for. Fields do not overlap, so that each is judged by itself: they lie
/// side by side, and above each other where the height has room; a corner and a joint take it all.
struct PanelRoom {
    std::optional<double> length_m = {}; ///< of the panel, as the file states it
    std::optional<double> height_m = {};
    std::vector<FeatureRoom> features; ///< all of them; first the wished ones in their order
    bool wish_stated = false;          ///< otherwise taken from the walls
    std::optional<double> proposed_length_m = {}; ///< for all that is wished and known
    std::optional<double> proposed_height_m = {}; ///< the stated one where it is enough

    bool is_sized() const { return length_m && height_m; }
};

/// Whether there is such a thing on the walls of the file. A face and a repair always are.
bool walls_have(PanelFeature feature, const Wall& wall, const WallPlan& plan);

/// Room on the small panels; without `shows` they are meant for the face and its boards alone.
PanelRoom room_on_panel(const Wall& wall, const WallPlan& plan, const PanelTables& tables);

/// Room on the mock-up; without `shows` it is meant for everything that the walls have.
PanelRoom room_on_mockup(const Wall& wall, const WallPlan& plan, const PanelTables& tables);

} // namespace boardmark::core
