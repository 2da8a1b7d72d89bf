#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "trial_checks.hpp"

#include <algorithm>
#include <variant>

namespace boardmark::core {

/// The sizes stand from memory: a smaller measure is looked at, and the test counts.
std::vector<Check> check_measure(const Trial& trial, const Proportions& designed,
                                 const Tables& tables) {
    const auto* filled = std::get_if<FilledMeasure>(&trial.tests.density);
    const double size_mm = designed.selection.nominal_max_size_mm;
    constexpr double column_tolerance = 1.07; // as in every table entered by size
    const auto row = std::ranges::find_if(tables.trial->measures, [&](const DensityMeasure& one) {
        return size_mm <= one.size_mm * column_tolerance;
    });
    if (!filled || row == tables.trial->measures.end()) {
        return {};
    }
    const double shortfall = tables.trial->measure_shortfall_percent.value / 100;
    const double least_m3 = row->least_m3.value * (1 - shortfall);
    if (!below(filled->volume_m3.value, least_m3)) {
        return {};
    }
    return {{.id = check_ids::density_measure,
             .verdict = Verdict::watch,
             .value = filled->volume_m3.value,
             .limit = Limit{.low = least_m3, .high = std::nullopt},
             .measure = Measure::volume,
             .requirement = "measure of the density test",
             .source = row->least_m3.source,
             .message = {
                 "a measure of {value} is small for stone of {size}: {least} or more is required "
                 "(from memory); the density is less certain, test again with a larger one",
                 {quantity("value", {filled->volume_m3.value, Measure::volume}),
                  quantity("size", {size_mm, Measure::aggregate_size}),
                  quantity("least", {row->least_m3.value, Measure::volume})}}}};
}

} // namespace boardmark::core
