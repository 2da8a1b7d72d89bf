#include <boardmark/report/batch_report.hpp>
#include <boardmark/text/utf8.hpp>
#include <boardmark/units/unit.hpp>

#include "grid.hpp"
#include "names.hpp"
#include "quantity_format.hpp"
#include "text_parts.hpp"
#include "wrap.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace boardmark::report {
namespace {

using core::Measure;
using core::UnitSystem;

std::string heading(const BatchResult& result, const TextStyle& style) {
    const auto volume = [&](double m3) { return shown({m3, Measure::volume}, style.system); };
    std::string text = wrapped(text::printable(result.title), {});
    text += "Batch ticket for " + volume(result.batch.volume_m3);
    if (result.allowance_percent > 0) {
        text += " (" + volume(result.net_volume_m3) + " and " + fixed(result.allowance_percent, 1) +
                " % more)";
    }
    return text + ", at today's moistures\n\n" + verdict_line(result.checks, style);
}

std::string moisture_text(const core::BatchItem& item, UnitSystem system) {
    const double free_kg = *item.free_water_kg;
    return (free_kg >= 0 ? "wet, at " : "drier than SSD, at ") +
           shown({*item.moisture_percent, Measure::percent}, system) +
           (free_kg >= 0 ? ": carries " : ": absorbs ") +
           shown({std::abs(free_kg), Measure::mass}, system) + " of water";
}

std::string note(const core::BatchItem& item, UnitSystem system) {
    switch (item.role) {
    case core::Role::water:
        return "added at the mixer";
    case core::Role::coarse:
    case core::Role::fine:
        return moisture_text(item, system);
    case core::Role::admixture:
        return item.by_trial ? "by trial" : "";
    default:
        return "";
    }
}

std::string measured(const core::BatchItem& item, UnitSystem system) {
    if (!item.litres || item.by_trial) {
        return "";
    }
    const double m3 = *item.litres / 1000;
    const auto in_unit = [&](std::string_view unit, int decimals) {
        return fixed(units::unit(unit).from_inside(m3), decimals) + " " + std::string{unit};
    };
    if (system == UnitSystem::us) {
        return item.role == core::Role::water ? in_unit("gal", 2) : in_unit("fl oz", 2);
    }
    return item.role == core::Role::water ? in_unit("L", 2) : in_unit("mL", 0);
}

} // namespace

std::string text(const BatchResult& result, const TextStyle& style) {
    const core::Batch& batch = result.batch;
    Grid items{{Align::left, Align::right, Align::right, Align::left}};
    items.add({"", "weigh", "or measure", ""});
    for (const core::BatchItem& item : batch.items) {
        items.add({column_name(item.name),
                   item.by_trial ? "" : shown({item.kg, Measure::mass}, style.system),
                   measured(item, style.system), note(item, style.system)});
    }
    items.add({"total", shown({batch.mass_kg, Measure::mass}, style.system), "", ""});

    Grid facts{{Align::left, Align::left}};
    const bool any_by_trial = std::ranges::any_of(batch.items, &core::BatchItem::by_trial);
    facts.add({"w/cm", shown({batch.w_cm, Measure::w_cm}, style.system) +
                           ", of these weights, all free water and the admixtures' liquid counted" +
                           (any_by_trial ? " but for what is dosed by trial" : "")});
    const std::string free_water =
        shown({std::abs(batch.free_water_kg), Measure::mass}, style.system);
    facts.add({"aggregates",
               batch.free_water_kg >= 0
                   ? "carry " + free_water + " of free water, already taken out of the water above"
                   : "take up " + free_water + " of water, already added above"});
    facts.add({"slump", slump_text(result.requirements, style.system)});
    facts.add(
        {"air", shown({result.proportions.selection.air_percent, Measure::percent}, style.system) +
                    " in this batch; asked " + air_text(result.requirements, style.system)});

    std::string page = heading(result, style);
    page += section("WEIGH") + items.text();
    page += section("THIS BATCH") + facts.text();
    if (!batch.cautions.empty()) {
        page += section("AT THE MIXER") + text_of_cautions(batch.cautions, style);
    }
    page += section("CHECKS") + text_of_checks(result.checks, style);
    page += section("CAUTIONS") + text_of_cautions(result.proportions.worksheet.cautions, style);
    if (style.explain) {
        page += section("REASONS") + text_of_reasons(result.proportions.worksheet.steps, style);
        page += section("LIMITS, where they come from") + text_of_limits(result.checks);
    }
    return page;
}

} // namespace boardmark::report
