#include <boardmark/report/many/economy_report.hpp>

#include "../writing/long_table.hpp"
#include "economy_words.hpp"
#include "sweep_words.hpp"

namespace boardmark::report {
namespace {

using core::Economy;
using core::Measure;
using core::Objective;

void add_values(const Economy& economy, const std::vector<double>& at, LongTable& table) {
    for (std::size_t i = 0; i < economy.bounds.size(); ++i) {
        const core::Variable& variable = economy.bounds[i].variable;
        table.add(core::key_of(variable), core::measure_of(variable),
                  core::shown_value(variable, at[i]));
    }
}

void add_figures(const Economy& economy, const core::EconomyFigures& figures, LongTable& table) {
    const auto add = [&](Objective objective, std::optional<double> per_m3) {
        if (per_m3) {
            table.add_in(name_of(objective), objective_amount(objective, *per_m3, table.system()),
                         objective_unit(objective, economy.currency, table.system()));
        }
    };
    add(Objective::cost, figures.cost_per_m3);
    add(Objective::carbon, figures.carbon_kg_m3);
    add(Objective::binder, figures.binder_kg_m3);
}

} // namespace

std::string csv(const EconomyResult& result, core::UnitSystem system) {
    const Economy& economy = result.economy;
    LongTable table{system};
    table.section("best");
    table.subject(economy.is_as_written ? "mix as written" : "rounded");
    add_values(economy, economy.at, table);
    add_figures(economy, economy.figures, table);
    for (const core::Ingredient& one : economy.proportions.ingredients) {
        if (one.role != core::Role::air) {
            table.add(one.name, Measure::concentration,
                      one.by_trial ? std::nullopt : std::optional{one.kg_m3},
                      one.by_trial ? "dosed by trial" : "");
        }
    }
    table.add(economy.checks);
    if (economy.unrounded) {
        table.subject("unrounded");
        add_values(economy, economy.unrounded_at, table);
        add_figures(economy, *economy.unrounded, table);
    }
    if (economy.file) {
        table.section("mix as written");
        table.subject(economy.file_fails ? "fails a check" : "fails no check");
        add_figures(economy, *economy.file, table);
    }
    table.section("limit");
    for (const core::LimitPrice& price : economy.prices) {
        table.subject(price.id);
        table.add("relaxed by", price.relaxed_by.measure, price.relaxed_by.value);
        table.add_in("saves", objective_amount(economy.objective, price.saves, system),
                     objective_unit(economy.objective, economy.currency, system));
    }
    table.section("front");
    for (const core::FrontMix& mix : economy.front) {
        table.subject(mix.name);
        add_values(economy, mix.at, table);
        add_figures(economy, mix.figures, table);
    }
    table.section("caution");
    table.subject("");
    table.add("caution", economy.proportions.worksheet.cautions);
    return table.text();
}

} // namespace boardmark::report
