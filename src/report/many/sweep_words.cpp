#include "sweep_words.hpp"

#include <boardmark/report/writing/words.hpp>
#include <boardmark/text/utf8.hpp>

#include "../study/comparison_rows.hpp"
#include "../writing/measured.hpp"
#include "../writing/names.hpp"
#include "../writing/quantity_format.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::report {
namespace {

using core::Measure;
using core::SweptMix;
using core::UnitSystem;

core::Quantity quantity_of(const core::Variable& variable, double value) {
    return {core::shown_value(variable, value), core::measure_of(variable)};
}

std::string joined_ids(const std::vector<std::string>& ids) {
    return fmt::format("{}", fmt::join(ids, ", "));
}

/// The currency of the first point that has a cost.
std::string currency_of_points(const core::Sweep& sweep) {
    for (const core::SweepPoint& point : sweep.points) {
        if (point.mix && point.mix->cost) {
            return point.mix->cost->currency;
        }
    }
    return "";
}

const core::PartialSum* no_sum(const SweptMix&) {
    return nullptr;
}

const core::PartialSum* cost_of(const SweptMix& mix) {
    return mix.cost ? &mix.cost->sum : nullptr;
}

const core::PartialSum* carbon_of(const SweptMix& mix) {
    return mix.carbon ? &*mix.carbon : nullptr;
}

bool any_carbon(const core::Sweep& sweep) {
    return std::ranges::any_of(
        sweep.points, [](const core::SweepPoint& point) { return point.mix && point.mix->carbon; });
}

} // namespace

std::string variable_text(const core::Variable& variable, double value, UnitSystem system) {
    constexpr int finer = 1; // than the trade writes: points lie closer than its steps
    return shown(quantity_of(variable, value), system, finer);
}

std::string variable_axis(const core::Variable& variable, UnitSystem system) {
    const std::string unit = variable_unit(variable, system);
    return text::printable(core::key_of(variable)) + (unit == "1" ? "" : ", " + unit);
}

double variable_amount(const core::Variable& variable, double value, UnitSystem system) {
    return measured(quantity_of(variable, value), system).amount;
}

std::string variable_unit(const core::Variable& variable, UnitSystem system) {
    return measured({0, core::measure_of(variable)}, system).unit;
}

std::string verdict_words(const core::SweepPoint& point, UnitSystem system) {
    if (!point.mix) {
        return "no mix: " + reason_words(point, system);
    }
    const core::VerdictSummary& verdict = point.mix->verdict;
    const std::string state = name_of(verdict.state());
    switch (verdict.state()) {
    case core::VerdictState::fails:
        return state + ": " + joined_ids(verdict.failed);
    case core::VerdictState::watch:
        return state + ": " + joined_ids(verdict.watched);
    case core::VerdictState::open:
        return fmt::format("{} {} not checked", verdict.not_checked.size(),
                           verdict.not_checked.size() == 1 ? "is" : "are");
    case core::VerdictState::holds:
        break;
    }
    return state;
}

std::string reason_words(const core::SweepPoint& point, UnitSystem system) {
    return point.unresolved ? text::printable(words(point.unresolved->what, system)) : "";
}

std::vector<SweptFigure> swept_figures(const core::Sweep& sweep, UnitSystem system) {
    const bool us = system == UnitSystem::us;
    const std::string mass = us ? "lb/yd3" : "kg/m3";
    std::vector<SweptFigure> figures{
        {us ? "cementitious" : "binder", mass, Measure::concentration,
         [](const SweptMix& mix) { return std::optional{mix.totals.binder_kg_m3}; }, no_sum}};
    const std::string currency = currency_of_points(sweep);
    if (!currency.empty()) {
        figures.push_back({"cost", currency + (us ? "/yd3" : "/m3"), Measure::money,
                           [](const SweptMix& mix) {
                               return mix.cost ? std::optional{mix.cost->sum.per_m3} : std::nullopt;
                           },
                           cost_of});
    }
    if (any_carbon(sweep)) {
        figures.push_back({"CO2e", mass, Measure::concentration,
                           [](const SweptMix& mix) {
                               return mix.carbon ? std::optional{mix.carbon->per_m3} : std::nullopt;
                           },
                           carbon_of});
    }
    return figures;
}

double swept_amount(const SweptFigure& figure, double value, UnitSystem system) {
    return figure.measure == Measure::money ? per_unit(value, system)
                                            : measured({value, figure.measure}, system).amount;
}

} // namespace boardmark::report
