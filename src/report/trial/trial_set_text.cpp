#include <boardmark/report/trial/trial_set_report.hpp>
#include <boardmark/report/writing/words.hpp>
#include <boardmark/text/utf8.hpp>
#include <boardmark/units/unit.hpp>

#include "../writing/check_merger.hpp"
#include "../writing/flow.hpp"
#include "../writing/grid.hpp"
#include "../writing/html.hpp"
#include "../writing/names.hpp"
#include "../writing/quantity_format.hpp"
#include "../writing/side_by_side.hpp"
#include "../writing/text_sections.hpp"
#include "../writing/trace.hpp"
#include "../writing/verdicts.hpp"
#include "../writing/wrap.hpp"
#include "trial_set_cautions.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <functional>

namespace boardmark::report {
namespace {

using core::Measure;
using core::SolvedTrial;
using core::UnitSystem;

/// A cell for each mix; a dash where no mix follows.
std::vector<std::string> cells(const core::TrialSet& set,
                               const std::function<std::string(const SolvedTrial&)>& cell) {
    std::vector<std::string> row;
    for (const core::TrialMix& mix : set.mixes) {
        row.push_back(mix.solved() ? cell(*mix.solved()) : "-");
    }
    return row;
}

/// Which trials break a requirement, and what that means for them.
Flow text_of_failing(const core::TrialSet& set) {
    std::vector<std::string> broken;
    for (const core::TrialMix* mix : failing(set)) {
        broken.push_back(label_of(*mix));
    }
    return broken.empty()
               ? Flow{}
               : paragraph(
                     fmt::format("What fails, fails at {}; see the checks. A trial may fail a "
                                 "limit for the sake of the strength line; the wall may not.",
                                 fmt::join(broken, ", ")),
                     {});
}

Flow heading(const TrialSetResult& result, UnitSystem system) {
    const std::string& code = result.requirements.code;
    const std::string limits = code.empty() ? "" : ", limits of " + code;
    return paragraph(text::printable(result.title), {}) + file_line(result.inputs) +
           paragraph(fmt::format("Trial set of {} ratios at one slump and air, by {}, {}{}",
                                 result.set.mixes.size(), result.set.method, result.set.procedure,
                                 limits),
                     {}) +
           "\n" + verdict_line(verdicts_of(result.set), system, "FOR TRIALS ONLY") +
           text_of_failing(result.set);
}

std::string liquid_text(double m3, UnitSystem system) {
    return system == UnitSystem::us ? fixed(units::unit("fl oz").from_inside(m3), 2) + " fl oz"
                                    : fixed(1e6 * m3, 0) + " mL";
}

/// An ingredient of 1 yd3 or 1 m3.
std::string amount_text(const core::Ingredient& ingredient, UnitSystem system) {
    const bool us = system == UnitSystem::us;
    const double unit_m3 = us ? units::unit("yd3").factor : 1;
    if (ingredient.by_trial) {
        return "by trial";
    }
    if (ingredient.role == core::Role::air) {
        return fixed(100 * *ingredient.volume_m3, 1) + " %";
    }
    if (ingredient.role == core::Role::admixture &&
        ingredient.material->kind != core::Kind::pigment) {
        return liquid_text(*ingredient.volume_m3 * unit_m3, system);
    }
    const double amount =
        us ? units::unit("lb/yd3").from_inside(ingredient.kg_m3) : ingredient.kg_m3;
    return fixed(amount, 0) + (us ? " lb" : " kg");
}

std::string item_text(const core::BatchItem& item, UnitSystem system) {
    if (item.by_trial) {
        return "by trial";
    }
    return item.role == core::Role::admixture && item.litres
               ? liquid_text(*item.litres / 1000, system)
               : shown({item.kg, Measure::mass}, system);
}

void add_proportions(const core::TrialSet& set, const SolvedTrial& first, UnitSystem system,
                     SideBySide& table) {
    table.add_heading(std::string{"in 1 "} + (system == UnitSystem::us ? "yd3" : "m3") +
                      ", aggregates saturated surface-dry");
    for (std::size_t i = 0; i < first.proportions.ingredients.size(); ++i) {
        table.add(column_name(std::string{first.proportions.ingredients[i].name}),
                  cells(set, [&](const SolvedTrial& mix) {
                      return amount_text(mix.proportions.ingredients[i], system);
                  }));
    }
    const auto add = [&](const char* name, Measure measure, auto value) {
        table.add(system == UnitSystem::us ? in_us_trade_words(name) : name,
                  cells(set, [&](const SolvedTrial& mix) {
                      return shown({value(mix.proportions), measure}, system);
                  }));
    };
    add("mixing water", Measure::concentration,
        [](const core::Proportions& mix) { return mix.totals.water_kg_m3; });
    add("cementitious material", Measure::concentration,
        [](const core::Proportions& mix) { return mix.totals.binder_kg_m3; });
    add("fresh density", Measure::fresh_density, [](const core::Proportions& mix) {
        return *mix.totals.fresh_density_kg_m3 / *mix.totals.volume_m3;
    });
}

void add_batches(const TrialSetResult& result, const SolvedTrial& first, UnitSystem system,
                 SideBySide& table) {
    table.add_heading("to weigh for " + shown({*result.batch_m3, Measure::volume}, system) +
                      " at today's moistures, aggregates wet");
    for (std::size_t i = 0; i < first.batch->items.size(); ++i) {
        table.add(column_name(first.batch->items[i].name),
                  cells(result.set, [&](const SolvedTrial& mix) {
                      return item_text(mix.batch->items[i], system);
                  }));
    }
    table.add("total", cells(result.set, [&](const SolvedTrial& mix) {
                  return shown({mix.batch->mass_kg, Measure::mass}, system);
              }));
    table.add("w/cm of these weights", cells(result.set, [&](const SolvedTrial& mix) {
                  return shown({mix.batch->w_cm, Measure::w_cm}, system);
              }));
    table.add("yield", cells(result.set, [&](const SolvedTrial& mix) {
                  return shown({*mix.batch->yield_m3, Measure::volume}, system);
              }));
}

Flow text_of_table(const TrialSetResult& result, UnitSystem system) {
    std::vector<std::string> heads;
    const SolvedTrial* first = nullptr;
    for (const core::TrialMix& mix : result.set.mixes) {
        heads.push_back(label_of(mix));
        first = first ? first : mix.solved();
    }
    SideBySide table("", std::move(heads));
    if (first) {
        add_proportions(result.set, *first, system, table);
        if (result.batch_m3) {
            add_batches(result, *first, system, table);
        }
        table.add_heading("checked against the limits");
        table.add("requirements not met", cells(result.set, [](const SolvedTrial& mix) {
                      const auto count = std::ranges::count(mix.checks, core::Verdict::fails,
                                                            &core::Check::verdict);
                      return count == 0 ? std::string{"none"} : std::to_string(count);
                  }));
    }
    return Block{table};
}

/// Which mixes have no figures, and the first way out of each.
Flow text_of_unresolved(const core::TrialSet& set, UnitSystem system) {
    Grid grid{{Align::left, Align::left}};
    for (const core::TrialMix& mix : set.mixes) {
        if (const auto* unresolved = std::get_if<core::Unresolved>(&mix.outcome)) {
            grid.add({label_of(mix) + ", no mix", words(unresolved->what, system) + "; way out: " +
                                                      words(unresolved->ways_out.front(), system)});
        }
    }
    return grid.rows().empty() ? Flow{} : Flow{grid};
}

/// The checks of all mixes; one that is told alike of several stands once, after their names.
Flow text_of_set_checks(const core::TrialSet& set, UnitSystem system) {
    CheckMerger checks;
    for (const core::TrialMix& mix : set.mixes) {
        if (mix.solved()) {
            checks.add(label_of(mix), mix.solved()->checks, system);
        }
    }
    return text_of_unresolved(set, system) + checks_of(checks.rows());
}

Flow text_of_set_cautions(const core::TrialSet& set, UnitSystem system) {
    Flow text;
    for (const SetCaution& caution : cautions_of(set, system)) {
        text += paragraph(whose(caution) + caution.text, list_item);
    }
    return text;
}

Flow text_of_set_reasons(const core::TrialSet& set, const TextStyle& style) {
    Flow text;
    for (const core::TrialMix& mix : set.mixes) {
        if (mix.solved()) {
            text += folded_section("REASONS, " + label_of(mix)) +
                    text_of_reasons(mix.solved()->proportions.worksheet.steps, style) +
                    folded_section("LIMITS of it, where they come from") +
                    text_of_limits(mix.solved()->checks);
        }
    }
    return text;
}

} // namespace

Flow flow_of(const TrialSetResult& result, const TextStyle& style) {
    Flow page = heading(result, style.system);
    page += section("MIXES side by side") + text_of_table(result, style.system);
    if (const core::Batch* batch = first_batch(result.set)) {
        page +=
            section("AT THE MIXER, each mix in this order") + text_of_order(batch->order, style);
    }
    page += section("CHECKS") + text_of_set_checks(result.set, style.system);
    page += section("WHAT TO DO") + text_of_cautions(result.set.advice, style);
    if (style.explain) {
        page += text_of_set_reasons(result.set, style);
    }
    return page + section("CAUTIONS") + text_of_set_cautions(result.set, style.system);
}

std::string text(const TrialSetResult& result, const TextStyle& style) {
    return written(flow_of(result, style), style);
}

std::string html(const TrialSetResult& result, const TextStyle& style) {
    return html_of(flow_of(result, style),
                   {.title = result.title, .command = "proportion", .inputs = result.inputs});
}

} // namespace boardmark::report
