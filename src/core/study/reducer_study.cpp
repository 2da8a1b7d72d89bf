#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/study/comparison.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../method/bre/chart_readings.hpp"
#include "../method/slump_gain.hpp"
#include "../method/water_reduction.hpp"
#include "../mix/door/complete_again.hpp"
#include "../mix/material_figures.hpp"
#include "../trial/next_mix.hpp"
#include "reducer_trade.hpp"

#include <algorithm>
#include <cassert>

namespace boardmark::core {
namespace {

bool is_high_range(const Dosage& dosage) {
    return dosage.material->kind == Kind::high_range_water_reducer;
}

/// What the reducers of a mix do together at their doses.
struct Effect {
    double remaining_water; ///< part of the water that is still needed at equal slump
    double percent() const { return 100 * (1 - remaining_water); }
};

/// Unresolved where a dose or its effect is not known.
Outcome<Effect> effect_of(const Mix& mix, const Tables& tables) {
    Effect effect{1};
    for (const Dosage& dosage : mix.admixtures) {
        if (is_high_range(dosage)) {
            const auto percent = reduction_percent(dosage, tables);
            if (!percent) {
                return percent.why();
            }
            effect.remaining_water *= 1 - *percent / 100;
        }
    }
    return effect;
}

/// Slump of the water alone, the starting point of all columns.
double slump_of_water_mm(const Requirements& requirements) {
    return requirements.slump_before_reducer_mm.value_or(requirements.slump_mm);
}

/// The mix without its reducer: the water of the table at the slump of the water alone, the same
/// w/cm as written.
Mix without_reducer(const Mix& mix, const Selection& written, double w_cm, double remaining_water) {
    Mix base = mix;
    note_entry(base.selections, written);
    base.selections.w_cm_is_methods = mix.selections.leaves_ratio_to_method();
    std::erase_if(base.admixtures, is_high_range);
    base.requirements.slump_mm = slump_of_water_mm(mix.requirements);
    base.requirements.slump_before_reducer_mm = std::nullopt;
    base.selections.w_cm = w_cm;
    base.selections.w_cm_by_exposure = false;
    base.selections.binder_kg_m3 = std::nullopt;
    if (mix.selections.water_kg_m3) { // it is the reduced water
        base.selections.water_kg_m3 = *mix.selections.water_kg_m3 / remaining_water;
    }
    return base;
}

/// The slump of the columns whose water alone gives it.
ComparedSlump slump_of_water(const Requirements& asked) {
    return {.mm = slump_of_water_mm(asked),
            .reason = {asked.slump_before_reducer_mm
                           ? "the target slump with water alone, from the mix file"
                           : "the target of the mix file; the water is that for this slump",
                       {}}};
}

/// A column of the study: the mix with its reducer again, at a water and either a binder or a w/cm.
struct Paste {
    double water_kg_m3;
    std::optional<double> binder_kg_m3;
    std::optional<double> w_cm;
};

Mix with_reducer(const Mix& mix, const Selection& written, const Paste& paste) {
    Mix column = mix;
    note_entry(column.selections, written);
    column.requirements.slump_mm = slump_of_water_mm(mix.requirements);
    column.requirements.slump_before_reducer_mm = std::nullopt;
    column.selections.w_cm_is_methods = mix.selections.leaves_ratio_to_method();
    column.selections.water_kg_m3 = paste.water_kg_m3;
    column.selections.binder_kg_m3 = paste.binder_kg_m3;
    column.selections.w_cm = paste.w_cm;
    column.selections.w_cm_by_exposure = false;
    return column;
}

/// Slump that the reducers add: by their own data, else as the saved water would have done.
struct Gain {
    double mm;
    bool estimate;
};

double saved_water_slump_mm(double water_kg_m3, const Effect& effect, const Tables& tables) {
    const double saved_kg_m3 = water_kg_m3 * (1 - effect.remaining_water);
    return saved_kg_m3 / tables.trial->adjustments.water_kg_m3_per_mm;
}

/// By the data of the only reducer that has some; nothing where none has. Unresolved beyond their
/// last point.
Outcome<std::optional<Gain>> stated_gain(const Mix& mix, const Tables& tables) {
    double mm = 0;
    for (const Dosage& dosage : mix.admixtures) {
        if (!is_high_range(dosage)) {
            continue;
        }
        const SlumpGain gain{dosage.material, tables};
        if (!gain.is_known() || !dosage.dose) {
            return std::optional<Gain>{};
        }
        const double density_kg_m3 = product_density(dosage.material, tables).value;
        const auto added_mm = gain.gain_mm(dose_percent(*dosage.dose, density_kg_m3));
        if (!added_mm) {
            return Unresolved{
                {"the dose of {name} lies above the last point of its 'slump_gain'",
                 {word("name", dosage.material->name)}},
                {{"lower the dose, or add the supplier's slump gain at this dose", {}}}};
        }
        mm += *added_mm;
    }
    return std::optional{Gain{mm, false}};
}

ComparedMix not_made(std::string label, Unresolved why) {
    ComparedMix column{.label = std::move(label)};
    column.unresolved = std::move(why);
    return column;
}

/// Gives the reason of the study where a column's mix holds a value as given.
void explain(ComparedMix& column, StepId id, const Phrase& reason) {
    for (Step& step : column.reasons) {
        if (step.is(id) && step.provenance == Provenance::given) {
            step.provenance = Provenance::computed;
            step.reason = reason;
            step.marks = {};
        }
    }
}

/// The column of an edited mix, held against what the mix as written asks.
ComparedMix column_of(std::string label, Mix edited, const ComparedSlump& slump,
                      const Requirements& asked, const Tables& tables) {
    auto mix = complete_again(std::move(edited), tables);
    if (!mix) {
        return not_made(std::move(label), std::move(mix).why());
    }
    return compared(std::move(label), *std::move(mix), slump, asked, tables);
}

const Phrase as_without{"that of the column without reducer", {}};
const Phrase as_written{"that of the mix as written", {}};

/// One study: what all columns share.
struct Study {
    const Mix& mix;
    const Tables& tables;
    const Proportions& base;
    const Proportions& written;
    double w_cm; ///< of the mix as written, before its least binder lowered it
    Outcome<Effect> effect;

