#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// Something that a panel can show, apart from the print of its boards.
enum class PanelFeature { face, board_joint, tie, corner, joint, lift_line, box_out, repair };

/// As files and results name it: "lift line".
const char* name_of(PanelFeature feature);

/// What is varied from panel to panel: the boards' species, their treatment, a release agent.
struct PanelFactor {
    std::string name; ///< the key of the file, "release_agent"
    std::vector<std::string>
        levels; ///< in the user's words, at least two; the first as it is meant
};

/// Two factors of which is asked whether one works otherwise beside the other.
struct PanelPair {
    std::size_t first; ///< place among the factors, less than `second`
    std::size_t second;
};

/// From where, in which light and by whom panels are judged.
struct PanelViewing {
    std::optional<double> distance_m = {};
    std::string light = {};           ///< the user's words
    std::string by = {};              ///< a role
    std::optional<double> age_d = {}; ///< of the concrete
};

/// The small panels that a wall file asks for.
struct PanelWishes {
    std::vector<PanelFactor> factors;       ///< at least one
    std::vector<double> strip_after_h = {}; ///< the levels of `strip_after` as times
    std::vector<PanelPair> pairs = {};      ///< asked besides every factor's own effect
    std::optional<int> number = {};         ///< of panels, repeats aside; else the fewest
    int repeats = 0;                        ///< of the first panel, each from a batch of its own
    std::optional<double> length_m = {};
    std::optional<double> height_m = {};
    std::optional<double> thickness_mm = {};
    std::vector<PanelFeature> shows = {};         ///< in order of importance; empty: not stated
    std::optional<double> mixer_m3 = {};          ///< largest batch
    std::optional<double> allowance_percent = {}; ///< of concrete, for tests and waste
    PanelViewing viewing = {};
    std::string signed_by = {}; ///< a role
};

} // namespace boardmark::core
