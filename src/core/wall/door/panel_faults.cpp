#include <boardmark/core/panels/panel_design.hpp>

#include "wall_faults.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

// As many as somebody casts, and as a search looks through in a moment; common practice, no source.
constexpr int most_panels_cast = 64;
constexpr std::size_t most_combinations_searched = 4096;

bool is_pair_of(const PanelPair& pair, const PanelWishes& panels) {
    return pair.first < pair.second && pair.second < panels.factors.size();
}

/// Whether every factor differs and every pair is one of two of them.
bool can_be_asked(const PanelWishes& panels) {
    std::size_t combinations = 1;
    for (const PanelFactor& factor : panels.factors) {
        combinations *= std::min(factor.levels.size(), most_combinations_searched + 1);
        if (factor.levels.size() < 2 || combinations > most_combinations_searched) {
            return false;
        }
    }
    return !panels.factors.empty() && std::ranges::all_of(panels.pairs, [&](const PanelPair& pair) {
        return is_pair_of(pair, panels);
    });
}

int least_of(const PanelWishes& panels) {
    PanelAsk ask{.levels = {}, .pairs = panels.pairs};
    for (const PanelFactor& factor : panels.factors) {
        ask.levels.push_back(static_cast<int>(factor.levels.size()));
    }
    return least_panels(ask);
}

} // namespace

void find_panel_faults(const PanelWishes& panels, const FaultList& list) {
    const Field field = Field::sample_panels;
    for (const auto& measure : {panels.length_m, panels.height_m, panels.thickness_mm,
                                panels.mixer_m3, panels.viewing.distance_m, panels.viewing.age_d}) {
        list.hold(field, measure, above_nothing);
    }
    list.hold(field, panels.allowance_percent, whole_share);
    list.hold(field, panels.repeats, {.low = 0, .high = most_panels_cast});
    for (const double age_h : panels.strip_after_h) {
        list.hold(field, age_h, above_nothing);
    }
    if (!can_be_asked(panels)) {
        list.impossible(field, "needs factors of two levels or more, and pairs of two of them");
        return;
    }
    const double least = least_of(panels);
    list.hold(field, least, {.low = 2, .high = most_panels_cast});
    if (panels.number) {
        list.hold(field, *panels.number, {.low = least, .high = most_panels_cast});
    }
}

} // namespace boardmark::core
