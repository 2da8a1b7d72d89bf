#pragma once

#include <boardmark/core/forms/flow_class.hpp>
#include <boardmark/core/wall/bar_size.hpp>
#include <boardmark/core/wall/wall.hpp>
#include <boardmark/input/wall/read_wall.hpp>

#include "../reading/file_context.hpp"
#include "../values/section.hpp"

/// The readers of a wall file's sections. Where a key is missing or wrong its fault is told and the
/// value is not to be used.
namespace boardmark::input {

std::vector<core::WallRun> read_runs(const FileContext& context);

/// The bends of a run whose length has been read: by station, or only counted.
void read_corners(const Section& section, core::WallRun& run);

/// The openings of a run whose shape has been read.
std::vector<core::Opening> read_openings(const Section& openings, const core::WallRun& run);

/// Planters, bench tops and embedments.
void read_parts(const FileContext& context, core::WallWork& wall);

/// Boards, ties, edges, layout and joints, held against the walls that have been read.
void read_forms(const FileContext& context, core::WallWork& wall);

std::optional<core::Reinforcement> read_reinforcement(const FileContext& context,
                                                      const std::vector<core::BarSize>& bars,
                                                      const core::WallWork& wall);

core::WallPlacing read_placing(const FileContext& context);

std::optional<core::Mockup> read_mockup(const FileContext& context);

/// The list `shows` of a section.
std::vector<core::PanelFeature> read_features(const Section& section);

std::optional<core::PanelWishes> read_panels(const FileContext& context);

core::OrderRules read_order(const FileContext& context);

std::optional<core::WallPrices> read_prices(const FileContext& context);

/// Tells where the class of flow contradicts the slump of the mix that has been read.
void hold_flow_class(const FileContext& context, const core::Wall& wall,
                     const core::FlowClasses& classes);

} // namespace boardmark::input
