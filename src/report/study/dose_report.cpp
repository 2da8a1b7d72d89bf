#include <boardmark/core/checks/check_title.hpp>
#include <boardmark/report/study/dose_report.hpp>
#include <boardmark/report/writing/words.hpp>
#include <boardmark/text/utf8.hpp>
#include <boardmark/units/unit.hpp>

#include "../figure/dose_figure.hpp"
#include "../writing/csv_cells.hpp"
#include "../writing/flow.hpp"
#include "../writing/grid.hpp"
#include "../writing/html.hpp"
#include "../writing/json_values.hpp"
#include "../writing/quantity_format.hpp"
#include "../writing/text_sections.hpp"
#include "../writing/trace.hpp"
#include "../writing/wrap.hpp"
#include "comparison_rows.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::report {
namespace {

using core::ComparedMix;
using core::Measure;
using core::UnitSystem;

std::string currency_of(const core::DoseResponse& response) {
    const auto& cost = response.points.front().less_binder.cost;
    return cost ? cost->currency : "";
}

/// Why the costs of the points were not added up: that of the first point that has none. The point
/// at no dose may be in one currency where the others are in two.
std::optional<core::Phrase> why_no_cost(const core::DoseResponse& response) {
    for (const core::DosePoint& point : response.points) {
        if (point.less_binder.no_cost) {
            return point.less_binder.no_cost;
        }
    }
    return std::nullopt;
}

std::string cost_text(const ComparedMix& column, UnitSystem system) {
    if (!column.cost) {
        return "-";
    }
    const std::string amount = fixed(per_unit(column.cost->sum.per_m3, system), 2);
    return column.cost->sum.is_whole() ? amount : amount + "+"; // at least, told below
}

bool is_partial(const ComparedMix& column) {
    return column.cost && !column.cost->sum.is_whole();
}

template <class ValueOf>
std::string figure_text(const ComparedMix& column, Measure measure, UnitSystem system,
                        ValueOf value_of) {
    const std::optional<double> value =
        column.proportions ? value_of(column) : std::optional<double>{};
    return value ? shown({*value, measure}, system) : "-";
}

std::optional<double> strength_of(const ComparedMix& column) {
    return column.strength ? std::optional{column.strength->mpa} : std::nullopt;
}

std::optional<double> water_of(const ComparedMix& column) {
    return column.proportions->totals.water_kg_m3;
}

std::optional<double> ratio_of(const ComparedMix& column) {
    return column.proportions->totals.w_cm;
}

std::optional<double> binder_of(const ComparedMix& column) {
    return column.proportions->totals.binder_kg_m3;
}

std::string remark_on(const core::DoseResponse& response, std::size_t point) {
    std::string remark;
    if (response.limits_hold_from == point) {
        remark = "limits hold from here";
    }
    if (response.cheapest == point) {
        remark += remark.empty() ? "cheapest" : "; cheapest";
    }
    return remark;
}

Flow text_of_points(const core::DoseResponse& response, UnitSystem system) {
    Grid grid{{Align::left, Align::right, Align::right, Align::right, Align::right, Align::right,
               Align::right, Align::left}};
    const std::string stated = currency_of(response);
    const std::string currency = stated.empty() ? "cost" : stated;
    grid.head({"", "less water:", "", "", "", "less binder:", "", ""});
    const std::string binder = system == UnitSystem::us ? "cementitious" : "binder";
    grid.head({"dose", "water", "w/cm", "strength", currency, binder, currency, ""});
    for (std::size_t i = 0; i < response.points.size(); ++i) {
        const core::DosePoint& point = response.points[i];
        grid.add({shown({point.ml_100kg, Measure::dose}, system),
                  figure_text(point.less_water, Measure::concentration, system, water_of),
                  figure_text(point.less_water, Measure::w_cm, system, ratio_of),
                  figure_text(point.less_water, Measure::strength, system, strength_of),
                  cost_text(point.less_water, system),
                  figure_text(point.less_binder, Measure::concentration, system, binder_of),
                  cost_text(point.less_binder, system), remark_on(response, i)});
    }
    constexpr std::size_t ratios = 2;
    grid.even_out(ratios);
    return grid;
}

std::string limits_text(const core::DoseResponse& response, UnitSystem system) {
    if (response.limits_hold_from) {
        return "With less water no check fails from " +
               shown({response.points[*response.limits_hold_from].ml_100kg, Measure::dose},
                     system) +
               " on.";
    }
    return response.limits_hold_at_last ? "With less water no check fails at any dose."
                                        : "With less water a check still fails at the last dose: "
                                          "'boardmark compare' says which.";
}

std::string cost_words(const core::DoseResponse& response, UnitSystem system) {
    if (const auto reason = why_no_cost(response)) {
        return "It is not known where cost starts to rise; cost: " + words(*reason, system) + ".";
    }
    const std::size_t failing = response.failing_less_binder();
    const std::size_t not_chosen = response.not_chosen_less_binder();
    if (failing == response.points.size()) {
        return "With less binder a check fails at every dose: none is called the cheapest.";
    }
    if (not_chosen == response.points.size()) {
        return "With less binder a check fails, a limit is kept only by its rounding or the "
               "strength "
               "is not proven at every dose: none is called the cheapest.";
    }
    if (!response.cheapest) {
        return "It is not known where cost starts to rise: a price is missing.";
    }
    const std::size_t cheapest = *response.cheapest;
    const std::string dose = shown({response.points[cheapest].ml_100kg, Measure::dose}, system);
    if (not_chosen > 0) {
        return "With less binder cost is least at " + dose +
               (not_chosen == failing
                    ? " among the doses at which no check fails."
                    : " among the doses at which no check fails, limits are kept unrounded and the "
                      "strength is proven.");
    }
    return cheapest == 0 ? "With less binder cost rises from the first dose on: the reducer costs "
                           "more than the binder it saves."
           : cheapest + 1 == response.points.size()
               ? "With less binder cost falls up to the last dose, " + dose + "."
               : "With less binder cost is least at " + dose + " and rises beyond.";
}

/// What the cheapest dose is watched for and the mix as written is not, so that no price is told
/// without what it costs the face.
Flow text_of_watches(const DoseResult& result, UnitSystem system) {
    const core::DoseResponse& response = result.response;
    if (!response.cheapest) {
        return {};
    }
    const core::DosePoint& point = response.points[*response.cheapest];
    std::string names;
    for (const std::string& id : core::verdicts_of(point.less_binder.checks).watched) {
        if (std::ranges::count(core::verdicts_of(result.checks).watched, id) == 0) {
            names += (names.empty() ? "" : ", ") + core::title_of(id);
        }
    }
    return names.empty()
               ? Flow{}
               : paragraph("At " + shown({point.ml_100kg, Measure::dose}, system) +
                               " to watch, which the mix as written is not: " + names + ".",
                           list_item);
}

/// Nothing where the points have the slump that is asked.
Flow text_of_slump(const core::DoseResponse& response, UnitSystem system) {
    if (!response.slump_of_water_mm) {
        return {};
    }
    return paragraph("At every dose the slump is that of the water alone, " +
                         shown({*response.slump_of_water_mm, Measure::slump}, system) +
                         ": the reducer is spent on water or binder, none of it on flow, which "
                         "'boardmark compare' sets beside both.",
                     list_item);
}

Json json_of_use(const ComparedMix& column) {
    const auto& proportions = column.proportions;
    return {{"water_kg_m3", proportions ? Json(proportions->totals.water_kg_m3) : Json(nullptr)},
            {"binder_kg_m3", proportions ? Json(proportions->totals.binder_kg_m3) : Json(nullptr)},
            {"w_cm", proportions ? Json(proportions->totals.w_cm) : Json(nullptr)},
            {"expected_strength_mpa", number_or_null(strength_of(column))},
            {"cost_per_m3", column.cost ? Json(column.cost->sum.per_m3) : Json(nullptr)},
            {"cost_at_least", column.cost && !column.cost->sum.is_whole()},
            {"fails", !proportions || core::any_fails(column.checks)},
            {"watch", core::verdicts_of(column.checks).watched},
            {"unresolved", column.unresolved ? Json(words(column.unresolved->what, UnitSystem::si))
                                             : Json(nullptr)}};
}

Json dose_at(const core::DoseResponse& response, std::optional<std::size_t> point) {
    return point ? Json(response.points[*point].ml_100kg) : Json(nullptr);
}

} // namespace

