#include <boardmark/core/wall/wall_contradictions.hpp>

#include "bar_size.hpp"
#include "wall_sections.hpp"

namespace boardmark::input {
namespace {

std::optional<core::BarGrid> read_grid(const Section& section,
                                       const std::vector<core::BarSize>& sizes) {
    if (!section.stands()) {
        return std::nullopt;
    }
    section.demand({"bar", "spacing"});
    const core::BarSize* bar = read_bar(section, sizes);
    const auto spacing_mm = section.number("spacing");
    if (!bar || !spacing_mm) {
        return std::nullopt;
    }
    const core::BarGrid grid{bar->diameter_mm, bar->area_mm2, *spacing_mm};
    if (core::touch(grid)) {
        section.refuse("spacing", ": bars of " + bar->name + " touch at this spacing",
                       "it is measured from centre to centre");
    }
    return grid;
}

/// The bars of every layer with the cover outside them, against the thinnest run.
void hold_in_wall(const Section& section, const core::Reinforcement& bars,
                  const core::WallWork& wall) {
    if (core::do_not_fit(bars, wall)) {
        section.refuse("cover",
                       ": with it on both sides the bars do not fit into the thinnest wall",
                       "check cover, layers, bars and thickness");
    }
}

/// What the boards take from the cover.
void hold_against_relief(const Section& section, const core::Reinforcement& bars,
                         const core::WallWork& wall) {
    if (core::lie_bare(bars, wall)) {
        section.refuse("cover", " is not more than 'boards.relief': bars would lie bare",
                       "the cover that counts is measured from the deepest board joint");
    }
}

} // namespace

std::optional<core::Reinforcement> read_reinforcement(const FileContext& context,
                                                      const std::vector<core::BarSize>& sizes,
                                                      const core::WallWork& wall) {
    const Section section{context, {"reinforcement"}};
    if (!section.stands()) {
        return std::nullopt;
    }
    core::Reinforcement bars{.vertical = read_grid(section.below("vertical"), sizes),
                             .horizontal = read_grid(section.below("horizontal"), sizes),
                             .layers = section.count("layers", 1),
                             .cover_mm = section.number("cover")};
    bars.layers_stated = section.number("layers").has_value();
    bars.yield_stated = section.number("yield_strength").has_value();
    bars.yield_strength_mpa = section.number("yield_strength").value_or(bars.yield_strength_mpa);
    hold_in_wall(section, bars, wall);
    hold_against_relief(section, bars, wall);
    return bars;
}

} // namespace boardmark::input
