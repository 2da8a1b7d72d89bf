#include <boardmark/core/checks/check_title.hpp>
#include <boardmark/report/many/economy_report.hpp>
#include <boardmark/text/utf8.hpp>

#include "../figure/plot.hpp"
#include "../mix/ingredients_text.hpp"
#include "../writing/flow.hpp"
#include "../writing/grid.hpp"
#include "../writing/html.hpp"
#include "../writing/quantity_format.hpp"
#include "../writing/text_sections.hpp"
#include "../writing/trace.hpp"
#include "economy_words.hpp"
#include "sweep_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace boardmark::report {
namespace {

using core::Economy;
using core::Measure;
using core::Objective;
using core::UnitSystem;

/// Why the mix as written is no answer itself; empty where it would be one.
std::string_view beside_written(const Economy& economy) {
    if (economy.file_fails) {
        return " and fails a check";
    }
    if (!economy.file_within_bounds) {
        return " and does not tell each figure that is varied";
    }
    return *economy.file_within_bounds ? "" : " and lies outside the bounds";
}

/// "Fails: ..." is no economy: what is not known stands beside the word.
Flow answer_text(const Economy& economy, UnitSystem system) {
    const auto told = [&](double per_m3) {
        return objective_text(economy.objective, per_m3, economy.currency, system);
    };
    const double best = economy.figures.of(economy.objective);
    std::string text =
        economy.is_as_written
            ? fmt::format("No mix within the bounds is more economical than the one as written: "
                          "{} ({}).",
                          told(best), objective_words(economy.objective, system))
            : fmt::format("The most economical mix that was found: {} ({})", told(best),
                          objective_words(economy.objective, system));
    if (!economy.is_as_written && economy.file) {
        const double written = economy.file->of(economy.objective);
        const double saved = written - best;
        text += fmt::format("; the mix as written: {}{}{}.", told(written),
                            saved > 0 ? fmt::format(", {} more", told(saved)) : ", less",
                            beside_written(economy));
    } else if (!economy.is_as_written) {
        text += "; from the mix as written no mix follows.";
    }
    if (economy.is_as_written && economy.unrounded &&
        told(economy.unrounded->of(economy.objective)) != told(best) &&
        economy.unrounded->of(economy.objective) < best) {
        text += fmt::format(" Figures that are not rounded reach {}: no rounding of them that was "
                            "tried keeps every check.",
                            told(economy.unrounded->of(economy.objective)));
    }
    Flow page = paragraph(std::move(text), {});
    const core::VerdictSummary verdict = core::verdicts_of(economy.checks);
    std::string unknown;
    if (!verdict.not_checked.empty()) {
        std::string names;
        for (const std::string& id : verdict.not_checked) {
            names += (names.empty() ? "" : "; ") + core::title_of(id);
        }
        unknown = fmt::format("Economical by the checks that were made; not checked: {}.", names);
    } else {
        unknown = "Every limit that applies was checked.";
    }
    page += paragraph(unknown, {});
    if (!economy.by_trial.empty()) {
        page += paragraph(
            fmt::format("Dosed by trial and in no figure: {}.",
                        text::printable(fmt::format("{}", fmt::join(economy.by_trial, ", ")))),
            {});
    }
    return page;
}

Flow values_text(const Economy& economy, UnitSystem system) {
    Grid grid{{Align::left, Align::right, Align::right, Align::right, Align::left}};
    grid.head({"", "best", "unrounded", "bounds", ""});
    for (std::size_t i = 0; i < economy.bounds.size(); ++i) {
        const core::VariableBound& bound = economy.bounds[i];
        const auto value = [&](double one) { return variable_text(bound.variable, one, system); };
        grid.add({text::printable(core::key_of(bound.variable)), value(economy.at[i]),
                  economy.unrounded ? value(economy.unrounded_at[i]) : "-",
                  value(bound.low) + " to " + value(bound.high),
                  bound.stated ? "" : "usual, not stated"});
    }
    return grid;
}

Flow amounts_text(const Economy& economy, UnitSystem system) {
    Grid grid{{Align::left, Align::right}};
    const auto add = [&](Objective objective, std::optional<double> per_m3) {
        if (per_m3) {
            grid.add({objective_words(objective, system),
                      objective_text(objective, *per_m3, economy.currency, system)});
        }
    };
    add(Objective::cost, economy.figures.cost_per_m3);
    add(Objective::carbon, economy.figures.carbon_kg_m3);
    return ingredients_text(economy.proportions, system) + grid;
}

std::string title_of_limit(const std::string& id) {
    const std::string title = core::title_of(id);
    return title == id ? id : fmt::format("{} ({})", title, id);
}

Flow prices_text(const Economy& economy, UnitSystem system) {
    if (economy.prices.empty()) {
        return paragraph(
            "No limit and no bound holds it; what is no limit, but would be a watch that "
            "the mix as written does not have, may.",
            list_item);
    }
    Grid grid{{Align::left, Align::right, Align::right}};
    grid.head({"", "relaxed by", "saves"});
    for (const core::LimitPrice& price : economy.prices) {
        grid.add({text::printable(title_of_limit(price.id)), shown(price.relaxed_by, system, 1),
                  objective_text(economy.objective, price.saves, economy.currency, system)});
    }
    return grid;
}

Flow front_text(const Economy& economy, UnitSystem system) {
    std::vector<Align> columns{Align::left, Align::right, Align::right};
    std::vector<std::string> head{"", "cost", "CO2e"};
    for (const core::VariableBound& bound : economy.bounds) {
        columns.push_back(Align::right);
        head.push_back(text::printable(core::key_of(bound.variable)));
    }
    Grid grid{columns};
    grid.head(head);
    for (const core::FrontMix& mix : economy.front) {
        std::vector<std::string> cells{
            mix.name,
            objective_text(Objective::cost, *mix.figures.cost_per_m3, economy.currency, system),
            objective_text(Objective::carbon, *mix.figures.carbon_kg_m3, "", system)};
        for (std::size_t i = 0; i < economy.bounds.size(); ++i) {
            cells.push_back(variable_text(economy.bounds[i].variable, mix.at[i], system));
        }
        grid.add(std::move(cells));
    }
    return grid;
}

Flow front_figure(const Economy& economy, UnitSystem system) {
    if (economy.front.size() < 2) {
        return {};
    }
    const auto place = [&](const core::EconomyFigures& figures) {
        return PlotPoint{objective_amount(Objective::cost, *figures.cost_per_m3, system),
                         objective_amount(Objective::carbon, *figures.carbon_kg_m3, system)};
    };
    std::vector<PlotPoint> points;
    for (const core::FrontMix& mix : economy.front) {
        points.push_back(place(mix.figures));
    }
    std::vector<PlotPoint> all = points;
    const bool has_file = economy.file && economy.file->cost_per_m3 && economy.file->carbon_kg_m3;
    if (has_file) {
        all.push_back(place(*economy.file));
    }
    const auto [first, last] = std::ranges::minmax(all, {}, &PlotPoint::x);
    const auto [low, high] = std::ranges::minmax(all, {}, &PlotPoint::y);
    Plot plot{"Cost against carbon: no mix was found within the bounds that has less of both.",
              round_axis("cost, " + objective_unit(Objective::cost, economy.currency, system),
                         first.x, last.x),
              round_axis("CO2e, " + objective_unit(Objective::carbon, "", system), low.y, high.y)};
    plot.add_line(points, "value", "from the least cost to the least carbon");
    plot.add_spots(points, "point", "mixes on it");
    for (std::size_t i = 0; i < points.size(); ++i) {
        plot.add_label(points[i], economy.front[i].name);
    }
    if (has_file) {
        plot.add_spots({place(*economy.file)}, "chosen", "mix as written");
    }
    return Block{plot.figure()};
}

Flow search_text(const Economy& economy, UnitSystem system) {
    std::string text = fmt::format("{} mixes were worked out, {} searches begun from the best of "
                                   "them",
                                   economy.mixes, economy.starts);
    if (economy.unrounded && economy.worst_start) {
        const double best = economy.unrounded->of(economy.objective);
        text += fmt::format("; they ended between {} and {}",
                            objective_text(economy.objective, best, economy.currency, system),
                            objective_text(economy.objective, std::max(best, *economy.worst_start),
                                           economy.currency, system));
    }
    Flow told = paragraph(text + ".", list_item);
    told += paragraph(economy.checked_as_weighed
                          ? "The rounded mix was checked again, and as it is weighed."
                          : "The rounded mix was checked again; not as it is weighed: a moisture "
                            "of its aggregates is not stated.",
                      list_item);
    told += paragraph("A search proves nothing: a better mix may exist. A mix that is new to the "
                      "plant is proven by trial batches first.",
                      list_item);
    return told;
}

Flow flow_of(const EconomyResult& result, const TextStyle& style) {
    const Economy& economy = result.economy;
    const UnitSystem system = style.system;
    Flow page = paragraph(text::printable(result.title), {}) + file_line(result.inputs);
    page += answer_text(economy, system);
    page += Flow{"\n"} + paragraph("This mix:", {}) + verdict_line(economy.checks, system);
    page += section("WHAT VARIES") + values_text(economy, system);
    page += section(system == UnitSystem::us ? "THE MIX, for 1 yd3" : "THE MIX, for 1 m3") +
            amounts_text(economy, system);
    page += section("WHAT HOLDS IT, and what that is worth") + prices_text(economy, system);
    if (!economy.front.empty()) {
        page += section("COST AGAINST CARBON") + front_text(economy, system) +
                front_figure(economy, system);
    }
    page += section("THE SEARCH") + search_text(economy, system);
    page += section("CHECKS of this mix") + text_of_checks(economy.checks, system);
    if (style.explain) {
        page += folded_section("LIMITS, where they come from") + text_of_limits(economy.checks);
    }
    return page + section("CAUTIONS") +
           text_of_cautions(economy.proportions.worksheet.cautions, style);
}

} // namespace

std::string text(const EconomyResult& result, const TextStyle& style) {
    return written(flow_of(result, style), style);
}

std::string html(const EconomyResult& result, const TextStyle& style) {
    return html_of(flow_of(result, style),
                   {.title = result.title, .command = "economy", .inputs = result.inputs});
}

} // namespace boardmark::report
