#include <boardmark/core/strength/strength_line.hpp>

#include "../basis/student.hpp"
#include "../basis/tolerance.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace boardmark::core {
namespace {

/// Sums of squares about the means.
struct Moments {
    double mean_w_cm = 0;
    double mean_logarithm = 0;
    double ratios = 0;     ///< of w/cm
    double logarithms = 0; ///< of ln(strength)
    double products = 0;
};

Moments moments_of(const std::vector<LinePoint>& points) {
    Moments moments;
    for (const LinePoint& point : points) {
        moments.mean_w_cm += point.w_cm / double(points.size());
        moments.mean_logarithm += std::log(point.strength_mpa) / double(points.size());
    }
    for (const LinePoint& point : points) {
        const double ratio = point.w_cm - moments.mean_w_cm;
        const double logarithm = std::log(point.strength_mpa) - moments.mean_logarithm;
        moments.ratios += ratio * ratio;
        moments.logarithms += logarithm * logarithm;
        moments.products += ratio * logarithm;
    }
    return moments;
}

double logarithm_at(const StrengthLine& line, double w_cm) {
    return line.intercept + line.slope * w_cm;
}

/// The variance of the line at a ratio over that of a test: 1/n at the mean, more away from it.
double leverage(const StrengthLine& line, double w_cm) {
    const double distance = w_cm - line.mean_w_cm;
    return 1 / double(line.points.size()) + distance * distance / line.spread;
}

/// A residual over its standard deviation as the other points show it. With that point left out
/// there must be a line and a scatter: four points at least, and not the only one at its ratio
/// that fixes the slope.
std::optional<double> studentized(const StrengthLine& line, double residual, double leverage) {
    const double free = double(line.points.size()) - 3;
    const double own = 1 - leverage;
    if (free < 1 || own < relative_rounding) {
        return std::nullopt;
    }
    const double all = line.deviation * line.deviation * (free + 1);
    const double others = (all - residual * residual / own) / free;
    const bool no_scatter = others <= relative_rounding * relative_rounding;
    return no_scatter ? std::nullopt : std::optional{residual / std::sqrt(others * own)};
}

void add_residuals(StrengthLine& line) {
    double squares = 0;
    for (const LinePoint& point : line.points) {
        const double residual = std::log(point.strength_mpa) - logarithm_at(line, point.w_cm);
        line.residuals.push_back({.logarithm = residual});
        squares += residual * residual;
    }
    line.deviation = std::sqrt(squares / (double(line.points.size()) - 2));
    for (std::size_t i = 0; i < line.points.size(); ++i) {
        Residual& residual = line.residuals[i];
        residual.studentized =
            studentized(line, residual.logarithm, leverage(line, line.points[i].w_cm));
    }
}

void add_quantiles(StrengthLine& line) {
    const double count = double(line.points.size());
    const double beyond = 1 - line.confidence;
    line.one_sided_t = student_quantile(line.confidence, count - 2);
    line.two_sided_t = student_quantile(1 - beyond / 2, count - 2);
    // Among many points the largest lies far out by chance alone: Bonferroni's bound on all of
    // them.
    line.outlier_t = count > 3 ? student_quantile(1 - beyond / (2 * count), count - 3) : 0;
}

} // namespace

std::size_t count_ratios(const std::vector<LinePoint>& points) {
    std::vector<double> ratios;
    for (const LinePoint& point : points) {
        if (std::ranges::none_of(ratios, [&](double ratio) { return same(ratio, point.w_cm); })) {
            ratios.push_back(point.w_cm);
        }
    }
    return ratios.size();
}

