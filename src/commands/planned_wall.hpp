#pragma once

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/wall/wall_plan.hpp>
#include <boardmark/input/wall/read_wall.hpp>

#include "delivery.hpp"
#include "failure.hpp"

#include <variant>

namespace boardmark::commands {

/// A wall file, read and worked through.
struct PlannedWall {
    input::WallRecord record;
    core::Tables tables;
    core::WallPlan plan;
    Origin origin;
    std::vector<core::Phrase> improbable =
        {}; ///< figures of the file; the plan's cautions have them

    /// 1 where a requirement on the walls or their mix is not met, else 0.
    ExitCode verdict() const;
};

/// Throws Failure where the file is wrong; gives it back where no mix follows.
///
/// @param with_panels the file must ask for sample panels, whose mixes are read too
std::variant<PlannedWall, Failure> planned_wall(const Arguments& arguments,
                                                bool with_panels = false);

} // namespace boardmark::commands
