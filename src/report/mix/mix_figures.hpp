#pragma once

#include <boardmark/report/mix/mix_report.hpp>

#include <variant>

namespace boardmark::report {

/// Visits every figure that a report of a mix can show, in any form: those of its JSON and those of
/// its sentences. Without a text being made.
template <class Visit>
class MixFigures {
public:
    explicit MixFigures(Visit visit)
        : visit_(visit) {}

    void of(const MixResult& result) {
        const core::Proportions& proportions = result.proportions;
        of(proportions.selection);
        of(proportions.temperature ? proportions.temperature->mixed_c : std::nullopt);
        for (const core::Ingredient& ingredient : proportions.ingredients) {
            of(ingredient.kg_m3);
            of(ingredient.dry_kg_m3);
            of(ingredient.volume_m3);
        }
        of(proportions.totals);
        for (const core::Check& check : result.checks) {
            of(check);
        }
        for (const core::CodeJudgement& judged : result.codes) {
            for (const core::Check& check : judged.checks) {
                of(check);
            }
        }
        for (const core::Step& step : proportions.worksheet.steps) {
            of(step.value);
            of(step.reason);
        }
        for (const core::Phrase& caution : proportions.worksheet.cautions) {
            of(caution);
        }
    }

private:
    void of(double figure) { visit_(figure); }
    void of(const std::optional<double>& figure) {
        if (figure) {
            visit_(*figure);
        }
    }
    void of(const core::Phrase& phrase) {
        for (const core::Argument& argument : phrase.arguments) {
            if (const auto* quantity = std::get_if<core::Quantity>(&argument.value)) {
                visit_(quantity->value);
            }
        }
    }
    void of(const core::Selection& selection) {
        of(selection.specified_strength_mpa);
        of(selection.required_average_strength_mpa);
        of(selection.margin_mpa);
        of(selection.slump_mm);
        of(selection.slump_before_reducer_mm);
        of(selection.nominal_max_size_mm);
        of(selection.air_percent);
        of(selection.air_at_placing_percent);
        of(selection.w_cm);
        of(selection.w_cm_by_strength);
        of(selection.w_cm_by_exposure);
        of(selection.table_water_kg_m3);
        of(selection.water_reduction_percent);
        of(selection.water_kg_m3);
        of(selection.binder_kg_m3);
        of(selection.coarse_volume);
        of(selection.fineness_modulus);
    }
    void of(const core::Totals& totals) {
        of(totals.fresh_density_kg_m3);
        of(totals.volume_m3);
        of(totals.water_kg_m3);
        of(totals.binder_kg_m3);
        of(totals.w_cm);
        of(totals.paste_percent);
        of(totals.mortar_percent);
    }
    void of(const core::Check& check) {
        of(check.value);
        if (check.limit) {
            of(check.limit->low);
            of(check.limit->high);
        }
        of(check.message);
    }

    Visit visit_;
};

} // namespace boardmark::report
