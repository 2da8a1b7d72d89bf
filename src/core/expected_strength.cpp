#include <boardmark/core/expected_strength.hpp>

#include "interpolation.hpp"
#include "strength_column.hpp"
#include "tolerance.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

/// Between two own trials the logarithm of strength is linear in w/cm.
std::optional<ExpectedStrength> by_curve(const std::vector<CurvePoint>& curve, double w_cm) {
    std::vector<double> ratios;
    std::vector<double> logarithms;
    for (const CurvePoint& point : curve) {
        ratios.push_back(point.w_cm);
        logarithms.push_back(std::log(point.strength_mpa));
    }
    const auto position = locate(ratios, w_cm);
    if (!position) {
        return std::nullopt;
    }
    ExpectedStrength expected{std::exp(interpolate(logarithms, *position)),
                              {"strength curve of the mix file", Confidence::read},
                              {Mark::estimate}};
    if (position->between()) {
        expected.marks.push_back(Mark::interpolated);
    }
    return expected;
}

std::optional<ExpectedStrength> by_table(double w_cm, bool air_entrained, const Tables& tables) {
    auto points = strength_column(tables.method.strength, air_entrained);
    std::ranges::reverse(points); // ratios increase as strengths fall
    std::vector<double> ratios;
    std::vector<double> strengths_mpa;
    for (const StrengthPoint& point : points) {
        ratios.push_back(point.w_cm);
        strengths_mpa.push_back(point.strength_mpa);
    }
    const auto position = locate(ratios, w_cm);
    if (!position) {
        return std::nullopt;
    }
    const StrengthPoint& stronger = points[position->lower];
    ExpectedStrength expected{
        interpolate(strengths_mpa, *position), *stronger.source, {Mark::estimate}};
    if (position->between()) {
        expected.marks.push_back(Mark::interpolated);
    }
    if (stronger.continues) {
        expected.marks.push_back(Mark::continued);
    }
    return expected;
}

/// Inside the range of the own results, from the side that the mix file reads them.
std::optional<ExpectedStrength> by_line(const OwnLine& own, double w_cm) {
    if (below(w_cm, own.line.lowest_w_cm) || above(w_cm, own.line.highest_w_cm)) {
        return std::nullopt;
    }
    return ExpectedStrength{strength_at(own.line, w_cm, own.side),
                            {"strength results of the mix file", Confidence::read},
                            {Mark::estimate}};
}

} // namespace

std::optional<ExpectedStrength> expected_strength(const Requirements& requirements, double w_cm,
                                                  bool air_entrained, const Tables& tables) {
    if (requirements.strength_line) {
        return by_line(*requirements.strength_line, w_cm);
    }
    if (!requirements.strength_curve.empty()) {
        return by_curve(requirements.strength_curve, w_cm);
    }
    if (below(requirements.strength_age_d, strength_table_age_d)) {
        return std::nullopt;
    }
    return by_table(w_cm, air_entrained, tables);
}

StrengthOverRatio strength_over_ratio(const Requirements& requirements, double w_cm,
                                      bool air_entrained, const Tables& tables) {
    constexpr int lowest_percent = 20;
    constexpr int highest_percent = 100;
    StrengthOverRatio found;
    for (int percent = lowest_percent; percent <= highest_percent; ++percent) {
        const double ratio = percent / 100.0;
        const auto expected = expected_strength(requirements, ratio, air_entrained, tables);
        if (expected) {
            found.points.push_back({ratio, expected->mpa});
            found.source = expected->source;
        }
    }
    if (const auto chosen = expected_strength(requirements, w_cm, air_entrained, tables)) {
        found.chosen_mpa = chosen->mpa;
    }
    return found;
}

} // namespace boardmark::core
