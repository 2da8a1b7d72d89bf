#include <boardmark/report/many/sweep_report.hpp>
#include <boardmark/text/utf8.hpp>

#include "../writing/flow.hpp"
#include "../writing/grid.hpp"
#include "../writing/html.hpp"
#include "../writing/quantity_format.hpp"
#include "../writing/text_sections.hpp"
#include "../writing/trace.hpp"
#include "sweep_figure.hpp"
#include "sweep_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>

namespace boardmark::report {
namespace {

using core::Measure;
using core::Sweep;
using core::SweepPoint;
using core::UnitSystem;

/// "w_cm 0.45, dose.reducer 8 fl oz/cwt"
std::string place_text(const Sweep& sweep, const SweepPoint& point, UnitSystem system) {
    std::string text;
    for (std::size_t i = 0; i < sweep.axes.size(); ++i) {
        const core::Variable& variable = sweep.axes[i].variable;
        text += (text.empty() ? "" : ", ") + text::printable(core::key_of(variable)) + " " +
                variable_text(variable, point.at[i], system);
    }
    return text;
}

/// A figure of a point; "91.26+" where a price or an amount is missing in it, told below.
std::string figure_text(const SweepPoint& point, const SweptFigure& figure, UnitSystem system) {
    const auto value = point.mix ? figure.of(*point.mix) : std::nullopt;
    if (!value) {
        return "-";
    }
    std::string text = figure.measure == Measure::money
                           ? fixed(swept_amount(figure, *value, system), 2)
                           : shown({*value, figure.measure}, system);
    if (figure.is_at_least(*point.mix)) {
        text.insert(std::min(text.find(' '), text.size()), "+"); // before the unit
    }
    return text;
}

Flow counts_text(const Sweep& sweep) {
    const auto without = std::ranges::count_if(
        sweep.points, [](const SweepPoint& point) { return !point.mix.has_value(); });
    const auto sound = std::ranges::count_if(sweep.points, &SweepPoint::is_sound);
    const auto all = static_cast<std::ptrdiff_t>(sweep.points.size());
    return paragraph(
        fmt::format("{} points: {} fail no check, {} fail one or more, {} have no mix.", all, sound,
                    all - sound - without, without),
        list_item);
}

/// Where a figure is least; points that show the same are told, none of them is called the least.
std::string places_text(const Sweep& sweep, const std::vector<const SweepPoint*>& places,
                        UnitSystem system) {
    constexpr std::size_t most_told = 3;
    std::string text = place_text(sweep, *places.front(), system);
    if (places.size() > most_told) {
        return fmt::format("{}, as little at {} other points", text, places.size() - 1);
    }
    for (std::size_t i = 1; i < places.size(); ++i) {
        text += "; as little at " + place_text(sweep, *places[i], system);
    }
    return text;
}

/// The least of a figure among the points that fail nothing. Which is the least is not known where
/// the figure of one of them is not whole.
std::string least_text(const Sweep& sweep, const SweptFigure& figure,
                       const std::vector<const SweepPoint*>& sound, UnitSystem system) {
    const SweepPoint* least = nullptr;
    for (const SweepPoint* point : sound) {
        const auto value = figure.of(*point->mix);
        if (!value || figure.is_at_least(*point->mix)) {
            return fmt::format("Where no check fails it is not known which point has the least {}: "
                               "{} missing.",
                               figure.name,
                               figure.measure == Measure::money ? "a price is" : "a figure is");
        }
        if (!least || *value < *figure.of(*least->mix)) {
            least = point;
        }
    }
    const std::string amount = figure_text(*least, figure, system);
    const std::string unit = figure.measure == Measure::money ? " " + figure.unit : "";
    std::vector<const SweepPoint*> places;
    std::ranges::copy_if(sound, std::back_inserter(places), [&](const SweepPoint* point) {
        return figure_text(*point, figure, system) == amount;
    });
    if (places.size() == sound.size() && places.size() > 1) {
        return fmt::format("The same {} at each point where no check fails: {}{}.", figure.name,
                           amount, unit);
    }
    return fmt::format("Least {} where no check fails: {}{} at {}.", figure.name, amount, unit,
                       places_text(sweep, places, system));
}

Flow least_texts(const Sweep& sweep, UnitSystem system) {
    std::vector<const SweepPoint*> sound;
    for (const SweepPoint& point : sweep.points) {
        if (point.is_sound()) {
            sound.push_back(&point);
        }
    }
    Flow told;
    if (!sound.empty()) {
        for (const SweptFigure& figure : swept_figures(sweep, system)) {
            told += paragraph(least_text(sweep, figure, sound, system), list_item);
        }
    }
    return told;
}

/// What a sum lacks at any point.
Flow lacking_text(const Sweep& sweep) {
    std::vector<std::string> cost;
    std::vector<std::string> carbon;
    const auto add = [](const core::PartialSum& sum, std::vector<std::string>& names) {
        for (const std::string& name : sum.missing) {
            if (std::ranges::count(names, name) == 0) {
                names.push_back(name);
            }
        }
    };
    for (const SweepPoint& point : sweep.points) {
        if (point.mix && point.mix->cost) {
            add(point.mix->cost->sum, cost);
        }
        if (point.mix && point.mix->carbon) {
            add(*point.mix->carbon, carbon);
        }
    }
    Flow told;
    const auto tell = [&](const char* what, const std::vector<std::string>& names) {
        if (!names.empty()) {
            told +=
                paragraph(fmt::format("{} with + is at least that much: it lacks {}.", what,
                                      text::printable(fmt::format("{}", fmt::join(names, ", ")))),
                          list_item);
        }
    };
    tell("Cost", cost);
    tell("CO2e", carbon);
    return told;
}

Flow own_strengths_text(const Sweep& sweep) {
    Flow told;
    if (std::ranges::any_of(sweep.points, &SweepPoint::leaves_own_shares)) {
        told += paragraph("The own strengths are of the shares as written: at others the strength "
                          "is to be proven by trials at these shares.",
                          list_item);
    }
    if (std::ranges::any_of(sweep.points, &SweepPoint::leaves_own_air)) {
        told += paragraph("The own strengths are of the air as written: more air weakens the "
                          "concrete, which is to be proven by trials at this air.",
                          list_item);
    }
    return told;
}

Flow points_text(const Sweep& sweep, UnitSystem system) {
    const auto figures = swept_figures(sweep, system);
    std::vector<Align> columns(sweep.axes.size() + 2 + figures.size(), Align::right);
    columns.push_back(Align::left);
    Grid grid{columns};
    std::vector<std::string> head;
    for (const core::SweepAxis& axis : sweep.axes) {
        head.push_back(text::printable(core::key_of(axis.variable)));
    }
    head.insert(head.end(), {"w/cm", "water"});
    for (const SweptFigure& figure : figures) {
        head.push_back(figure.measure == Measure::money ? figure.unit : figure.name);
    }
    head.push_back("");
    grid.head(head);
    for (const SweepPoint& point : sweep.points) {
        std::vector<std::string> cells;
        for (std::size_t i = 0; i < sweep.axes.size(); ++i) {
            cells.push_back(variable_text(sweep.axes[i].variable, point.at[i], system));
        }
        const auto& mix = point.mix;
        cells.push_back(mix ? shown({mix->totals.w_cm, Measure::w_cm}, system) : "-");
        cells.push_back(mix ? shown({mix->totals.water_kg_m3, Measure::concentration}, system)
                            : "-");
        for (const SweptFigure& figure : figures) {
            cells.push_back(figure_text(point, figure, system));
        }
        cells.push_back(verdict_words(point, system));
        grid.add(std::move(cells));
    }
    grid.even_out(sweep.axes.size());
    return grid;
}

Flow flow_of(const SweepResult& result, const TextStyle& style) {
    const Sweep& sweep = result.sweep;
    Flow page = paragraph(text::printable(result.title), {}) + file_line(result.inputs);
    page += Flow{"\n"} + paragraph("The mix as written:", {}) +
            verdict_line(result.checks, style.system);
    page += section("WHAT IT SHOWS") + counts_text(sweep) + least_texts(sweep, style.system) +
            lacking_text(sweep) + own_strengths_text(sweep);
    page += section(style.system == UnitSystem::us ? "POINT BY POINT, for 1 yd3"
                                                   : "POINT BY POINT, for 1 m3") +
            points_text(sweep, style.system) + sweep_figures(sweep, style.system);
    page += section("CHECKS of the mix as written") + text_of_checks(result.checks, style.system);
    if (style.explain) {
        page += folded_section("LIMITS, where they come from") + text_of_limits(result.checks);
    }
    return page + section("CAUTIONS") + text_of_cautions(result.cautions, style);
}

} // namespace

std::string text(const SweepResult& result, const TextStyle& style) {
    return written(flow_of(result, style), style);
}

std::string html(const SweepResult& result, const TextStyle& style) {
    return html_of(flow_of(result, style),
                   {.title = result.title, .command = "sweep", .inputs = result.inputs});
}

} // namespace boardmark::report
