#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/study/comparison.hpp>
#include <boardmark/core/weather/heat.hpp>

#include "../basis/tolerance.hpp"
#include "../checks/trial_checks.hpp"
#include "comparison_reasons.hpp"
#include "comparison_remarks.hpp"

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

ComparedDemand demand_of(const Requirements& requirements) {
    ComparedDemand demand{.strength_tenths_mpa = std::lround(requirements.strength_mpa * 10),
                          .specimen = requirements.specimen,
                          .strength_age_d = requirements.strength_age_d,
                          .exposure = requirements.exposure,
                          .reinforced = requirements.reinforced,
                          .slump = quarter_inches(requirements.slump_mm)};
    if (const auto& window = requirements.slump_window) {
        demand.slump_window = {quarter_inches(window->low_mm), quarter_inches(window->high_mm)};
    }
    return demand;
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
    add("strength", one.strength_tenths_mpa == other.strength_tenths_mpa);
    add("its specimen", one.specimen == other.specimen);
    add("its age", one.strength_age_d == other.strength_age_d);
    add("exposure classes", one.exposure == other.exposure);
    add("reinforcement", one.reinforced == other.reinforced);
    add("slump", one.slump == other.slump);
    add("slump window", one.slump_window == other.slump_window);
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
