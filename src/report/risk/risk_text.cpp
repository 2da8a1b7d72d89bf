#include <boardmark/core/checks/check_title.hpp>
#include <boardmark/report/risk/risk_report.hpp>
#include <boardmark/text/utf8.hpp>

#include "../figure/histogram_figure.hpp"
#include "../writing/flow.hpp"
#include "../writing/grid.hpp"
#include "../writing/html.hpp"
#include "../writing/text_sections.hpp"
#include "../writing/trace.hpp"
#include "risk_words.hpp"

#include <fmt/format.h>

namespace boardmark::report {
namespace {

using core::Driver;
using core::LimitRisk;
using core::Risk;
using core::UnitSystem;

Flow distributions_text(const Risk& risk, UnitSystem system) {
    Grid grid{{Align::left, Align::right, Align::right, Align::right, Align::right, Align::right}};
    grid.head({"", "mean", "std. dev.", "5 % below", "median", "95 % below"});
    for (const core::Distribution& one : risk.quantities) {
        const auto figure = [&](double value) {
            return scattered_text(value, measure_of(one.quantity), system);
        };
        grid.add({quantity_words(one.quantity), figure(one.mean), figure(one.standard_deviation),
                  figure(one.p05), figure(one.p50), figure(one.p95)});
    }
    return grid;
}

/// What the word means that no trade has.
Flow slump_water_text() {
    return paragraph(
        "Slump water: the mixing water over the part of it that the reducers leave, so "
        "as much as the same slump needs without them.",
        {});
}

/// Neither broken nor to be watched nor open in any batch.
bool is_calm(const LimitRisk& limit) {
    return limit.probability == 0 && limit.watch == 0 && limit.not_checked == 0;
}

/// "Water/cement limit (w_cm.exposure)"
std::string named(const LimitRisk& limit) {
    return fmt::format("{} ({})", core::title_of(limit.id.name()), limit.id.name());
}

Flow calm_text(const Risk& risk) {
    std::string titles;
    double high = 0;
    for (const LimitRisk& limit : risk.limits) {
        if (is_calm(limit)) {
            titles += (titles.empty() ? "" : "; ") + named(limit);
            high = limit.high;
        }
    }
    return titles.empty()
               ? Flow{}
               : paragraph(
                     fmt::format("Held in every one of these batches, so broken in at most {} "
                                 "of such batches: {}.",
                                 percent_text(high), titles),
                     {});
}

Flow limits_text(const Risk& risk) {
    Grid grid{{Align::left, Align::right, Align::right, Align::right, Align::right}};
    grid.head({"", "broken", "95 % between", "to watch", "open"});
    for (const LimitRisk& limit : risk.limits) {
        if (!is_calm(limit)) {
            grid.add({named(limit), percent_text(limit.probability),
                      percent_text(limit.low) + ", " + percent_text(limit.high),
                      percent_text(limit.watch), percent_text(limit.not_checked)});
        }
    }
    return grid.rows().size() > grid.head_rows() ? Flow{grid} + calm_text(risk) : calm_text(risk);
}

/// Less cannot be told from nothing by so many samples.
constexpr double least_share_told = 0.01;

Flow drivers_text(const Risk& risk) {
    Grid grid{{Align::left, Align::left, Align::right, Align::right}};
    grid.head({"", "scatter of", "by itself", "in all"});
    std::string before;
    for (const Driver& driver : risk.drivers) {
        if (driver.total >= least_share_told) {
            const std::string name = quantity_words(driver.quantity);
            grid.add({name == before ? "" : name, text::printable(risk.inputs[driver.input].key),
                      fmt::format("{:.0f} %", 100 * driver.first_order),
                      fmt::format("{:.0f} %", 100 * driver.total)});
            before = name;
        }
    }
    return grid;
}

Flow inputs_text(const Risk& risk, UnitSystem system) {
    Grid grid{{Align::left, Align::right, Align::left}};
    grid.head({"", "std. dev.", ""});
    for (const core::ScatteredInput& input : risk.inputs) {
        grid.add({text::printable(input.key),
                  scattered_text(input.deviation, input.measure, system), origin_text(input)});
    }
    return grid;
}

Flow flow_of(const RiskResult& result, const TextStyle& style) {
    const Risk& risk = result.risk;
    Flow page = paragraph(text::printable(result.title), {}) + file_line(result.inputs);
    page += paragraph(fmt::format("{} batches of this mix, of the batching scatter stated here "
                                  "(seed {})",
                                  risk.samples, risk.seed),
                      {});
    page += Flow{"\n"} + paragraph("The mix as written:", {}) +
            verdict_line(result.checks, style.system);
    page += section("WHERE THE BATCHES END") + distributions_text(risk, style.system) +
            slump_water_text();
    page += section("LIMITS, how often a batch breaks them") + limits_text(risk);
    if (risk.driver_samples > 0) {
        page += section("WHAT DRIVES IT, share of the variance") + drivers_text(risk) +
                paragraph(fmt::format("From {} pairs of batches; below 1 % is left out. 'In all' "
                                      "counts what an input does together with others too.",
                                      risk.driver_samples),
                          {});
    }
    page += histogram_figures(risk, style.system); // where sheets are full of tables before it
    page += section("SCATTER, one standard deviation") + inputs_text(risk, style.system);
    page += section("CHECKS of the mix as written") + text_of_checks(result.checks, style.system);
    if (style.explain) {
        page += folded_section("LIMITS, where they come from") + text_of_limits(result.checks);
    }
    std::vector<core::Phrase> cautions = risk.cautions;
    cautions.insert(cautions.end(), result.cautions.begin(), result.cautions.end());
    return page + section("CAUTIONS") + text_of_cautions(cautions, style);
}

} // namespace

std::string text(const RiskResult& result, const TextStyle& style) {
    return written(flow_of(result, style), style);
}

std::string html(const RiskResult& result, const TextStyle& style) {
    return html_of(flow_of(result, style),
                   {.title = result.title, .command = "risk", .inputs = result.inputs});
}

} // namespace boardmark::report