std::optional<StrengthLine> fit_line(std::vector<LinePoint> points, double confidence) {
    const std::size_t ratios = count_ratios(points);
    if (ratios < least_ratios || !(confidence > 0 && confidence < 1)) {
        return std::nullopt;
    }
    const Moments moments = moments_of(points);
    const auto [lowest, highest] = std::ranges::minmax(points, {}, &LinePoint::w_cm);
    StrengthLine line{.intercept = 0,
                      .slope = moments.products / moments.ratios,
                      .points = std::move(points),
                      .residuals = {},
                      .mean_w_cm = moments.mean_w_cm,
                      .spread = moments.ratios,
                      .deviation = 0,
                      .r_squared = 0,
                      .lowest_w_cm = lowest.w_cm,
                      .highest_w_cm = highest.w_cm,
                      .confidence = confidence,
                      .one_sided_t = 0,
                      .two_sided_t = 0,
                      .outlier_t = 0,
                      .ratio_count = ratios};
    line.intercept = moments.mean_logarithm - line.slope * moments.mean_w_cm;
    line.r_squared = moments.logarithms > 0 ? moments.products * moments.products /
                                                  (moments.ratios * moments.logarithms)
                                            : 0;
    add_residuals(line);
    add_quantiles(line);
    return line;
}

double strength_at(const StrengthLine& line, double w_cm) {
    return std::exp(logarithm_at(line, w_cm));
}

double lower_mean_at(const StrengthLine& line, double w_cm) {
    return std::exp(logarithm_at(line, w_cm) -
                    line.one_sided_t * line.deviation * std::sqrt(leverage(line, w_cm)));
}

Band mean_band_at(const StrengthLine& line, double w_cm) {
    const double half = line.two_sided_t * line.deviation * std::sqrt(leverage(line, w_cm));
    return {std::exp(logarithm_at(line, w_cm) - half), std::exp(logarithm_at(line, w_cm) + half)};
}

Band prediction_at(const StrengthLine& line, double w_cm) {
    const double half = line.two_sided_t * line.deviation * std::sqrt(1 + leverage(line, w_cm));
    return {std::exp(logarithm_at(line, w_cm) - half), std::exp(logarithm_at(line, w_cm) + half)};
}

double strength_at(const StrengthLine& line, double w_cm, LineSide side) {
    return side == LineSide::lower ? lower_mean_at(line, w_cm) : strength_at(line, w_cm);
}

SlopeBand slope_band(const StrengthLine& line) {
    const double half = line.two_sided_t * line.deviation / std::sqrt(line.spread);
    return {line.slope - half, line.slope + half};
}

bool surely_falls(const StrengthLine& line) {
    return slope_band(line).high < 0;
}

LineUse use_of(const StrengthLine& line) {
    const bool sure = surely_falls(line);
    if (line.slope >= 0 || (!sure && line.points.size() >= results_of_a_sure_fall)) {
        return LineUse::none;
    }
    return sure && line.r_squared >= least_r_squared ? LineUse::read : LineUse::doubtful;
}

/// The slope of the lower side at a distance d from the mean ratio is b - c d/S / sqrt(1/n + d²/S),
/// with c = t s. It is zero somewhere only where c²/S is greater than b².
double strongest_w_cm(const StrengthLine& line, LineSide side) {
    const double band = line.one_sided_t * line.deviation;
    const double square = band * band / line.spread - line.slope * line.slope;
    if (side == LineSide::line || square <= 0) {
        return line.lowest_w_cm;
    }
    const double back =
        std::abs(line.slope) * std::sqrt(line.spread / (double(line.points.size()) * square));
    return std::clamp(line.mean_w_cm - back, line.lowest_w_cm, line.highest_w_cm);
}

/// The lower side reaches a strength y where, at a distance d from the mean ratio,
///   A + b d = c sqrt(1/n + d²/S), with A = line at the mean - ln y and c = t s.
/// Squared, a quadratic in d; the root taken is the highest where the left side is not negative.
/// It is written so that it stays finite where the quadratic term vanishes.
double ratio_for(const StrengthLine& line, double strength_mpa, LineSide side) {
    assert(line.slope < 0);
    const double above_mean = logarithm_at(line, line.mean_w_cm) - std::log(strength_mpa);
    if (side == LineSide::line) {
        return line.mean_w_cm - above_mean / line.slope;
    }
    const double band = line.one_sided_t * line.deviation;
    const double square = line.slope * line.slope - band * band / line.spread;
    const double constant = above_mean * above_mean - band * band / double(line.points.size());
    const double half_linear = above_mean * line.slope;
    const double root = std::sqrt(std::max(half_linear * half_linear - square * constant, 0.0));
    const double below = root - half_linear;
    return line.mean_w_cm + (below > 0 ? constant / below : (-half_linear - root) / square);
}

} // namespace boardmark::core
