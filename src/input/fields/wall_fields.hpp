#pragma once

#include "fields.hpp"

/// The parts of a wall file's table of keys, one file each.
namespace boardmark::input {

/// Boards, ties, edges, joints and reinforcement.
std::span<const Field> form_fields();

/// How the wall is placed, the mock-up and the order.
std::span<const Field> placing_fields();

std::span<const Field> price_fields();

/// Small sample panels.
std::span<const Field> panel_fields();

/// What a panel can show, in the order of `core::PanelFeature`.
inline constexpr std::string_view panel_features[] = {"face",  "board joint", "tie",     "corner",
                                                      "joint", "lift line",   "box-out", "repair"};

} // namespace boardmark::input
