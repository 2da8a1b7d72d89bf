#include <boardmark/report/trial/yield_report.hpp>
#include <boardmark/report/writing/words.hpp>
#include <boardmark/text/utf8.hpp>
#include <boardmark/units/date.hpp>
#include <boardmark/units/unit.hpp>

#include "../batch/batch_sheet.hpp"
#include "../writing/flow.hpp"
#include "../writing/grid.hpp"
#include "../writing/html.hpp"
#include "../writing/names.hpp"
#include "../writing/quantity_format.hpp"
#include "../writing/text_sections.hpp"
#include "../writing/trace.hpp"
#include "../writing/verdicts.hpp"
#include "../writing/wrap.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace boardmark::report {
namespace {

using core::Measure;
using core::UnitSystem;

constexpr int one_digit_more = 1;
constexpr const char* unchanged = "as before";

/// Which of the two trials fails.
Flow of_next_trial(const YieldResult& result) {
    const bool fails =
        result.next && core::verdicts_of(result.next->checks).state() == core::VerdictState::fails;
    return fails ? paragraph("The next trial as it follows from this one fails: do not batch it "
                             "before its checks are met.",
                             {})
                 : Flow{};
}

Flow heading(const YieldResult& result, UnitSystem system) {
    std::string trial = "Trial";
    if (!result.name.empty()) {
        trial += " " + result.name;
    }
    if (result.date) {
        trial += " of " + units::written_date(*result.date);
    }
    return paragraph(text::printable(result.title), {}) +
           paragraph(text::printable(trial + ", mix " + result.mix_file), {}) +
           file_line(result.inputs) + "\n" + verdict_line(verdicts_of(result), system) +
           strength_line(result.checks, system) + of_next_trial(result);
}

std::string air_found(const core::Yield& yield, UnitSystem system) {
    std::string text;
    if (yield.measured_air_percent) {
        text = shown({*yield.measured_air_percent, Measure::percent}, system) + " by meter";
    }
    if (yield.gravimetric_air_percent) {
        text += text.empty() ? "" : ", ";
        text += shown({*yield.gravimetric_air_percent, Measure::percent}, system) +
                " gravimetric (air-free density " +
                shown({*yield.air_free_density_kg_m3, Measure::fresh_density}, system) + ")";
    }
    return text + "; target " + shown({yield.target.air_percent, Measure::percent}, system);
}

std::string slump_found(const core::Trial& trial, const core::Yield& yield, UnitSystem system) {
    std::string text;
    for (const core::TimedSlump& slump : trial.tests.slump) {
        text += text.empty() ? "" : ", ";
        text += shown({slump.mm, Measure::slump}, system);
        if (trial.tests.slump.size() > 1) {
            text += fmt::format(" at {:.0f} min", slump.minutes);
        }
    }
    if (const auto& before = trial.tests.slump_before_reducer_mm) {
        text += ", " + shown({*before, Measure::slump}, system) + " before the reducer";
    }
    return text + "; target " + shown({yield.target.slump_mm, Measure::slump}, system);
}

/// What the relative yield says, as far as one density test can tell.
std::string relative_yield_text(const YieldResult& result) {
    const double relative = result.yield.relative_yield;
    const auto check = std::ranges::find_if(result.checks, [](const core::Check& one) {
        return one.is(core::check_ids::yield_relative);
    });
    const std::string text = fixed(relative, 3);
    constexpr double half = 0.5;
    if (relative < half || relative > 1 / half) {
        return text + ": is the intended volume right?";
    }
    const core::Limit& noise = *check->limit;
    return relative >= *noise.low && relative <= *noise.high
               ? text + ": the intended volume, within what one density test can show"
           : relative < 1 ? text + ": less concrete than intended"
                          : text + ": more concrete than intended";
}

/// What water the aggregates brought, and whose figure that is.
std::string moistures_text(const core::Trial& trial, UnitSystem system) {
    std::string text;
    for (const core::BatchedMaterial& batched : trial.batched) {
        if (const auto& moisture = batched.material.aggregate.moisture_percent) {
            text += (text.empty() ? "" : ", ") + text::printable(batched.material.name) + " " +
                    shown({*moisture, Measure::percent}, system) +
                    (batched.moisture_of_the_day ? "" : " of the mix file");
        }
    }
    return text;
}

Flow text_of_findings(const YieldResult& result, UnitSystem system) {
    const core::Yield& yield = result.yield;
    const auto in_units = [&](double value, Measure measure, int finer = 0) {
        return shown({value, measure}, system, finer);
    };
    Grid grid{{Align::left, Align::left}};
    grid.add({"mass of batch", in_units(yield.batch_mass_kg, Measure::mass)});
    grid.add({"density", in_units(yield.density_kg_m3, Measure::fresh_density)});
    grid.add({"yield", in_units(yield.volume_m3, Measure::volume, one_digit_more) + ", intended " +
                           in_units(yield.intended_volume_m3, Measure::volume, one_digit_more) +
                           fmt::format(", reading precision ±{:.2g} %",
                                       100 * yield.volume_uncertainty_m3 / yield.volume_m3)});
    grid.add({"relative yield", relative_yield_text(result)});
    grid.add({"air", air_found(yield, system)});
    grid.add({"slump", slump_found(result.trial, yield, system)});
    if (result.trial.tests.temperature_c) {
        grid.add(
            {"temperature", in_units(*result.trial.tests.temperature_c, Measure::temperature)});
    }
    grid.add({"moisture", moistures_text(result.trial, system)});
    const core::Totals& found = yield.found.totals;
    grid.add({"mixing water", in_units(found.water_kg_m3, Measure::concentration) +
                                  ", free water and the admixtures' liquid counted"});
    const std::string binder = "cementitious material";
    grid.add({system == UnitSystem::us ? in_us_trade_words(binder) : binder,
              in_units(found.binder_kg_m3, Measure::concentration)});
    grid.add({"w/cm", in_units(found.w_cm, Measure::w_cm) + "; the mix file's " +
                          in_units(result.designed.totals.w_cm, Measure::w_cm)});
    return grid;
}

/// Admixtures are measured by volume, everything else is weighed.
std::string amount_text(double kg, std::optional<double> m3, UnitSystem system) {
    if (!m3) {
        return shown({kg, Measure::mass}, system);
    }
    return system == UnitSystem::us ? fixed(units::unit("fl oz").from_inside(*m3), 2) + " fl oz"
                                    : fixed(units::unit("mL").from_inside(*m3), 0) + " mL";
}

std::string change_text(const SheetRow& row, UnitSystem system) {
    const double by_mass = *row.next_kg - row.weighed_kg;
    const auto by_volume = row.next_m3 && row.weighed_m3
                               ? std::optional{std::abs(*row.next_m3 - *row.weighed_m3)}
                               : std::nullopt;
    constexpr double worth_telling = 0.001; // of the amount: less is the scale's noise
    std::string amount = amount_text(std::abs(by_mass), by_volume, system);
    const bool is_noise = amount.find_first_of("123456789") == std::string::npos ||
                          std::abs(by_mass) < worth_telling * row.weighed_kg;
    return is_noise ? unchanged : (by_mass > 0 ? "+" : "-") + amount;
}

Flow text_of_sheet(const std::vector<SheetRow>& rows, double volume_m3, UnitSystem system) {
    Grid grid{{Align::left, Align::right, Align::right, Align::right, Align::right, Align::right}};
    const bool us = system == UnitSystem::us;
    const std::string per = us ? "per yd3" : "per m3";
    grid.head({"", "found " + per, "next " + per, "weighed", "weigh next", "change"});
    for (const SheetRow& row : rows) {
        const auto concentration = [&](double kg_m3) {
            const double amount = us ? units::unit("lb/yd3").from_inside(kg_m3) : kg_m3;
            const int decimals = row.role == core::Role::admixture ? 2 : 0;
            return fixed(amount, decimals) + (us ? " lb" : " kg");
        };
        grid.add({column_name(row.name), concentration(row.found_kg_m3),
                  concentration(*row.next_kg_m3),
                  amount_text(row.weighed_kg, row.weighed_m3, system),
                  amount_text(*row.next_kg, row.next_m3, system), change_text(row, system)});
    }
    return grid +
           paragraph(
               "Weights for " + shown({volume_m3, Measure::volume}, system, one_digit_more) +
                   " with the aggregates as wet as in this trial. In the columns per volume the "
                   "water is all mixing water and the aggregates are saturated surface-dry.",
               {"  ", "  "});
}

std::string lever_text(const core::NextTrial& next) {
    if (next.lever == core::Lever::water) {
        return "Correct the water; the cementitious material follows it at the w/cm of the mix.";
    }
    return next.dose
               ? "Correct the dose of " + text::printable(next.dose->reducer) + ", not the water."
               : "Correct the dose of the reducer that was left out, not the water.";
}

/// What to change on the batch sheet, in words.
std::string changes_text(const std::vector<SheetRow>& rows, UnitSystem system) {
    std::vector<std::string> changes;
    for (const SheetRow& row : rows) {
        const std::string change = change_text(row, system);
        if (change != unchanged) {
            changes.push_back(text::printable(row.name) + " " +
                              amount_text(*row.next_kg, row.next_m3, system) + " instead of " +
                              amount_text(row.weighed_kg, row.weighed_m3, system));
        }
    }
    return changes.empty()
               ? "Batch the same sheet again."
               : fmt::format("On the batch sheet: {}{}.", fmt::join(changes, ", "),
                             changes.size() < rows.size() ? "; the rest as before" : "");
}

/// Why there is none, and the ways out.
Flow text_of_no_next(const core::Unresolved& unresolved, UnitSystem system) {
    Flow text = paragraph("None follows: " + words(unresolved.what, system), {"  ", "  "});
    for (const core::Phrase& way : unresolved.ways_out) {
        text += paragraph(words(way, system), list_item);
    }
    return text;
}

/// What to weigh for the next trial and in which order.
Flow text_of_next(const YieldResult& result, const TextStyle& style) {
    const core::NextTrial& next = *result.next;
    const auto rows = batch_sheet(result);
    return paragraph(lever_text(next), {"  ", "  "}) +
           text_of_sheet(rows, next.batch.volume_m3, style.system) +
           paragraph(changes_text(rows, style.system), {"  ", "  "}) +
           section("AT THE MIXER, in this order") + text_of_order(next.batch.order, style) +
           text_of_cautions(next.advice, style) + text_of_cautions(next.batch.cautions, style);
}

constexpr const char* of_next = "next"; // the scope of the next trial's checks

Flow text_of_next_checks(const std::vector<core::Check>& checks, UnitSystem system) {
    return verdict_line(core::verdicts_of(checks), system, not_to_be_used, of_next) +
           strength_line(checks, system) + text_of_checks(checks, system, of_next);
}

Flow text_of_all_reasons(const YieldResult& result, const TextStyle& style) {
    Flow text = folded_section("REASONS") + text_of_reasons(result.yield.worksheet.steps, style);
    if (result.next) {
        text += folded_section("REASONS of the next trial") +
                text_of_reasons(result.next->proportions.worksheet.steps, style);
    }
    return text + folded_section("LIMITS, where they come from") + text_of_limits(result.checks);
}

} // namespace

Flow flow_of(const YieldResult& result, const TextStyle& style) {
    Flow page = heading(result, style.system);
    page += section("FOUND") + text_of_findings(result, style.system);
    page += section("NEXT TRIAL") + (result.next ? text_of_next(result, style)
                                                 : text_of_no_next(*result.no_next, style.system));
    page += section("CHECKS of this trial") + text_of_checks(result.checks, style.system);
    if (result.next) {
        page += section("CHECKS of the next trial") +
                text_of_next_checks(result.next->checks, style.system);
        page += folded_section("WHY the next trial is so") +
                text_of_steps(result.next->adjustments, style.system);
    }
    if (style.explain) {
        page += text_of_all_reasons(result, style);
    }
    return page + section("CAUTIONS") +
           text_of_cautions(result.yield.found.worksheet.cautions, style);
}

std::string text(const YieldResult& result, const TextStyle& style) {
    return written(flow_of(result, style), style);
}

std::string html(const YieldResult& result, const TextStyle& style) {
    return html_of(flow_of(result, style),
                   {.title = result.title, .command = "yield", .inputs = result.inputs});
}

} // namespace boardmark::report
