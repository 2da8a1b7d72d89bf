#include <boardmark/core/panels/panel_programme.hpp>

#include "panel_case.hpp"

#include <algorithm>
#include <cassert>
#include <utility>

namespace boardmark::core {
namespace {

PanelAsk ask_of(const PanelWishes& wishes) {
    PanelAsk ask{.levels = {}, .pairs = wishes.pairs};
    for (const PanelFactor& factor : wishes.factors) {
        ask.levels.push_back(static_cast<int>(factor.levels.size()));
    }
    return ask;
}

std::optional<double> volume_of_panel_m3(const PanelWishes& wishes) {
    constexpr double mm_per_m = 1000;
    if (!wishes.length_m || !wishes.height_m || !wishes.thickness_mm) {
        return std::nullopt;
    }
    return *wishes.length_m * *wishes.height_m * *wishes.thickness_mm / mm_per_m;
}

std::optional<double> heaviest_kg_m3(const std::vector<PanelMix>& mixes) {
    std::optional<double> heaviest;
    for (const PanelMix& mix : mixes) {
        if (mix.density_kg_m3) {
            heaviest = std::max(heaviest.value_or(0), *mix.density_kg_m3);
        }
    }
    return heaviest;
}

void add_panel_source(const Source& source, std::vector<Source>& sources) {
    if (!source.citation.empty() &&
        std::ranges::count(sources, source.citation, &Source::citation) == 0) {
        sources.push_back(source);
    }
}

std::vector<Source> sources_of_programme(const PanelProgramme& programme,
                                         const PanelTables& tables) {
    std::vector<Source> sources;
    add_panel_source(programme.design.source, sources);
    for (const PanelDesign& other : programme.others) {
        add_panel_source(other.source, sources);
    }
    for (const PanelField& field : tables.fields) {
        add_panel_source(field.source, sources);
    }
    add_panel_source(tables.viewing_m.source, sources);
    for (const Check& check : programme.checks) {
        add_panel_source(check.source, sources);
    }
    return sources;
}

} // namespace

std::optional<std::size_t> mix_factor(const PanelWishes& wishes) {
    const auto found = std::ranges::find(wishes.factors, "mix", &PanelFactor::name);
    return found == wishes.factors.end()
               ? std::nullopt
               : std::optional{static_cast<std::size_t>(found - wishes.factors.begin())};
}

std::string factor_words(const PanelFactor& factor) {
    std::string words = factor.name;
    std::ranges::replace(words, '_', ' ');
    return words == "strip after" ? "stripping age" : words;
}

std::string pair_words(const PanelPair& pair, const PanelWishes& wishes) {
    return factor_words(wishes.factors[pair.first]) + " with " +
           factor_words(wishes.factors[pair.second]);
}

PanelProgramme panel_programme(const Wall& wall, const WallPlan& plan, std::vector<PanelMix> mixes,
                               const Tables& tables) {
    assert(wall.panels);
    const PanelWishes& wishes = *wall.panels;
    const PanelAsk ask = ask_of(wishes);
    const auto& published = tables.panels->designs;
    PanelDesign design = best_design(ask, wishes.number.value_or(least_panels(ask)), published);
    auto others = other_designs(ask, design, published);
    PanelProgramme programme{.design = std::move(design),
                             .others = std::move(others),
                             .mixes = std::move(mixes),
                             .panels = {},
                             .batches = {},
                             .panel_m3 = volume_of_panel_m3(wishes),
                             .room = room_on_panel(wall, plan, tables.panels),
                             .mockup_room = room_on_mockup(wall, plan, tables.panels),
                             .scores = {},
                             .rules = {},
                             .cautions = {},
                             .checks = {},
                             .sources = {}};
    const auto heaviest = heaviest_kg_m3(programme.mixes);
    if (programme.panel_m3 && heaviest) {
        programme.panel_kg = *programme.panel_m3 * *heaviest;
    }
    programme.panels = numbered_panels(programme.design, wishes.repeats);
    programme.batches = cast_in_batches(wishes, programme.panel_m3, programme.panels);
    const PanelCase panels{wall, plan, tables, programme};
    programme.checks = panel_checks(panels);
    for (Check& check : mockup_checks(panels)) {
        programme.checks.push_back(std::move(check));
    }
    programme.scores = score_items(panels);
    programme.rules = panel_rules(panels);
    programme.cautions = panel_cautions(panels);
    programme.sources = sources_of_programme(programme, tables.panels);
    return programme;
}

} // namespace boardmark::core
