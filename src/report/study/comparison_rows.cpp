#include "comparison_rows.hpp"

#include <boardmark/units/unit.hpp>

#include "../writing/measured.hpp"
#include "../writing/quantity_format.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <utility>

namespace boardmark::report {
namespace {

using core::ComparedMix;
using core::Measure;
using core::UnitSystem;

constexpr const char* nothing = "-";

/// A quantity as a table writes it whose head has the unit.
struct Written {
    double value; ///< in that unit, not rounded
    std::string amount;
    std::string unit;
};

Written written_apart(core::Quantity quantity, UnitSystem system) {
    const Measured in_unit = measured(quantity, system);
    const std::string unit = in_unit.unit == "1" ? "" : in_unit.unit;
    std::string amount = shown(quantity, system);
    if (!unit.empty()) {
        assert(amount.ends_with(" " + unit));
        amount.resize(amount.size() - unit.size() - 1);
    }
    return {in_unit.amount, std::move(amount), unit};
}

/// Adds a row of one measure.
class Table {
public:
    Table(const std::vector<ComparedMix>& columns, UnitSystem system)
        : columns_(columns)
        , system_(system) {}

    template <class ValueOf>
    void add(std::string name, Measure measure, std::string best_key, ValueOf value_of) {
        ComparisonRow row{.name = std::move(name),
                          .unit = "",
                          .better = best_key.empty() ? Better::neither : Better::lower,
                          .cells = {},
                          .key = std::move(best_key)};
        for (const ComparedMix& column : columns_) {
            const std::optional<double> value =
                column.proportions ? value_of(column) : std::nullopt;
            if (!value) {
                row.cells.push_back({std::nullopt, nothing});
                continue;
            }
            const Written written = written_apart({*value, measure}, system_);
            row.unit = written.unit;
            row.cells.push_back({written.value, written.amount});
        }
        if (measure == Measure::w_cm) {
            std::vector<std::string*> ratios;
            for (ComparisonCell& cell : row.cells) {
                ratios.push_back(&cell.text);
            }
            even_ratios(ratios);
        }
        rows.push_back(std::move(row));
    }