Flow flow_of(const DoseResult& result, const TextStyle& style) {
    const core::DoseResponse& response = result.response;
    Flow page = paragraph(text::printable(result.title), {}) + file_line(result.inputs);
    page += paragraph("Response to the dose of " + text::printable(response.reducer) +
                          (style.system == UnitSystem::us ? ", for 1 yd3" : ", for 1 m3"),
                      {});
    page += Flow{"\n"} + paragraph("The mix as written:", {}) +
            verdict_line(result.checks, style.system);
    page += section("DOSE BY DOSE") + text_of_points(response, style.system) +
            dose_figures(response, style.system);
    const bool any_partial = std::ranges::any_of(response.points, [](const core::DosePoint& point) {
        return is_partial(point.less_water) || is_partial(point.less_binder);
    });
    page +=
        section("WHAT IT SHOWS") +
        (any_partial
             ? paragraph("A cost with + is at least that much: a price is missing.", list_item)
             : Flow{}) +
        text_of_slump(response, style.system) +
        paragraph(limits_text(response, style.system), list_item) +
        paragraph(cost_words(response, style.system), list_item) +
        text_of_watches(result, style.system) +
        paragraph(response.ends_at_maximum
                      ? "Strengths are estimates until they are tested; the last dose shown is the "
                        "highest that the reducer's data sheet permits."
                      : "Strengths are estimates until they are tested; the reducer's data end at "
                        "the last dose shown.",
                  list_item);
    page += section("CHECKS of the mix as written") + text_of_checks(result.checks, style.system);
    if (style.explain) {
        page += folded_section("LIMITS, where they come from") + text_of_limits(result.checks);
    }
    return page + section("CAUTIONS") + text_of_cautions(result.cautions, style);
}

