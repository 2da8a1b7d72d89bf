#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/study/comparison.hpp>
#include <boardmark/core/weather/heat.hpp>

#include "../basis/tolerance.hpp"
#include "../checks/trial_checks.hpp"
#include "comparison_reasons.hpp"
#include "comparison_remarks.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

bool proves_strength(const ComparedMix& column) {
    const Selection& selection = column.proportions->selection;
    // Beyond the ends of own data or table nothing is proven, and a table in their place proves
    // nothing.
    return column.strength && !column.strength->in_place_of_own &&
           !below(column.strength->mpa, selection.required_average_strength_mpa);
}

bool gives_slump(const ComparedSlump& slump, const Requirements& asked, const Tables& tables) {
    if (!slump.mm) {
        return false;
    }
    if (asked.slump_window) {
        return !below(*slump.mm, asked.slump_window->low_mm) &&
               !above(*slump.mm, asked.slump_window->high_mm);
    }
    const double within_mm = slump_tolerance(asked.slump_mm, tables).within_mm.value;
    return !above(std::abs(*slump.mm - asked.slump_mm), within_mm);
}

/// A slump as it is read, so that 100 mm and 4 in are one.
long quarter_inches(double slump_mm) {
    constexpr double quarter_inch_mm = 6.35;
    return std::lround(slump_mm / quarter_inch_mm);
}

std::optional<long> rounded(const std::optional<double>& value) {
    return value ? std::optional{std::lround(*value)} : std::nullopt;
}

std::optional<long> asked_air(const RequiredAir& air) {
    switch (air.basis) {
    case AirBasis::exposure:
        return std::nullopt;
    case AirBasis::none:
        return 0;
    case AirBasis::stated:
        break;
    }
    return std::lround(air.percent * 10);
}

ComparedDemand demand_of(const Requirements& requirements) {
    ComparedDemand demand{.code = requirements.code,
                          .strength_tenths_mpa = std::lround(requirements.strength_mpa * 10),
                          .specimen = requirements.specimen,
                          .strength_age_d = requirements.strength_age_d,
                          .exposure = requirements.exposure,
                          .reinforced = requirements.reinforced,
                          .chloride_class = requirements.chloride_class,
                          .slump = quarter_inches(requirements.slump_mm),
                          .air = asked_air(requirements.air),
                          .least_binder = rounded(requirements.minimum_binder_kg_m3),
                          .board_marked = requirements.board_marked};
    const Section& section = requirements.section;
    demand.section = {rounded(section.thickness_mm), rounded(section.clear_bar_spacing_mm),
                      rounded(section.clear_cover_mm)};
    if (const auto& window = requirements.slump_window) {
        demand.slump_window = {quarter_inches(window->low_mm), quarter_inches(window->high_mm)};
    }
    return demand;
}

bool is_in_doubt(const std::vector<Check>& checks, CheckId id) {
    return std::ranges::any_of(checks, [&](const Check& check) {
        return check.is(id) && check.verdict != Verdict::holds;
    });
}

/// Where the doses are known to bring another slump than the one asked, that is the mix's slump.
void show_dosed_slump(ComparedMix& column) {
    const auto found = std::ranges::find_if(column.checks, [](const Check& check) {
        return check.is(check_ids::water_slump) && check.measure == Measure::slump && check.value;
    });
    if (found != column.checks.end() && column.slump.mm) {
        column.slump = {.mm = *found->value,
                        .estimate = true,
                        .reason = {"what the water gives and the doses add", {}},
                        .source = found->source};
    }
}

/// Fills a column from its proportions.
void evaluate(ComparedMix& column, CompleteRequirements requirements, const Requirements& asked,
              const Tables& tables) {
    const Proportions& proportions = *column.proportions;
    column.checks = assess(requirements, proportions, tables);
    column.strength = expected_strength(requirements, proportions, tables);
    column.temperature_rise_k = temperature_rise_k(proportions, tables);
    column.cost = cost_of(proportions);
    column.no_cost = why_no_cost(proportions);
    column.reducer_cost_per_m3 = reducer_cost_per_m3(proportions);
    column.carbon = carbon_of(proportions);
    column.proves_strength = proves_strength(column);
    show_dosed_slump(column);
    column.may_miss_slump = is_in_doubt(column.checks, check_ids::water_slump);
    column.is_whole = !is_in_doubt(column.checks, check_ids::volume_closes);
    column.gives_slump = gives_slump(column.slump, asked, tables);
    column.asked = demand_of(asked);
    column.remarks = remarks_on(column, asked, tables);
    column.reasons = reasons_of(column, tables);
}

} // namespace

std::vector<std::string> differences(const ComparedDemand& one, const ComparedDemand& other) {
    std::vector<std::string> names;
    const auto add = [&](const char* name, bool are_same) {
        if (!are_same) {
            names.emplace_back(name);
        }
    };
    add("code", one.code == other.code);
    add("strength", one.strength_tenths_mpa == other.strength_tenths_mpa);
    add("its specimen", one.specimen == other.specimen);
    add("its age", one.strength_age_d == other.strength_age_d);
    add("exposure classes", one.exposure == other.exposure);
    add("reinforcement", one.reinforced == other.reinforced);
    add("chloride class", one.chloride_class == other.chloride_class);
    add("slump", one.slump == other.slump);
    add("slump window", one.slump_window == other.slump_window);
    add("air", one.air == other.air);
    add("least binder", one.least_binder == other.least_binder);
    add("finish", one.board_marked == other.board_marked);
    add("section", one.section == other.section);
    return names;
}

ComparedMix compared(std::string label, const AnyCompleteMix& mix, const ComparedSlump& slump,
                     const Requirements& asked, const Tables& tables) {
    ComparedMix column{.label = std::move(label)};
    const Requirements& requirements = requirements_of(mix);
    column.supply = std::visit([](const auto& either) { return either->supply; }, mix);
    column.slump = slump;
    if (requirements.slump_mm > tables.practice.slump_measures_to_mm.value) {
        column.slump.mm = std::nullopt;
    }
    auto proportions = proportions_of(mix, tables);
    if (!proportions) {
        column.unresolved = std::move(proportions).why();
        return column;
    }
    column.proportions = *std::move(proportions);
    evaluate(column, mix, asked, tables);
    return column;
}

ComparedMix compared(std::string label, const AnyCompleteMix& mix, const Tables& tables) {
    const Requirements& asked = requirements_of(mix);
    return compared(std::move(label), mix,
                    {.mm = asked.slump_mm, .reason = {"the target of the mix file", {}}}, asked,
                    tables);
}

} // namespace boardmark::core
