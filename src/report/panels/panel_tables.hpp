#pragma once

#include <boardmark/report/panels/panel_report.hpp>

#include "../writing/flow.hpp"

namespace boardmark::report {

/// What differs, each level with its letter.
Flow factors_table(const PanelResult& result);

/// Panels in the order of casting, the letters of their levels.
Flow panels_table(const PanelResult& result);

Flow batches_table(const PanelResult& result, core::UnitSystem system);

/// How well each question is answered, and how its answer is reckoned from the scores.
Flow effects_table(const PanelResult& result);

/// What else could be cast.
Flow designs_table(const PanelResult& result);

/// What a panel has room for. Marks stand for words where there are many columns.
Flow room_table(const core::PanelRoom& room, core::UnitSystem system);

/// A row for each panel, to be filled in.
Flow score_sheet(const PanelResult& result, core::UnitSystem system);

/// "a" of the first level.
std::string level_letter(int level);

/// "published fraction, resolution 3"
std::string design_words(const core::PanelDesign& design);

/// "release agent", "species with treatment"; of a level beyond the second "species: c against a".
std::string question_words(const core::PanelEffect& effect, std::size_t of_levels,
                           const core::PanelWishes& wishes);

/// The key of a factor as words.
std::string factor_title(const core::PanelFactor& factor);

} // namespace boardmark::report
