#pragma once

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/panels/panel_programme.hpp>

namespace boardmark::core {

/// What the programme is written from.
struct PanelCase {
    const Wall& wall;
    const WallPlan& plan;
    const Tables& tables;
    const PanelProgramme& programme; ///< as far as it is made

    const PanelWishes& wishes() const { return *wall.panels; }
};

/// Which factor holds the mixes; nothing where all panels are of one.
std::optional<std::size_t> mix_factor(const PanelWishes& wishes);

/// Panels by number, repeats last.
std::vector<SamplePanel> numbered_panels(const PanelDesign& design, int repeats);

/// Batches and the order of casting, which the panels learn.
std::vector<PanelBatch> cast_in_batches(const PanelWishes& wishes, std::optional<double> panel_m3,
                                        std::vector<SamplePanel>& panels);

std::vector<Check> panel_checks(const PanelCase& panels);
std::vector<Check> mockup_checks(const PanelCase& panels);

std::vector<ScoreItem> score_items(const PanelCase& panels);
std::vector<BriefSection> panel_rules(const PanelCase& panels);
std::vector<Phrase> panel_cautions(const PanelCase& panels);

/// "release agent" of the key "release_agent".
std::string factor_words(const PanelFactor& factor);

/// "species with treatment"
std::string pair_words(const PanelPair& pair, const PanelWishes& wishes);

} // namespace boardmark::core
