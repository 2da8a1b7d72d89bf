#pragma once

#include <boardmark/core/panels/panel_design.hpp>

#include <vector>

namespace boardmark::core {

/// The same design with levels renamed so that its first row has the first level of each factor,
/// the rows then in order. No variance changes: no level is told from another by it.
std::vector<PanelRow> relabelled(std::vector<PanelRow> rows, const PanelAsk& ask);

} // namespace boardmark::core
