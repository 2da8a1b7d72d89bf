#include "water_reduction.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../mix/material_figures.hpp"

#include <algorithm>
#include <string_view>

namespace boardmark::core {
namespace {

/// A reduction and the row or the place of the curve that it is read from.
struct Reduction {
    double percent;
    const TypicalFigure* standard = nullptr; ///< the least that `standard_name` demands
    std::string_view standard_name = {};
    bool on_point = true;      ///< of the curve, not between two
    bool before_first = false; ///< between no dose and the first point
    bool none_goes_in = false;
    std::optional<double> dose_ml_100kg = {}; ///< by which the curve was entered
};

bool is_joined(std::string_view text, std::string_view first, std::string_view second) {
    return text.size() == first.size() + second.size() && text.starts_with(first) &&
           text.ends_with(second);
}

/// Whether a row of the table of least reductions is that of a reducer: by its standard and type
/// where they are stated, else by its kind.
bool is_row_of(std::string_view row, const Material& reducer) {
    const std::string_view kind = name_of(reducer.kind);
    if (reducer.standard.find("934") != std::string::npos) {
        return is_joined(row, "EN 934-2 ", kind);
    }
    const std::size_t number = reducer.standard.find("C494");
    const std::size_t type = reducer.standard.find_last_of("ABCDEFGS");
    if (number == std::string::npos || type == std::string::npos || type <= number) {
        return row == kind;
    }
    return is_joined(row, "ASTM C494 ", std::string_view{reducer.standard}.substr(type, 1));
}

Outcome<Reduction> by_standard(const Material& reducer, const Tables& tables) {
    const auto& table = tables.practice.standard_water_reduction_percent;
    const auto least =
        std::ranges::find_if(table, [&](const auto& row) { return is_row_of(row.first, reducer); });
    if (least == table.end()) {
        return Unresolved{{"{name}: no least water reduction is known for {standard}",
                           {word("name", reducer.name), word("standard", reducer.standard)}},
                          {{"give the supplier's water reduction by dose", {}},
                           {"correct the type in 'standard'", {}}}};
    }
    return Reduction{
        .percent = least->second.value, .standard = &least->second, .standard_name = least->first};
}

Unresolved dose_above_curve(const Material& reducer) {
    return {{"the dose of {name} lies above the last point of its 'water_reduction'",
             {word("name", reducer.name)}},
            {{"lower the dose", {}},
             {"add the supplier's water reduction at this dose, within the product's recommended "
              "range",
              {}}}};
}

/// Linear between the points, and from nothing at no dose to the first point.
Outcome<Reduction> by_curve(const Dosage& dosage, const Tables& tables) {
    const Material& reducer = *dosage.material;
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
            return Reduction{.percent = lower_percent + fraction * (point.percent - lower_percent),
                             .on_point = on_point,
                             .before_first = &point == &curve.front() && !on_point,
                             .dose_ml_100kg = ml_100kg(dose, density_kg_m3)};
        }
        lower_dose = upper_dose;
        lower_percent = point.percent;
    }
    return dose_above_curve(reducer);
}

Outcome<Reduction> reduction_of(const Dosage& dosage, const Tables& tables) {
    if (dosage.is_none()) {
        return Reduction{.percent = 0, .none_goes_in = true};
    }
    return dosage.material->admixture.standard_minimum_reduction
               ? by_standard(*dosage.material, tables)
               : by_curve(dosage, tables);
}

Step step_of(const Reduction& reduction, const Material& reducer) {
    Step step{.quantity = step_ids::water_reduction,
              .value = reduction.percent,
              .measure = Measure::percent,
              .provenance = Provenance::table,
              .reason = {}};
    if (reduction.standard) {
        step.reason = {"{name}: the least that {standard} demands",
                       {word("name", reducer.name), word("standard", reduction.standard_name)}};
        step.source = reduction.standard->source;
        step.marks = with_confidence({Mark::typical}, step.source);
        return step;
    }
    const bool assumed = reducer.admixture.reduction_dose_assumed;
    if (reduction.none_goes_in) {
        step.provenance = Provenance::computed;
        step.reason = {"{name}: none goes in", {word("name", reducer.name)}};
        return step;
    }
    step.reason = {
        assumed ? "{name}: stated without its dose, taken at the dose of this mix, {dose}"
        : reduction.before_first
            ? "{name}: between no dose and the first point of its curve, at {dose}"
            : "{name}: product curve at {dose}",
        {word("name", reducer.name), quantity("dose", {*reduction.dose_ml_100kg, Measure::dose})}};
    step.source = {"product data of the mix file", Confidence::read};
    if (!reduction.on_point) {
        step.marks.push_back(Mark::interpolated);
    }
    if (reduction.before_first || assumed) {
        step.marks.push_back(Mark::estimate);
    }
    return step;
}

} // namespace

Outcome<double> reduction_percent(const Dosage& dosage, const Tables& tables) {
    const Material& reducer = *dosage.material;
    if (!dosage.dose) {
        return Unresolved{{"{name} is dosed as needed: what it saves depends on the dose",
                           {word("name", reducer.name)}},
                          {{"state the dose under 'mixture.admixtures'", {}}}};
    }
    const AdmixtureFigures& figures = reducer.admixture;
    if (figures.water_reduction.empty() && !figures.standard_minimum_reduction) {
        return Unresolved{{"{name} states no 'water_reduction'", {word("name", reducer.name)}},
                          {{"add the supplier's water reduction by dose, or 'water_reduction: "
                            "standard minimum'",
                            {}}}};
    }
    const auto reduction = reduction_of(dosage, tables);
    if (!reduction) {
        return reduction.why();
    }
    return reduction->percent;
}

Outcome<double> water_reduction_percent(const Mix& mix, const Tables& tables,
                                        Worksheet& worksheet) {
    double remaining = 1;
    for (const Dosage& dosage : mix.admixtures) {
        const Material& reducer = *dosage.material;
        const bool works_for_flow = reducer.kind == Kind::high_range_water_reducer &&
                                    mix.requirements.slump_before_reducer_mm;
        if (!reduces_water(reducer.kind) || !dosage.dose || works_for_flow) {
            continue;
        }
        const auto reduction = reduction_of(dosage, tables);
        if (!reduction) {
            return reduction.why();
        }
        remaining *= 1 - reduction->percent / 100;
        worksheet.record([&] { return step_of(*reduction, reducer); });
    }
    return 100 * (1 - remaining);
}

} // namespace boardmark::core
