#include "water_reduction.hpp"

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/basis/unresolved.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../mix/material_figures.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

struct Reduction {
    double percent;
    Phrase reason;
    Source source;
    Marks marks;
};

/// The name under which the table of least reductions has a reducer: its standard and type where
/// they are stated, else its kind.
std::string standard_row(const Material& reducer) {
    const std::string kind{name_of(reducer.kind)};
    if (reducer.standard.find("934") != std::string::npos) {
        return "EN 934-2 " + kind;
    }
    const std::size_t number = reducer.standard.find("C494");
    if (number == std::string::npos) {
        return kind;
    }
    const std::size_t type = reducer.standard.find_last_of("ABCDEFGS");
    const bool states_type = type != std::string::npos && type > number;
    return states_type ? std::string{"ASTM C494 "} + reducer.standard[type] : kind;
}

Reduction by_standard(const Material& reducer, const Tables& tables) {
    const auto& table = tables.practice.standard_water_reduction_percent;
    const auto least = table.find(standard_row(reducer));
    if (least == table.end()) {
        throw Unresolved{{"{name}: no least water reduction is known for {standard}",
                          {word("name", reducer.name), word("standard", reducer.standard)}},
                         {{"give the supplier's water reduction by dose", {}},
                          {"correct the type in 'standard'", {}}}};
    }
    return {.percent = least->second.value,
            .reason = {"{name}: the least that {standard} demands",
                       {word("name", reducer.name), word("standard", least->first)}},
            .source = least->second.source,
            .marks = with_confidence({Mark::typical}, least->second.source)};
}

[[noreturn]] void dose_above_curve(const Material& reducer) {
    throw Unresolved{
        {"the dose of {name} lies above the last point of its 'water_reduction'",
         {word("name", reducer.name)}},
        {{"lower the dose", {}},
         {"add the supplier's water reduction at this dose, within the product's recommended "
          "range",
          {}}}};
}

/// Linear between the points, and from nothing at no dose to the first point.
Reduction by_curve(const Dosage& dosage, const Tables& tables) {
    const Material& reducer = dosage.material;
    const auto& curve = reducer.admixture.water_reduction;
    const double density_kg_m3 = product_density(reducer, tables).value;
    const double dose = dose_percent(*dosage.dose, density_kg_m3);

    double lower_dose = 0;
    double lower_percent = 0;
    for (const WaterReductionPoint& point : curve) {
        const double upper_dose = dose_percent(point.dose, density_kg_m3);
        if (!above(dose, upper_dose)) {
            const double fraction = (dose - lower_dose) / (upper_dose - lower_dose);
            const bool on_point = same(fraction, 1);
            const bool before_first = &point == &curve.front() && !on_point;
            const bool assumed = reducer.admixture.reduction_dose_assumed;
            Reduction reduction{
                .percent = lower_percent + fraction * (point.percent - lower_percent),
                .reason = {assumed
                               ? "{name}: stated without its dose, taken at the dose of this mix"
                           : before_first
                               ? "{name}: between no dose and the first point of its curve"
                               : "{name}: product curve at this dose",
                           {word("name", reducer.name)}},
                .source = {"product data of the mix file", Confidence::read},
                .marks = {}};
            if (!on_point) {
                reduction.marks.push_back(Mark::interpolated);
            }
            if (before_first || assumed) {
                reduction.marks.push_back(Mark::estimate);
            }
            return reduction;
        }
        lower_dose = upper_dose;
        lower_percent = point.percent;
    }
    dose_above_curve(reducer);
}

Reduction reduction_of(const Dosage& dosage, const Tables& tables) {
    return dosage.material.admixture.standard_minimum_reduction
               ? by_standard(dosage.material, tables)
               : by_curve(dosage, tables);
}

} // namespace

double reduction_percent(const Dosage& dosage, const Tables& tables) {
    const Argument name = word("name", dosage.material.name);
    if (!dosage.dose) {
        throw Unresolved{{"{name} is dosed as needed: what it saves depends on the dose", {name}},
                         {{"state the dose under 'mixture.admixtures'", {}}}};
    }
    const AdmixtureFigures& figures = dosage.material.admixture;
    if (figures.water_reduction.empty() && !figures.standard_minimum_reduction) {
        throw Unresolved{{"{name} states no 'water_reduction'", {name}},
                         {{"add the supplier's water reduction by dose, or 'water_reduction: "
                           "standard minimum'",
                           {}}}};
    }
    return reduction_of(dosage, tables).percent;
}

double water_reduction_percent(const Mix& mix, const Tables& tables, Worksheet& worksheet) {
    double remaining = 1;
    for (const Dosage& dosage : mix.admixtures) {
        const Material& reducer = dosage.material;
        const bool works_for_flow = reducer.kind == Kind::high_range_water_reducer &&
                                    mix.requirements.slump_before_reducer_mm;
        if (!reduces_water(reducer.kind) || !dosage.dose || works_for_flow) {
            continue;
        }
        Reduction reduction = reduction_of(dosage, tables);
        remaining *= 1 - reduction.percent / 100;
        worksheet.steps.push_back({.quantity = "water_reduction",
                                   .value = reduction.percent,
                                   .measure = Measure::percent,
                                   .provenance = Provenance::table,
                                   .reason = std::move(reduction.reason),
                                   .source = std::move(reduction.source),
                                   .marks = std::move(reduction.marks)});
    }
    return 100 * (1 - remaining);
}

} // namespace boardmark::core
