#include "cored_tests.hpp"

#include "../basis/tolerance.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {

LengthCorrection length_correction(double ratio, const CoreRules& rules) {
    const auto& rows = rules.factors;
    if (above(ratio, rows.back().ratio)) {
        return {1, {}};
    }
    const auto upper = std::ranges::find_if(
        rows, [&](const LengthFactor& row) { return !above(ratio, row.ratio); });
    if (upper == rows.begin() || same(upper->ratio, ratio)) {
        return {upper->factor, upper->source};
    }
    const LengthFactor& lower = *(upper - 1);
    const double part = (ratio - lower.ratio) / (upper->ratio - lower.ratio);
    const bool lower_read = lower.source.confidence == Confidence::read;
    return {std::lerp(lower.factor, upper->factor, part),
            lower_read ? upper->source : lower.source};
}

std::vector<CoredTest> cored_tests(const StrengthRecord& record, const CoreRules& rules) {
    std::vector<CoredTest> tests;
    for (std::size_t batch = 0; batch < record.batches.size(); ++batch) {
        CoredTest test{
            .batch = record.batches[batch].name, .cores = {}, .average_mpa = 0, .least_mpa = 0};
        for (const DrilledCore& core : record.cores) {
            if (core.batch != batch) {
                continue;
            }
            const double ratio = core.length_mm / core.diameter_mm;
            const double factor = length_correction(ratio, rules).factor;
            test.cores.push_back({core, ratio, factor, factor * core.strength_mpa});
            test.average_mpa += test.cores.back().strength_mpa;
        }
        if (!test.cores.empty()) {
            test.average_mpa /= static_cast<double>(test.cores.size());
            test.least_mpa =
                std::ranges::min_element(test.cores, {}, &JudgedCore::strength_mpa)->strength_mpa;
            tests.push_back(std::move(test));
        }
    }
    return tests;
}

} // namespace boardmark::core
