#include "../basis/conversions.hpp"
#include "../basis/tolerance.hpp"
#include "panel_case.hpp"
#include "steady_numbers.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace boardmark::core {
namespace {

double with_allowance(double m3, const PanelWishes& wishes) {
    return m3 * (1 + wishes.allowance_percent.value_or(0) / whole_percent);
}

/// Panels that one batch fills; nothing where neither size nor mixer bounds it.
std::optional<std::size_t> panels_in_batch(const PanelWishes& wishes,
                                           std::optional<double> panel_m3) {
    if (!panel_m3 || !wishes.mixer_m3) {
        return std::nullopt;
    }
    constexpr double conversion = 1e-9;
    const double fill = *wishes.mixer_m3 / with_allowance(*panel_m3, wishes);
    return std::max<std::size_t>(1, static_cast<std::size_t>(std::floor(fill + conversion)));
}

/// In an order that nobody chose, so that what changes over a day falls on no factor.
void shuffle(std::vector<int>& panels, SteadyNumbers& numbers) {
    for (std::size_t last = panels.size(); last > 1; --last) {
        std::swap(panels[last - 1], panels[numbers.below(last)]);
    }
}

/// Panels of one concrete in as few batches as the mixer allows, filled evenly.
std::vector<std::vector<int>> divided(const std::vector<int>& panels,
                                      std::optional<std::size_t> most) {
    const std::size_t in_batch = most.value_or(panels.size());
    const std::size_t batches = (panels.size() + in_batch - 1) / in_batch;
    std::vector<std::vector<int>> parts(batches);
    for (std::size_t i = 0; i < panels.size(); ++i) {
        parts[i * batches / panels.size()].push_back(panels[i]);
    }
    return parts;
}

} // namespace

std::vector<SamplePanel> numbered_panels(const PanelDesign& design, int repeats) {
    std::vector<SamplePanel> panels;
    for (const PanelRow& row : design.rows) {
        panels.push_back({.number = static_cast<int>(panels.size()) + 1, .levels = row});
    }
    for (int repeat = 0; repeat < repeats; ++repeat) {
        panels.push_back({.number = static_cast<int>(panels.size()) + 1,
                          .levels = design.rows.front(),
                          .repeat = true});
    }
    return panels;
}

std::vector<PanelBatch> cast_in_batches(const PanelWishes& wishes, std::optional<double> panel_m3,
                                        std::vector<SamplePanel>& panels) {
    const auto factor = mix_factor(wishes);
    const std::size_t mixes = factor ? wishes.factors[*factor].levels.size() : 1;
    const auto most = panels_in_batch(wishes, panel_m3);
    SteadyNumbers numbers;
    std::vector<PanelBatch> batches;
    const auto add_batch = [&](std::size_t mix, std::vector<int> filled) {
        batches.push_back({.number = static_cast<int>(batches.size()) + 1,
                           .mix = mix,
                           .panels = std::move(filled)});
    };
    for (std::size_t mix = 0; mix < mixes; ++mix) {
        std::vector<int> of_mix;
        for (const SamplePanel& panel : panels) {
            const auto level = factor ? static_cast<std::size_t>(panel.levels[*factor]) : 0;
            if (!panel.repeat && level == mix) {
                of_mix.push_back(panel.number);
            }
        }
        shuffle(of_mix, numbers);
        for (auto& filled :
             of_mix.empty() ? std::vector<std::vector<int>>{} : divided(of_mix, most)) {
            add_batch(mix, std::move(filled));
        }
    }
    for (const SamplePanel& panel : panels) { // the first panel is of the first mix
        if (panel.repeat) {
            add_batch(0, {panel.number});
        }
    }
    int place = 0;
    for (PanelBatch& batch : batches) {
        for (const int number : batch.panels) {
            SamplePanel& panel = panels[static_cast<std::size_t>(number - 1)];
            panel.batch = batch.number;
            panel.place = ++place;
        }
        if (panel_m3) {
            batch.panels_m3 = *panel_m3 * static_cast<double>(batch.panels.size());
            batch.mixed_m3 = with_allowance(*batch.panels_m3, wishes);
        }
    }
    return batches;
}

} // namespace boardmark::core