    double base_slump_mm() const { return slump_of_water_mm(mix.requirements); }

    ComparedMix less_water() const {
        return reduced("less water", [&](double water_kg_m3) {
            return Paste{water_kg_m3, base.totals.binder_kg_m3, std::nullopt};
        });
    }

    ComparedMix less_binder() const {
        return reduced("less binder", [&](double water_kg_m3) {
            return Paste{water_kg_m3, std::nullopt, w_cm};
        });
    }

    ComparedMix more_flow() const {
        const std::string label = "more flow";
        const auto stated = stated_gain(mix, tables);
        if (!stated) {
            return not_made(label, stated.why());
        }
        std::optional<Gain> gain = *stated;
        if (!gain) {
            if (!effect) {
                return not_made(label, effect.why());
            }
            gain = Gain{saved_water_slump_mm(base.totals.water_kg_m3, *effect, tables), true};
        }
        Mix flowing =
            with_reducer(mix, written.selection,
                         {base.totals.water_kg_m3, base.totals.binder_kg_m3, std::nullopt});
        flowing.requirements.slump_mm += gain->mm;
        flowing.selections.water_shows_slump = true; // with the gain, told beside it
        ComparedMix column =
            column_of(label, std::move(flowing), slump_with(*gain), mix.requirements, tables);
        explain(column, step_ids::water, as_without);
        explain(column, step_ids::binder, as_without);
        return column;
    }

private:
    ComparedSlump slump_with(const Gain& gain) const {
        Phrase reason{gain.estimate ? "{before} of the water alone and {gain} as the saved water "
                                      "would have added"
                                    : "{before} of the water alone and {gain} by the reducer's "
                                      "'slump_gain' at its dose",
                      {quantity("before", {base_slump_mm(), Measure::slump}),
                       quantity("gain", {gain.mm, Measure::slump})}};
        return {.mm = base_slump_mm() + gain.mm,
                .estimate = gain.estimate,
                .reason = std::move(reason),
                .source = gain.estimate ? tables.trial->adjustments.source
                                        : Source{"data of the mix file", Confidence::read}};
    }