    std::vector<ComparisonRow> rows;

private:
    const std::vector<ComparedMix>& columns_;
    UnitSystem system_;
};

std::string per_volume(std::string_view what, UnitSystem system) {
    return std::string{what} + (system == UnitSystem::us ? "/yd3" : "/m3");
}

std::string signed_text(double difference, int decimals) {
    return (difference < 0 ? "-" : "+") + fixed(std::abs(difference), decimals);
}

/// A row of sums over the materials, and how far each column is from the first.
template <class SumOf>
void add_sums(std::vector<ComparisonRow>& rows, const ComparisonResult& result, UnitSystem system,
              const ComparisonRow& head, int decimals, SumOf sum_of) {
    ComparisonRow row = head;
    ComparisonRow difference{.name = head.name + " difference", .unit = head.unit, .cells = {}};
    const core::PartialSum* first = nullptr;
    for (const ComparedMix& column : result.columns) {
        const core::PartialSum* sum = sum_of(column);
        if (!first) {
            first = sum;
        }
        if (!sum) {
            row.cells.push_back({std::nullopt, nothing});
            difference.cells.push_back({std::nullopt, nothing});
            continue;
        }
        const double amount = per_unit(sum->per_m3, system);
        row.cells.push_back({amount, sum_text(amount, *sum, decimals), !sum->is_whole()});
        const bool comparable = first && first->is_whole() && sum->is_whole();
        const double step = amount - per_unit(first->per_m3, system);
        difference.cells.push_back(comparable ? ComparisonCell{step, signed_text(step, decimals)}
                                              : ComparisonCell{std::nullopt, "not known"});
    }
    const bool any = std::ranges::any_of(
        row.cells, [](const ComparisonCell& cell) { return cell.text != nothing; });
    if (!any) {
        return;
    }
    rows.push_back(std::move(row));
    if (result.is_study) {
        rows.push_back(std::move(difference));
    }
}

void add_reducer_cost(std::vector<ComparisonRow>& rows, const ComparisonResult& result,
                      UnitSystem system, const std::string& currency) {
    ComparisonRow row{
        .name = "of it the reducer", .unit = per_volume(currency, system), .cells = {}};
    for (const ComparedMix& column : result.columns) {
        const bool in_currency = column.cost && column.cost->currency == currency;
        const auto cost = in_currency ? column.reducer_cost_per_m3 : std::nullopt;
        const auto amount = cost ? std::optional{per_unit(*cost, system)} : std::nullopt;
        row.cells.push_back({amount, amount ? fixed(*amount, 2) : nothing});
    }
    rows.push_back(std::move(row));
}

void add_footprints(std::vector<ComparisonRow>& rows, const ComparisonResult& result,
                    UnitSystem system) {
    const std::string currency = currency_of(result.columns);
    constexpr int cents = 2;
    add_sums(rows, result, system,
             {.name = "cost",
              .unit = per_volume(currency, system),
              .better = Better::lower,
              .cells = {},
              .key = "cost"},
             cents, [&](const ComparedMix& column) -> const core::PartialSum* {
                 return column.cost && column.cost->currency == currency ? &column.cost->sum
                                                                         : nullptr;
             });
    if (!currency.empty()) {
        add_reducer_cost(rows, result, system, currency);
    }
    add_sums(rows, result, system,
             {.name = "carbon",
              .unit = per_volume("kg", system),
              .better = Better::lower,
              .cells = {},
              .key = "carbon_kg_m3"},
             0, [](const ComparedMix& column) -> const core::PartialSum* {
                 return column.carbon ? &*column.carbon : nullptr;
             });
}

ComparisonRow slump_row(const std::vector<ComparedMix>& columns, UnitSystem system) {
    ComparisonRow row{.name = "slump", .unit = "", .cells = {}};
    for (const ComparedMix& column : columns) {
        if (!column.proportions) {
            row.cells.push_back({std::nullopt, nothing});
        } else if (!column.slump.mm) {
            row.cells.push_back({std::nullopt, "flows"});
        } else {
            const core::Quantity exact{*column.slump.mm, Measure::slump};
            core::Quantity slump = exact;
            if (column.slump.estimate) { // to the quarter inch or 5 mm, as slump is read
                const double step = system == UnitSystem::us ? 6.35 : 5;
                slump.value = std::round(slump.value / step) * step;
            }
            const Written written = written_apart(slump, system);
            row.unit = written.unit;
            row.cells.push_back({measured(exact, system).amount,
                                 (column.slump.estimate ? "about " : "") + written.amount});
        }
    }
    return row;
}

ComparisonRow checks_row(const std::vector<ComparedMix>& columns) {
    ComparisonRow row{.name = "checks failed", .unit = "", .cells = {}};
    for (const ComparedMix& column : columns) {
        if (!column.proportions) {
            row.cells.push_back({std::nullopt, nothing});
            continue;
        }
        const auto failed =
            std::ranges::count(column.checks, core::Verdict::fails, &core::Check::verdict);
        row.cells.push_back(
            {static_cast<double>(failed), failed == 0 ? "none" : std::to_string(failed) + " FAIL"});
    }
    return row;
}

std::optional<double> aggregate_percent(const ComparedMix& column) {
    if (!column.states_volume()) {
        return std::nullopt;
    }
    double volume_m3 = 0;
    for (const core::Ingredient& ingredient : column.proportions->ingredients) {
        if (ingredient.role == core::Role::coarse || ingredient.role == core::Role::fine) {
            volume_m3 += ingredient.volume_m3.value_or(0);
        }
    }
    return 100 * volume_m3 / *column.proportions->totals.volume_m3;
}

/// Where air is lost on the way, that of the batch and that at placing.
void add_air(Table& table, const std::vector<ComparedMix>& columns) {
    const bool any_lost = std::ranges::any_of(columns, [](const ComparedMix& column) {
        return column.proportions && column.proportions->selection.air_percent !=
                                         column.proportions->selection.air_at_placing_percent;
    });
    table.add(any_lost ? "air in the batch" : "air", Measure::percent, "",
              [](const ComparedMix& column) {
                  return std::optional{column.proportions->selection.air_percent};
              });
    if (any_lost) {
        table.add("air at placing", Measure::percent, "", [](const ComparedMix& column) {
            return std::optional{column.proportions->selection.air_at_placing_percent};
        });
    }
}

} // namespace

std::string currency_of(const std::vector<core::ComparedMix>& columns) {
    const auto first = std::ranges::find_if(
        columns, [](const ComparedMix& column) { return column.cost.has_value(); });
    return first == columns.end() ? "" : first->cost->currency;
}

double per_unit(double per_m3, UnitSystem system) {
    return system == UnitSystem::us ? per_m3 * units::unit("yd3").factor : per_m3;
}

bool ComparisonRow::is_equal() const {
    return std::ranges::all_of(
        cells, [&](const ComparisonCell& cell) { return cell.text == cells.front().text; });
}

std::vector<std::size_t> ComparisonRow::best(const std::vector<core::ComparedMix>& columns) const {
    if (better == Better::neither) {
        return {};
    }
    std::optional<std::size_t> lowest;
    std::size_t choices = 0;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (!columns[i].may_be_chosen()) {
            continue;
        }
        if (!cells[i].value || cells[i].at_least || !columns[i].is_whole ||
            columns[i].may_miss_slump || (lowest && columns[i].asked != columns[*lowest].asked)) {
            return {};
        }
        ++choices;
        lowest = !lowest || *cells[i].value < *cells[*lowest].value ? i : *lowest;
    }
    std::vector<std::size_t> best;
    for (std::size_t i = 0; lowest && i < cells.size(); ++i) {
        if (columns[i].may_be_chosen() && cells[i].text == cells[*lowest].text) {
            best.push_back(i);
        }
    }
    return best.size() < choices ? best : std::vector<std::size_t>{};
}

