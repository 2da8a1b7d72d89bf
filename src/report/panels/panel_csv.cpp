#include <boardmark/report/panels/panel_report.hpp>
#include <boardmark/report/writing/words.hpp>

#include "../writing/long_table.hpp"
#include "panel_tables.hpp"

namespace boardmark::report {
namespace {

using core::Measure;

void add_panel_rows(const PanelResult& result, LongTable& table) {
    table.section("panels");
    for (const core::SamplePanel& panel : result.programme.panels) {
        table.subject("", "panel", static_cast<std::size_t>(panel.number));
        table.add_count("cast", panel.place, panel.repeat ? "panel 1 again" : "");
        table.add_count("batch", panel.batch);
        for (std::size_t factor = 0; factor < result.wishes.factors.size(); ++factor) {
            const core::PanelFactor& varied = result.wishes.factors[factor];
            table.add_words(factor_title(varied),
                            varied.levels[static_cast<std::size_t>(panel.levels[factor])], "");
        }
    }
}

void add_batch_rows(const PanelResult& result, LongTable& table) {
    table.section("batches");
    for (const core::PanelBatch& batch : result.programme.batches) {
        table.subject("", "batch", static_cast<std::size_t>(batch.number));
        table.add_words("mix", result.programme.mixes[batch.mix].file, "");
        table.add("in panels", Measure::volume, batch.panels_m3);
        table.add("to mix", Measure::volume, batch.mixed_m3);
    }
}

void add_effect_rows(const PanelResult& result, LongTable& table) {
    table.section("effects");
    for (const core::PanelEffect& effect : result.programme.design.effects) {
        table.subject(effect.beside ? question_words(effect, 0, result.wishes)
                                    : factor_title(result.wishes.factors[effect.factor]));
        table.add("variance", Measure::ratio, effect.variance);
        for (std::size_t level = 0; level < effect.weights.size(); ++level) {
            const auto& weights = effect.weights[level];
            for (std::size_t panel = 0; panel < weights.size(); ++panel) {
                table.add("weight of panel " + std::to_string(panel + 1), Measure::ratio,
                          weights[panel], level_letter(static_cast<int>(level) + 1));
            }
        }
    }
}

void add_room_rows(const char* name, const core::PanelRoom& room, LongTable& table) {
    table.section(name);
    table.subject("");
    table.add("length", Measure::line_length, room.length_m);
    table.add("height", Measure::line_length, room.height_m);
    table.add("proposed length", Measure::line_length, room.proposed_length_m);
    table.add("proposed height", Measure::line_length, room.proposed_height_m);
    for (const core::FeatureRoom& one : room.features) {
        table.subject(core::name_of(one.feature));
        const char* status = !one.wished ? "not asked" : one.fits ? "fits" : "no room";
        table.add("length", Measure::length, one.length_mm, room.is_sized() ? status : "");
        table.add("height", Measure::length, one.height_mm, room.is_sized() ? status : "");
    }
}

} // namespace

std::string csv(const PanelResult& result, core::UnitSystem system) {
    LongTable table{system};
    add_panel_rows(result, table);
    add_batch_rows(result, table);
    add_effect_rows(result, table);
    add_room_rows("small panel", result.programme.room, table);
    add_room_rows("mock-up", result.programme.mockup_room, table);
    for (const core::BriefSection& section : result.programme.rules) {
        table.section(section.name);
        table.subject("");
        table.add("rule", section.items);
    }
    table.section("checks");
    table.subject("");
    table.add(result.programme.checks);
    for (const core::PanelMix& mix : result.programme.mixes) {
        table.section("checks");
        table.subject(mix.file);
        table.add(mix.checks);
    }
    table.section("cautions");
    table.subject("");
    table.add("caution", result.programme.cautions);
    return table.text();
}

} // namespace boardmark::report