    /// Where the reduction comes from, by the mix as written.
    void add_reduction(ComparedMix& column) const {
        const auto& steps = written.worksheet.steps;
        const auto step = std::ranges::find_if(
            steps, [](const Step& one) { return one.is(step_ids::water_reduction); });
        if (step != steps.end() && column.proportions) {
            column.reasons.insert(column.reasons.begin(), *step);
        }
    }

    template <class PasteOf>
    ComparedMix reduced(std::string label, PasteOf paste_of) const {
        if (!effect) {
            return not_made(std::move(label), effect.why());
        }
        const double water_kg_m3 = base.totals.water_kg_m3 * effect->remaining_water;
        ComparedMix column =
            column_of(std::move(label), with_reducer(mix, written.selection, paste_of(water_kg_m3)),
                      slump_of_water(mix.requirements), mix.requirements, tables);
        explain(column, step_ids::water,
                {"{base} of the column without reducer less the {saved} that the reducer saves at "
                 "its dose",
                 {quantity("base", {base.totals.water_kg_m3, Measure::concentration}),
                  percent_of("saved", effect->percent())}});
        explain(column, step_ids::binder, as_without);
        explain(column, step_ids::w_cm, as_written);
        add_reduction(column);
        return column;
    }
};

} // namespace

bool holds_high_range_reducer(const Mix& mix) {
    return std::ranges::any_of(mix.admixtures, is_high_range);
}

ComparedMix without_high_range_reducer(const CompleteMix& complete_mix, const Proportions& written,
                                       const Tables& tables) {
    const std::string label = "without reducer";
    const Mix& mix = *complete_mix;
    const auto effect = effect_of(mix, tables);
    if (mix.selections.water_kg_m3 && !effect) {
        // The water without the reducer follows from the one with it only by the reduction.
        return not_made(label, effect.why());
    }
    const double remaining = effect ? effect->remaining_water : 1;
    const double w_cm = ratio_before_minimum(complete_mix, written.selection);
    ComparedMix column = column_of(label, without_reducer(mix, written.selection, w_cm, remaining),
                                   slump_of_water(mix.requirements), mix.requirements, tables);
    explain(column, step_ids::w_cm, as_written);
    explain(column, step_ids::water, {"the given water and what the reducer saves of it", {}});
    return column;
}

Outcome<std::vector<ComparedMix>> reducer_study(const CompleteMix& mix, const Tables& tables) {
    assert(holds_high_range_reducer(mix));
    const auto written = proportion(mix, tables);
    if (!written) {
        return written.why();
    }
    std::vector<ComparedMix> columns{without_high_range_reducer(mix, *written, tables)};
    if (columns.front().unresolved) {
        for (const char* label : {"less water", "less binder", "more flow"}) {
            columns.push_back(not_made(label, *columns.front().unresolved));
        }
        return columns;
    }
    const Proportions base = *columns.front().proportions;
    const Study study{*mix,
                      tables,
                      base,
                      *written,
                      ratio_before_minimum(mix, written->selection),
                      effect_of(*mix, tables)};
    columns.push_back(study.less_water());
    columns.push_back(study.less_binder());
    if (columns.back().proportions) {
        columns.back().remarks.push_back(trade_of(base, *columns.back().proportions));
    }
    columns.push_back(study.more_flow());
    return columns;
}

} // namespace boardmark::core
