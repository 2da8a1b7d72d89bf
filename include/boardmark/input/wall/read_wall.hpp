#pragma once

#include <boardmark/core/wall/complete_wall.hpp>
#include <boardmark/input/gate/diagnostic.hpp>
#include <boardmark/input/mix/read_mix.hpp>
#include <boardmark/input/reading/loader.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::input {

struct WallOptions {
    const Vocabulary& vocabulary; ///< with the sizes of bars; outlives the reading
    Loader load;                  ///< gets the mix file, and what that names
    bool with_panels = false;     ///< the file must ask for sample panels, and their mixes are read
};

/// A mix that sample panels are cast of.
struct PanelMixFile {
    std::string file; ///< as the wall file names it
    core::AnyCompleteMix mix;
};

/// A wall file that was read, and the name that no calculation needs.
struct WallRecord {
    core::CompleteWall wall;
    std::string mix_file; ///< as the wall file names it
    /// In the order of the factor `mix`, or the wall's own alone; read only where it was asked for.
    std::vector<PanelMixFile> panel_mixes = {};
};

/// A wall, complete and in SI, or the reasons why there is none. Warnings may stand beside it.
struct WallReading {
    std::optional<WallRecord> record;
    Diagnostics diagnostics;
};

/// Reads a wall file and the mix file that it names: proportions to be selected, or submitted ones.
/// Every error of both is found in one run; nothing is thrown for a wrong text.
WallReading read_wall(std::string text, std::string file, const WallOptions& options);

} // namespace boardmark::input