std::string text(const DoseResult& result, const TextStyle& style) {
    return written(flow_of(result, style), style);
}

std::string json(const DoseResult& result) {
    const core::DoseResponse& response = result.response;
    Json object =
        json_heading("dose", result.title, core::verdicts_of(result.checks), result.inputs);
    object["reducer"] = response.reducer;
    const std::string currency = currency_of(response);
    object["currency"] = currency.empty() ? Json(nullptr) : Json(currency);
    const auto no_cost = why_no_cost(response);
    object["cost_reason"] = no_cost ? Json(words(*no_cost, UnitSystem::si)) : Json(nullptr);
    object["slump_of_water_mm"] = number_or_null(response.slump_of_water_mm);
    object["points"] = Json::array();
    for (const core::DosePoint& point : response.points) {
        object["points"].push_back({{"dose_ml_100kg", point.ml_100kg},
                                    {"less_water", json_of_use(point.less_water)},
                                    {"less_binder", json_of_use(point.less_binder)}});
    }
    object["limits_hold_from_ml_100kg"] = dose_at(response, response.limits_hold_from);
    object["cheapest_ml_100kg"] = dose_at(response, response.cheapest);
    object["checks"] = json_of(result.checks);
    object["cautions"] = json_of(result.cautions);
    return written(object);
}

std::string csv(const DoseResult& result, UnitSystem system) {
    const bool us = system == UnitSystem::us;
    const std::string_view dose = us ? "fl oz/cwt" : "mL/100 kg";
    const std::string_view mass = us ? "lb/yd3" : "kg/m3";
    const std::string_view stress = us ? "psi" : "MPa";
    const std::string money = currency_of(result.response) + (us ? "/yd3" : "/m3");
    std::string text =
        csv_row({fmt::format("dose ({})", dose), fmt::format("water ({})", mass),
                 "w/cm with less water", fmt::format("strength with less water ({})", stress),
                 fmt::format("cost with less water ({})", money),
                 fmt::format("binder with less binder ({})", mass),
                 fmt::format("cost with less binder ({})", money), "remark"});
    const auto cost = [&](const ComparedMix& column) {
        return column.cost && column.cost->sum.is_whole()
                   ? csv_cell(std::optional{per_unit(column.cost->sum.per_m3, system)})
                   : std::string{};
    };
    for (std::size_t i = 0; i < result.response.points.size(); ++i) {
        const core::DosePoint& point = result.response.points[i];
        const auto of = [](const ComparedMix& column, auto value_of) {
            return column.proportions ? value_of(column) : std::optional<double>{};
        };
        text += csv_row({csv_cell_in(units::unit("mL/100 kg").to_inside(point.ml_100kg), dose),
                         csv_cell_in(of(point.less_water, water_of), mass),
                         csv_cell(of(point.less_water, ratio_of)),
                         csv_cell_in(strength_of(point.less_water), stress), cost(point.less_water),
                         csv_cell_in(of(point.less_binder, binder_of), mass),
                         cost(point.less_binder), csv_cell(remark_on(result.response, i))});
    }
    return text;
}

std::string html(const DoseResult& result, const TextStyle& style) {
    return html_of(flow_of(result, style),
                   {.title = result.title, .command = "dose", .inputs = result.inputs});
}

} // namespace boardmark::report
