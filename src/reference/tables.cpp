#include <boardmark/core/mix/any_mix.hpp>
#include <boardmark/reference/tables.hpp>

#include "alkali_rules.hpp"
#include "bar_sizes.hpp"
#include "code_data.hpp"
#include "finish_tables.hpp"
#include "form_tables.hpp"
#include "joint_tables.hpp"
#include "kept_codes.hpp"
#include "lookup.hpp"
#include "method_tables.hpp"
#include "other_methods.hpp"
#include "panel_tables.hpp"
#include "placing_tables.hpp"
#include "strength_tables.hpp"
#include "trial_tables.hpp"
#include "weather_tables.hpp"

#include <algorithm>

namespace boardmark::reference {
namespace {

using core::UnitSystem;

/// One figure for each kind of material that the table names.
std::map<core::Kind, core::TypicalFigure> relative_densities() {
    const EmbeddedTable& printed = table("typical-relative-density");
    std::map<core::Kind, core::TypicalFigure> figures;
    for (const core::KindName& kind : core::all_kinds()) {
        const auto found = std::ranges::find(printed.rows, kind.name, &EmbeddedRow::name);
        if (found != printed.rows.end()) {
            figures[kind.kind] = {cell(printed, *found, "relative_density"),
                                  source_of(found->source)};
        }
    }
    return figures;
}

std::map<std::string, core::TypicalFigure> water_reductions() {
    const EmbeddedTable& printed = table("standard-water-reduction");
    std::map<std::string, core::TypicalFigure> figures;
    for (const EmbeddedRow& line : printed.rows) {
        figures[std::string{line.name}] = {cell(printed, line, "least"), source_of(line.source)};
    }
    return figures;
}

core::PracticeTables practice_tables(UnitSystem system) {
    const EmbeddedTable& practice = table("practice");
    const EmbeddedTable& aggregate = table("typical-aggregate");
    return {
        .relative_density = relative_densities(),
        .standard_water_reduction_percent = water_reductions(),
        .aggregate = {.relative_density = figure(aggregate, "relative_density", system),
                      .absorption_percent = figure(aggregate, "absorption", system),
                      .dry_rodded_density_kg_m3 = figure(aggregate, "dry_rodded_density", system),
                      .fineness_modulus = figure(aggregate, "fineness_modulus", system)},
        .heat_watch_kg_m3 = figure(practice, "heat_watch", system),
        .mass_thickness_mm = figure(practice, "mass_thickness", system),
        .strength_governs_margin = figure(practice, "strength_governs_margin", system),
        .lowest_w_cm = figure(practice, "lowest_w_cm", system),
        .lightweight_relative_density = figure(practice, "lightweight_relative_density", system),
        .pigment_watch_percent = figure(practice, "pigment_watch", system),
        .pigment_most_percent = figure(practice, "pigment_most", system),
        .pigment_air = figure(practice, "pigment_air", system).source,
        .coloured_face = figure(practice, "coloured_face", system).source,
        .lowest_sand_share_percent = figure(practice, "lowest_sand_share", system),
        .highest_sand_share_percent = figure(practice, "highest_sand_share", system),
        .drinking_water_chloride_percent = figure(practice, "drinking_water_chloride", system),
        .table_cement_percent = figure(practice, "table_cement", system),
        .table_air_plain_percent = figure(practice, "table_air_plain", system),
        .table_air_entrained_percent = figure(practice, "table_air_entrained", system),
        .chloride_free_percent = figure(practice, "chloride_free", system),
        .slump_measures_to_mm = figure(practice, "slump_measures_to", system),
        .spare_strength_percent = figure(practice, "spare_strength", system),
        .air_of_results_percent = figure(practice, "air_of_results", system),
        .binder_share_off_percent = figure(practice, "binder_share_off", system),
        .characteristic_defective_percent = figure(practice, "characteristic_defective", system),
        .stated_water_rounding_percent = figure(practice, "stated_water_rounding", system),
        .formula_slump_mm = figure(practice, "formula_slump", system),
        .face_deduction_matters_percent = figure(practice, "face_deduction_matters", system),
        .most_held_back_percent = figure(practice, "most_held_back", system),
        .cut_course_percent = figure(practice, "cut_course", system),
        .board_end_stagger_mm = figure(practice, "board_end_stagger", system),
        .tie_beside_joint_mm = figure(practice, "tie_beside_joint", system),
        .lift_line_off_joint_mm = figure(practice, "lift_line_off_joint", system)};
}

core::HeatTables heat_tables(UnitSystem system) {
    const EmbeddedTable& printed = table("heat-factor");
    const EmbeddedTable& slag = table("heat-factor-slag");
    core::HeatTables heat{.rise_k_of_100_kg_m3 = figure(table("practice"), "heat_rise", system),
                          .factor = {},
                          .slag = {},
                          .mass_peak_c = figure(table("practice"), "mass_peak", system),
                          .mass_difference_k =
                              figure(table("practice"), "mass_difference", system)};
    if (system == UnitSystem::us) {
        heat.mass_difference_k.value /= 1.8; // degF of difference in one K
    }
    for (const EmbeddedRow& line : printed.rows) {
        heat.factor[std::string{line.name}] = cell(printed, line, "factor");
    }
    for (const EmbeddedRow& line : slag.rows) {
        heat.slag.push_back({line.from_us, cell(slag, line, "factor")});
    }
    return heat;
}

/// How sure the least sure row is.
void take_less_sure(core::Source& whole, const core::Source& of_row) {
    if (of_row.confidence != core::Confidence::read) {
        whole = of_row;
    }
}

std::vector<core::SizeNumber> size_numbers() {
    const EmbeddedTable& printed = table("astm-c33-coarse");
    std::vector<core::SizeNumber> numbers;
    for (const EmbeddedRow& sieve : printed.rows) {
        if (numbers.empty() || numbers.back().number != sieve.group) {
            numbers.push_back({std::string{sieve.group}, {}, source_of(printed.source)});
        }
        numbers.back().sieves.push_back({std::string{sieve.name}, cell(printed, sieve, "opening"),
                                         cell(printed, sieve, "low"),
                                         cell(printed, sieve, "high")});
        take_less_sure(numbers.back().source, source_of(sieve.source));
    }
    return numbers;
}

core::RetainedRules retained_rules(UnitSystem system) {
    const EmbeddedTable& sieves = table("combined-sieves");
    const EmbeddedTable& rules = table("grading");
    core::RetainedRules retained{
        .sieves = {},
        .source = source_of(sieves.source),
        .least_coarse_sand_percent = figure(rules, "least_coarse_sand", system),
        .least_fine_sand_percent = figure(rules, "least_fine_sand", system),
        .most_fine_sand_percent = figure(rules, "most_fine_sand", system),
        .usual_low_percent = figure(rules, "retained_low", system),
        .usual_high_percent = figure(rules, "retained_high", system)};
    for (const EmbeddedRow& sieve : sieves.rows) {
        retained.sieves.push_back({std::string{sieve.name}, cell(sieves, sieve, "opening"),
                                   present(cell(sieves, sieve, "low")),
                                   present(cell(sieves, sieve, "high"))});
    }
    return retained;
}

core::WorkabilityRules workability_rules(UnitSystem system) {
    const EmbeddedTable& rules = table("grading");
    return {.binder_kg_m3 = figure(rules, "workability_cement", system),
            .binder_step_kg_m3 = figure(rules, "workability_cement_step", system),
            .step_points = figure(rules, "workability_points", system),
            .coarse_sieve_mm = figure(rules, "coarseness_coarse_sieve", system),
            .fine_sieve_mm = figure(rules, "coarseness_fine_sieve", system),
            .low = figure(rules, "workability_low", system),
            .high = figure(rules, "workability_high", system),
            .coarseness_low = figure(rules, "coarseness_low", system),
            .coarseness_high = figure(rules, "coarseness_high", system),
            .line_start = figure(rules, "control_line_start", system),
            .line_slope = figure(rules, "control_line_slope", system)};
}

core::GradingRules grading_rules(UnitSystem system) {
    const EmbeddedTable& fine = table("astm-c33-fine");
    const EmbeddedTable& rules = table("grading");
    core::GradingRules grading{.fine = {},
                               .fine_source = source_of(fine.source),
                               .most_between_percent = figure(rules, "most_between_sieves", system),
                               .density_exponent = figure(rules, "density_line_exponent", system),
                               .coarse = size_numbers(),
                               .retained = retained_rules(system),
                               .workability = workability_rules(system)};
    for (const EmbeddedRow& sieve : fine.rows) {
        grading.fine.push_back({std::string{sieve.name}, cell(fine, sieve, "opening"),
                                cell(fine, sieve, "low"), cell(fine, sieve, "high")});
    }
    return grading;
}

core::ControlChartRules control_chart_rules(UnitSystem system) {
    const EmbeddedTable& printed = table("control-chart");
    return {.limit_in_deviations = figure(printed, "limit_in_deviations", system),
            .run_length = figure(printed, "run_length", system),
            .firm_count = figure(printed, "firm_count", system)};
}

/// A table that is made in its system when it is first asked for.
template <typename Value>
core::Deferred<Value> deferred(Value (*make)(UnitSystem), UnitSystem system) {
    return core::Deferred<Value>{[=] { return make(system); }};
}

core::Tables tables_in(UnitSystem system) {
    return {.system = system,
            .water_density_kg_m3 = constant(table("water-density"), "water", system),
            .method = method_tables(system),
            .code = kept_code("", system),
            .practice = practice_tables(system),
            .trial = deferred(trial_tables, system),
            .strength = deferred(strength_tables, system),
            .heat = deferred(heat_tables, system),
            .control_chart = deferred(control_chart_rules, system),
            .forms = deferred(form_tables, system),
            .weather = deferred(weather_tables, system),
            .placing = deferred(placing_tables, system),
            .joints = deferred(joint_tables, system),
            .finish = deferred(finish_tables, system),
            .grading = deferred(grading_rules, system),
            .alkali = deferred(alkali_rules, system),
            .panels = deferred(panel_tables, system),
            .bars = core::Deferred<std::vector<core::BarSize>>{bar_sizes}};
}

} // namespace

const core::Tables& tables(UnitSystem system) {
    // Never taken apart: that would cost a run of one mix a fiftieth of its time, for nothing.
    if (system == UnitSystem::us) {
        static const auto& us = *new core::Tables(tables_in(UnitSystem::us));
        return us;
    }
    static const auto& si = *new core::Tables(tables_in(UnitSystem::si));
    return si;
}

core::Tables tables_for(const core::Requirements& asked, UnitSystem system) {
    core::Tables all = tables(system);
    if (asked.code_file) {
        all.code = *asked.code_file;
    } else if (!asked.code.empty()) {
        all.code = kept_code(asked.code, system);
    }
    return all;
}

core::Tables tables_for(const core::AnyCompleteMix& mix) {
    const auto* selected = std::get_if<core::CompleteMix>(&mix);
    return selected ? tables_for(*selected, (*selected)->method)
                    : tables_for(core::requirements_of(mix), core::system_of(mix));
}

core::Tables tables_for(const core::CompleteMix& mix, core::Method method) {
    core::Tables all = tables_for(mix->requirements, mix->system);
    choose_method(method, all.system, all.method);
    return all;
}

std::vector<core::Method> methods() {
    return {core::Method::aci_211_1, core::Method::is_10262, core::Method::is_10262_2009,
            core::Method::bre};
}

std::optional<core::CodeTables> code(const std::string& name, UnitSystem system) {
    const std::vector<std::string> known = codes();
    return name.empty() || std::ranges::count(known, name) > 0
               ? std::optional{kept_code(name, system)}
               : std::nullopt;
}

std::vector<std::string> codes() {
    std::vector<std::string> names;
    for (const CodeData& code : embedded_codes()) {
        names.emplace_back(code.find("exposure")->source.work);
    }
    return names;
}

} // namespace boardmark::reference
