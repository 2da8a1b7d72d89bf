#include <boardmark/core/trial/batching_tolerance.hpp>
#include <boardmark/report/batch/batch_report.hpp>
#include <boardmark/text/utf8.hpp>
#include <boardmark/units/unit.hpp>

#include "../writing/blank.hpp"
#include "../writing/flow.hpp"
#include "../writing/grid.hpp"
#include "../writing/html.hpp"
#include "../writing/names.hpp"
#include "../writing/quantity_format.hpp"
#include "../writing/text_sections.hpp"
#include "../writing/trace.hpp"
#include "../writing/wrap.hpp"
#include "reading_text.hpp"
#include "sack_text.hpp"
#include "short_load_text.hpp"
#include "site_water_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

namespace boardmark::report {
namespace {

using core::Measure;
using core::UnitSystem;

/// What one of the equal parts of an order is called.
std::string charges_name(const core::Charging& charging) {
    return charging.size && charging.size->vessel == core::Vessel::truck ? "loads" : "charges";
}

Flow heading(const BatchResult& result, const TextStyle& style) {
    const auto volume = [&](double m3) { return shown({m3, Measure::volume}, style.system); };
    const int count = result.charging.count;
    std::string ticket = "Batch ticket for " + volume(result.batch.volume_m3);
    const double more_m3 = result.batch.volume_m3 - result.ordered_m3;
    if (more_m3 > 1e-9 * result.ordered_m3) {
        ticket += ", MORE THAN THE " + volume(result.ordered_m3) + " ORDERED by " + volume(more_m3);
    }
    std::string ordered;
    if (result.sacks) {
        ordered = "whole sacks for " + volume(result.ordered_m3);
    }
    if (result.allowance_percent > 0) {
        ordered += (ordered.empty() ? "" : ": ") + volume(result.net_volume_m3) + " and " +
                   fixed(result.allowance_percent, 1) + " % more";
    }
    if (!ordered.empty()) {
        ticket += " (" + ordered + ")";
    }
    if (count > 1) {
        ticket += fmt::format(", in {} equal {} of {}", count, charges_name(result.charging),
                              volume(result.each.volume_m3));
    }
    Grid signs{{Align::left, Align::left, Align::left, Align::left, Align::left, Align::left,
                Align::left, Align::left}};
    signs.add({"order", blank, "revision", blank, "date", blank, "signed", blank});
    return paragraph(ticket + ", at today's moistures", {}) +
           paragraph(text::printable(result.title), {}) + file_line(result.inputs) + signs + "\n" +
           verdict_line(result.checks, style.system);
}

std::string moisture_text(const core::BatchItem& item, UnitSystem system) {
    const double free_kg = *item.free_water_kg;
    return column_name(item.name) + (free_kg >= 0 ? " wet, at " : " drier than SSD, at ") +
           shown({*item.moisture_percent, Measure::percent}, system) +
           (free_kg >= 0 ? ": carries " : ": absorbs ") +
           shown({std::abs(free_kg), Measure::mass}, system) + " of water";
}

std::string note(const core::BatchItem& item) {
    switch (item.role) {
    case core::Role::water:
        return "at the mixer";
    case core::Role::binder:
        return item.sacks ? sacks_text(*item.sacks) : "";
    case core::Role::admixture:
        return item.by_trial ? "by trial" : "";
    default:
        return "";
    }
}

std::string measured_amount(const core::BatchItem& item, UnitSystem system) {
    if (!item.litres || item.by_trial) {
        return "";
    }
    if (item.role == core::Role::water) {
        return water_measure(*item.litres, system);
    }
    const double m3 = *item.litres / 1000;
    const std::string_view unit = system == UnitSystem::us ? "fl oz" : "mL";
    return fixed(units::unit(unit).from_inside(m3), system == UnitSystem::us ? 2 : 0) + " " +
           std::string{unit};
}

/// How far a weight may be off, never more than it may: two digits that count, the rest cut off. A
/// star marks what is from memory.
std::string within(core::Role role, double kg, const BatchResult& result, UnitSystem system) {
    const std::string_view unit = system == UnitSystem::us ? "lb" : "kg";
    const double amount =
        units::unit(unit).from_inside(core::batching_tolerance_kg(role, kg, result.tolerances));
    const int decimals =
        amount > 0 ? std::max(0, 1 - static_cast<int>(std::floor(std::log10(amount)))) : 0;
    constexpr double of_a_conversion = 1e-9;
    const double step = std::pow(10, -decimals);
    const auto confidence = core::batching_tolerance(role, result.tolerances).source.confidence;
    return "± " + fixed(step * std::floor(amount / step + of_a_conversion), decimals) + " " +
           std::string{unit} + (confidence == core::Confidence::from_memory ? "*" : "");
}

/// A weight with so many digits that rounding takes up no more than a quarter of how far it may be
/// off.
std::string weighed_kg(core::Role role, double kg, const BatchResult& result, UnitSystem system) {
    const units::Unit& unit = units::unit(system == UnitSystem::us ? "lb" : "kg");
    const double within =
        unit.from_inside(core::batching_tolerance_kg(role, kg, result.tolerances));
    const int decimals = decimals_of_mass(unit.from_inside(kg));
    constexpr int most_finer = 4;
    int finer = 0;
    while (finer < most_finer && 0.5 * std::pow(10, -(decimals + finer)) > within / 4 && kg > 0) {
        ++finer;
    }
    return shown({kg, Measure::mass}, system, finer);
}

std::string weighed(const core::BatchItem& item, const BatchResult& result, UnitSystem system) {
    return item.by_trial ? "" : weighed_kg(item.role, item.kg, result, system);
}

/// Where the tolerances come from: each work once, by its longest citation.
std::string sources_of_tolerances(const BatchResult& result) {
    std::vector<std::string> sources;
    bool any_remembered = false;
    for (const core::BatchItem& item : result.each.items) {
        const auto& source = core::batching_tolerance(item.role, result.tolerances).source;
        any_remembered = any_remembered || source.confidence == core::Confidence::from_memory;
        const auto same_work = std::ranges::find_if(sources, [&](const std::string& told) {
            return told.starts_with(source.citation) || source.citation.starts_with(told);
        });
        if (same_work == sources.end()) {
            sources.push_back(source.citation);
        } else if (source.citation.size() > same_work->size()) {
            *same_work = source.citation;
        }
    }
    return fmt::format("within: {}{}", fmt::join(sources, "; "),
                       any_remembered ? "; * from memory" : "");
}

/// The water at the mixer and the water held back, two rows to weigh apart.
template <class Row>
void add_parted_water(const BatchResult& result, const Row& row, UnitSystem system, Grid& grid) {
    const core::SiteWater& water = *result.site_water;
    const auto add = [&](const char* name, const core::WaterAmount& amount, const char* note) {
        grid.add(row({name, weighed_kg(core::Role::water, amount.kg, result, system),
                      water_measure(amount.litres, system),
                      within(core::Role::water, amount.kg, result, system), tick_box, blank},
                     shown({result.charging.count * amount.kg, Measure::mass}, system), note));
    };
    add("water at the mixer", water.at_mixer, "");
    add("water held back", water.held_back, "weighed separately");
}

/// The items to weigh; where there are several charges, those of one charge and the whole beside.
Flow text_of_items(const BatchResult& result, UnitSystem system) {
    const bool several = result.charging.count > 1;
    std::vector<Align> columns{Align::left,  Align::right, Align::right,
                               Align::right, Align::left,  Align::left};
    if (several) {
        columns.push_back(Align::right);
    }
    columns.push_back(Align::left);
    Grid grid{columns};
    const auto row = [&](std::vector<std::string> cells, std::string in_all, std::string note) {
        if (several) {
            cells.push_back(std::move(in_all));
        }
        cells.push_back(std::move(note));
        return cells;
    };
    grid.head(row({"", "weigh", "or measure", "within", "", "weighed"},
                  fmt::format("all {}", result.charging.count), ""));
    for (std::size_t i = 0; i < result.each.items.size(); ++i) {
        const core::BatchItem& item = result.each.items[i];
        if (item.role == core::Role::water && result.each.held_back_kg > 0) {
            add_parted_water(result, row, system, grid);
            continue;
        }
        grid.add(row(
            {column_name(item.name), weighed(item, result, system), measured_amount(item, system),
             item.by_trial ? "" : within(item.role, item.kg, result, system), tick_box, blank},
            weighed(result.batch.items[i], result, system), note(item)));
    }
    grid.add(row({"total", shown({result.each.mass_kg, Measure::mass}, system), "", "", "", ""},
                 shown({result.batch.mass_kg, Measure::mass}, system), ""));
    return Flow{grid} + paragraph(sources_of_tolerances(result), {.first = "  ", .other = "  "});
}

/// What the rounded weights fill, where that is not what was asked for.
void add_yield(const core::Batch& batch, UnitSystem system, Grid& facts) {
    const auto relative = batch.relative_yield();
    constexpr double as_good_as_one = 1e-6;
    if (relative && std::abs(*relative - 1) > as_good_as_one) {
        facts.add({"yield", shown({*batch.yield_m3, Measure::volume}, system) +
                                " by these weights, " + fixed(100 * *relative, 2) +
                                " % of what the ticket is for"});
    }
}

Flow text_of_facts(const BatchResult& result, UnitSystem system) {
    const core::Batch& batch = result.each;
    Grid facts{{Align::left, Align::left}};
    const bool any_by_trial = std::ranges::any_of(batch.items, &core::BatchItem::by_trial);
    facts.add({"w/cm", shown({batch.w_cm, Measure::w_cm}, system) +
                           ", of these weights, all free water and the admixtures' liquid counted" +
                           (any_by_trial ? " but for what is dosed by trial" : "")});
    add_yield(batch, system, facts);
    std::string label = "moisture";
    for (const core::BatchItem& item : batch.items) {
        if (item.moisture_percent) {
            facts.add({std::exchange(label, ""), moisture_text(item, system)});
        }
    }
    const std::string free_water = shown({std::abs(batch.free_water_kg), Measure::mass}, system);
    facts.add({"aggregates",
               batch.free_water_kg >= 0
                   ? "carry " + free_water + " of free water, already taken out of the water above"
                   : "take up " + free_water + " of water, already added above"});
    facts.add({"slump", slump_text(result.requirements, system)});
    facts.add({"air", shown({result.proportions.selection.air_percent, Measure::percent}, system) +
                          " in this batch; asked " + air_text(result.requirements, system)});
    return facts;
}

/// The name of a section, with what it counts where there are several charges.
std::string charge_name(const std::string& name, const BatchResult& result) {
    return result.charging.count > 1 ? fmt::format("{}, each of {} {}", name, result.charging.count,
                                                   charges_name(result.charging))
                                     : name;
}

Flow charge_section(const std::string& name, const BatchResult& result) {
    return section(charge_name(name, result));
}

/// The ticket, down to its cautions.
Flow ticket(const BatchResult& result, const TextStyle& style) {
    Flow page = heading(result, style);
    page += wide_section(charge_name("WEIGH", result)) + text_of_items(result, style.system);
    page += charge_section("THIS BATCH", result) + text_of_facts(result, style.system);
    page += section("WRITE DOWN, in the order of the trial file") +
            text_of_readings(result, style.system);
    if (result.sacks) {
        page += charge_section("WHOLE SACKS", result) + text_of_sacks(result, style);
    }
    if (result.site_water) {
        page +=
            charge_section("WATER ON SITE", result) + text_of_site_water(*result.site_water, style);
    }
    if (result.short_load) {
        page += section("DELIVERY") + text_of_short_load(*result.short_load, style.system);
    }
    return page + section("AT THE MIXER, in this order") + text_of_order(result.each.order, style) +
           text_of_cautions(result.each.cautions, style);
}

Flow reasons_and_cautions(const BatchResult& result, const TextStyle& style) {
    Flow page;
    if (style.explain) {
        page +=
            folded_section("REASONS") + text_of_reasons(result.proportions.worksheet.steps, style);
        page += folded_section("LIMITS, where they come from") + text_of_limits(result.checks);
    }
    return page + section("CAUTIONS") +
           text_of_cautions(result.proportions.worksheet.cautions, style);
}

} // namespace

Flow flow_of(const BatchResult& result, const TextStyle& style) {
    return ticket(result, style) + section("CHECKS") + text_of_checks(result.checks, style.system) +
           reasons_and_cautions(result, style);
}

std::string text(const BatchResult& result, const TextStyle& style) {
    return written(flow_of(result, style) + "\n" + trace_line(result.inputs), style);
}

std::string html(const BatchResult& result, const TextStyle& style) {
    return html_of(
        flow_of(result, style),
        {.title = result.title, .command = "batch", .inputs = result.inputs, .one_sheet = true});
}

} // namespace boardmark::report
