#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/forms/form_ties.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "compare.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

constexpr double psf_kpa = 0.0478802590;
constexpr double pound_kn = 0.0044482216;

double pressure_precision_kpa(UnitSystem system) {
    return system == UnitSystem::us ? psf_kpa : 0.1;
}

double force_precision_kn(UnitSystem system) {
    return system == UnitSystem::us ? pound_kn : 0.01;
}

/// A breaking load is halved by the guide's factor, and the message says so.
Phrase tie_message(const TieRowLoad& row, TieRating rating, const FormPressure& pressure,
                   const Tables& tables) {
    Phrase message{"the most loaded tie, {depth} below the top, carries {value} by {method}; its "
                   "working load is {limit}",
                   {quantity("depth", {row.depth_m, Measure::line_length}),
                    no_less_than("value", {row.load_kn, Measure::force}),
                    word("method", pressure.method),
                    quantity("limit", {working_load_kn(rating, tables), Measure::force})}};
    if (rating.breaking) {
        message.text += ", the breaking load of {breaking} over {factor}";
        message.arguments.push_back(quantity("breaking", {rating.kn, Measure::force}));
        message.arguments.push_back(
            quantity("factor", {tables.forms->tie_safety_factor.value, Measure::ratio}));
    }
    return message;
}

/// Lowers what holds to a verdict, and says why.
void lower_to(Verdict verdict, const Phrase& why, Check& check) {
    if (severity(check.verdict) >= severity(verdict)) {
        return;
    }
    check.verdict = verdict;
    check.message.text += "; " + why.text;
    check.message.arguments.insert(check.message.arguments.end(), why.arguments.begin(),
                                   why.arguments.end());
}

/// What is assumed is no promise; but what bears the full liquid head bears any coefficient.
void watch_assumptions(const FormPressure& pressure, bool bears_head, Check& check) {
    if (!pressure.assumed.empty() && !bears_head) {
        lower_to(Verdict::watch, pressure.assumed.front(), check);
    }
    if (pressure.assumed_density) {
        lower_to(Verdict::watch, *pressure.assumed_density, check);
    }
}

/// The load of the hardest loaded tie under the full head.
double at_full_head_kn(FormPressure pressure, const TieLayout& layout) {
    pressure.kpa = std::max(pressure.kpa, pressure.head_kpa);
    pressure.envelope = {{0, 0}, {pressure.envelope.back().depth_m, pressure.kpa}};
    return hardest_tie_kn(pressure, layout);
}

Phrase impossible_pour() {
    return {"the pour states no possible height or density: its pressure is not known", {}};
}

bool are_finite(const std::vector<TieRowLoad>& rows) {
    return std::ranges::all_of(rows,
                               [](const TieRowLoad& row) { return std::isfinite(row.load_kn); });
}

/// A form without ties somewhere was not looked at there.
void watch_layout(const TieLayout& layout, Check& check) {
    if (!layout.all_held) {
        lower_to(Verdict::not_checked,
                 {"part of the form has no tie near it: see 'ties.first' and 'ties.across'", {}},
                 check);
    }
    if (layout.on_assumed_openings) {
        lower_to(Verdict::watch,
                 {"the place of an opening through the wall is assumed: state 'sill' and 'at'", {}},
                 check);
    }
}

/// The outer face of a corner is longer than the middle line along which the columns stand: where
/// nothing else holds it, the ties beside it do.
void watch_corner(double hardest_kn, double working_kn, const TieLayout& layout, Check& check) {
    const double beside_kn = hardest_kn * layout.beside_corner;
    if (above(beside_kn, working_kn)) {
        lower_to(Verdict::watch,
                 {"next to a corner a tie that holds the outer form of the corner too carries "
                  "{beside}: clamp the corner, or set the ties beside it closer",
                  {no_less_than("beside", {beside_kn, Measure::force})}},
                 check);
    }
}

} // namespace

Check tie_check(const FormPressure& pressure, const TieLayout& layout,
                const std::optional<TieRating>& rating, const Tables& tables) {
    Check check{
        .id = check_ids::forms_tie,
        .verdict = Verdict::not_checked,
        .measure = Measure::force,
        .requirement = "working load",
        .source = tables.forms->tie_safety_factor.source,
        .message = {"state 'ties.working_load': what one tie may carry, by its maker's data sheet",
                    {}}};
    const auto rows = tie_loads(pressure, layout);
    if (rows.empty()) {
        check.message = {"no row of ties is in the concrete: 'ties.first' is not below the top",
                         {}};
        return check;
    }
    if (!rating) {
        return check;
    }
    if (!rating->breaking) { // no factor of the guide is used on a working load
        check.source = {"data sheet of the tie, 'ties.working_load'", Confidence::read};
    }
    if (!is_some(pressure.kpa)) {
        check.message = impossible_pour();
        return check;
    }
    if (!is_some(rating->kn)) {
        check.message = {"the load that a tie is rated for is no number above 0", {}};
        return check;
    }
    if (!are_finite(rows) || !std::isfinite(layout.beside_corner)) {
        check.message = {"the layout of the ties has a measure that is no number", {}};
        return check;
    }
    const auto hardest = std::ranges::max_element(rows, {}, &TieRowLoad::load_kn);
    const double working_kn = working_load_kn(*rating, tables);
    check.value = hardest->load_kn;
    check.limit = Limit{.low = {}, .high = working_kn};
    check.verdict = at_most({hardest->load_kn, working_kn, force_precision_kn(tables.system)});
    check.message = tie_message(*hardest, *rating, pressure, tables);
    watch_layout(layout, check);
    watch_corner(hardest->load_kn, working_kn, layout, check);
    watch_assumptions(pressure, !above(at_full_head_kn(pressure, layout), working_kn), check);
    return check;
}

Check form_pressure_check(const FormPressure& pressure, std::optional<double> design_kpa,
                          const Tables& tables) {
    Check check{
        .id = check_ids::forms_pressure,
        .verdict = Verdict::not_checked,
        .measure = Measure::pressure,
        .requirement = "design pressure",
        .source = pressure.source,
        .message = {"state 'placing.form_pressure': the pressure that the form is designed for",
                    {}}};
    if (!design_kpa) {
        return check;
    }
    if (!is_some(pressure.kpa)) {
        check.message = impossible_pour();
        return check;
    }
    if (!is_some(*design_kpa)) {
        check.message = {"the pressure that the form is designed for is no number above 0", {}};
        return check;
    }
    check.value = pressure.kpa;
    check.limit = Limit{.low = {}, .high = design_kpa};
    check.verdict = at_most({pressure.kpa, *design_kpa, pressure_precision_kpa(tables.system)});
    check.message = {"{value} by {method} on a form designed for {limit}",
                     {no_less_than("value", {pressure.kpa, Measure::pressure}),
                      word("method", pressure.method),
                      quantity("limit", {*design_kpa, Measure::pressure})}};
    const double most_kpa = std::max(pressure.kpa, pressure.head_kpa);
    watch_assumptions(pressure, !above(most_kpa, *design_kpa), check);
    return check;
}

} // namespace boardmark::core