std::string sum_text(double amount, const core::PartialSum& sum, int decimals) {
    return (sum.is_whole() ? "" : "at least ") + fixed(amount, decimals);
}

std::vector<ComparisonRow> comparison_rows(const ComparisonResult& result, UnitSystem system) {
    Table table{result.columns, system};
    const auto totals = [](double core::Totals::*member) {
        return [member](const ComparedMix& column) {
            return std::optional{column.proportions->totals.*member};
        };
    };
    const auto partial = [](std::optional<double> core::Totals::*member) {
        return [member](const ComparedMix& column) { return column.proportions->totals.*member; };
    };
    table.add("mixing water", Measure::concentration, "water_kg_m3",
              totals(&core::Totals::water_kg_m3));
    table.add(system == UnitSystem::us ? "cementitious materials" : "cementitious material",
              Measure::concentration, "binder_kg_m3", totals(&core::Totals::binder_kg_m3));
    table.add("w/cm", Measure::w_cm, "", totals(&core::Totals::w_cm));
    table.add("expected strength", Measure::strength, "", [](const ComparedMix& column) {
        return column.strength ? std::optional{column.strength->mpa} : std::nullopt;
    });
    table.add("required average", Measure::strength, "", [](const ComparedMix& column) {
        return std::optional{column.proportions->selection.required_average_strength_mpa};
    });
    table.rows.push_back(slump_row(result.columns, system));
    add_air(table, result.columns);
    table.add("paste, of the volume", Measure::percent, "", partial(&core::Totals::paste_percent));
    table.add("mortar, of the volume", Measure::percent, "",
              partial(&core::Totals::mortar_percent));
    table.add("aggregate, of the volume", Measure::percent, "", aggregate_percent);
    table.add("heat, rise when thick", Measure::temperature_difference, "temperature_rise_k",
              [](const ComparedMix& column) { return column.temperature_rise_k; });
    add_footprints(table.rows, result, system);
    table.rows.push_back(checks_row(result.columns));
    return std::move(table.rows);
}

} // namespace boardmark::report
