#include <boardmark/report/panels/panel_report.hpp>
#include <boardmark/report/writing/words.hpp>

#include "../writing/json_values.hpp"
#include "../writing/verdicts.hpp"
#include "panel_tables.hpp"

namespace boardmark::report {
namespace {

using core::UnitSystem;

Json names_of_pair(const core::PanelPair& pair, const core::PanelWishes& wishes) {
    return {wishes.factors[pair.first].name, wishes.factors[pair.second].name};
}

Json json_of(const core::PanelEffect& effect, const core::PanelWishes& wishes) {
    Json mixed = Json::array();
    for (const core::PanelPair& pair : effect.mixed_with) {
        mixed.push_back(names_of_pair(pair, wishes));
    }
    return {{"factor", wishes.factors[effect.factor].name},
            {"beside", effect.beside ? Json(wishes.factors[*effect.beside].name) : Json(nullptr)},
            {"variance", effect.variance},
            {"mixed_with", std::move(mixed)},
            {"weights", effect.weights}};
}

const char* kind_word(core::PanelDesignKind kind) {
    return kind == core::PanelDesignKind::one_at_a_time ? "one at a time"
           : kind == core::PanelDesignKind::published   ? "published fraction"
           : kind == core::PanelDesignKind::searched    ? "searched"
                                                        : "every combination";
}

Json json_of(const core::PanelDesign& design, const core::PanelWishes& wishes) {
    Json effects = Json::array();
    for (const core::PanelEffect& effect : design.effects) {
        effects.push_back(json_of(effect, wishes));
    }
    return {{"kind", kind_word(design.kind)},
            {"panels", design.rows.size()},
            {"columns", design.columns},
            {"rank", design.rank},
            {"mean_variance", design.answers_all() ? Json(design.mean_variance) : Json(nullptr)},
            {"resolution", design.resolution ? Json(*design.resolution) : Json(nullptr)},
            {"least", design.least},
            {"source", design.source.citation},
            {"effects", std::move(effects)}};
}

Json json_of(const core::SamplePanel& panel, const core::PanelWishes& wishes) {
    Json levels = Json::object();
    for (std::size_t factor = 0; factor < wishes.factors.size(); ++factor) {
        const auto level = static_cast<std::size_t>(panel.levels[factor]);
        levels[wishes.factors[factor].name] = wishes.factors[factor].levels[level];
    }
    return {{"panel", panel.number},
            {"cast", panel.place},
            {"batch", panel.batch},
            {"repeat", panel.repeat},
            {"levels", std::move(levels)}};
}

Json json_of(const core::PanelBatch& batch, const core::PanelProgramme& programme) {
    return {{"batch", batch.number},
            {"mix", programme.mixes[batch.mix].file},
            {"panels", batch.panels},
            {"panels_m3", number_or_null(batch.panels_m3)},
            {"mixed_m3", number_or_null(batch.mixed_m3)}};
}

Json json_of(const core::PanelRoom& room) {
    Json features = Json::array();
    for (const core::FeatureRoom& one : room.features) {
        features.push_back({{"feature", core::name_of(one.feature)},
                            {"length_mm", number_or_null(one.length_mm)},
                            {"height_mm", number_or_null(one.height_mm)},
                            {"missing", one.missing.empty() ? Json(nullptr) : Json(one.missing)},
                            {"wished", one.wished},
                            {"fits_alone", one.fits_alone},
                            {"fits", one.fits}});
    }
    return {{"length_m", number_or_null(room.length_m)},
            {"height_m", number_or_null(room.height_m)},
            {"wish_stated", room.wish_stated},
            {"proposed_length_m", number_or_null(room.proposed_length_m)},
            {"proposed_height_m", number_or_null(room.proposed_height_m)},
            {"features", std::move(features)}};
}

Json json_of(const core::PanelMix& mix) {
    return {{"file", mix.file},
            {"of_the_wall", mix.of_the_wall},
            {"w_cm", number_or_null(mix.w_cm)},
            {"fresh_density_kg_m3", number_or_null(mix.density_kg_m3)},
            {"checks", report::json_of(mix.checks)}};
}

Json factors_json(const core::PanelWishes& wishes) {
    Json factors = Json::array();
    for (const core::PanelFactor& factor : wishes.factors) {
        factors.push_back({{"factor", factor.name}, {"levels", factor.levels}});
    }
    return factors;
}

template <class Items>
Json all_of(const Items& items, const auto&... more) {
    Json list = Json::array();
    for (const auto& item : items) {
        list.push_back(json_of(item, more...));
    }
    return list;
}

} // namespace

std::string json(const PanelResult& result) {
    const core::PanelProgramme& programme = result.programme;
    const core::PanelWishes& wishes = result.wishes;
    Json object = json_heading("panels", result.title, verdicts_of(programme), result.inputs);
    object["mix"] = result.mix_file;
    object["factors"] = factors_json(wishes);
    object["design"] = json_of(programme.design, wishes);
    object["other_designs"] = all_of(programme.others, wishes);
    object["panels"] = all_of(programme.panels, wishes);
    object["batches"] = all_of(programme.batches, programme);
    object["panel_m3"] = number_or_null(programme.panel_m3);
    object["panel_kg"] = number_or_null(programme.panel_kg);
    object["small_panel"] = json_of(programme.room);
    object["mockup"] = json_of(programme.mockup_room);
    object["rules"] = Json::array();
    for (const core::BriefSection& section : programme.rules) {
        object["rules"].push_back(
            {{"name", section.name}, {"items", json_of_items(section.items)}});
    }
    object["score_sheet"] = Json::array();
    for (const core::ScoreItem& item : programme.scores) {
        object["score_sheet"].push_back(
            {{"name", item.name}, {"how", words(item.how, UnitSystem::si)}});
    }
    object["mixes"] = all_of(programme.mixes);
    object["checks"] = json_of(programme.checks);
    object["sources"] = Json::array();
    for (const core::Source& source : programme.sources) {
        object["sources"].push_back(source.citation);
    }
    object["cautions"] = json_of(programme.cautions);
    return written(object);
}

} // namespace boardmark::report
