#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// A strength test of a batch whose ratio is known.
struct LinePoint {
    std::string name; ///< of the batch
    double w_cm;
    double strength_mpa; ///< > 0
};

/// What stands behind the points of a line over w/cm.
struct LineEvidence {
    std::optional<double> mean_air_percent = {}; ///< of the tests; absent where one is silent on it
    std::vector<std::string> few = {};   ///< batches with fewer specimens than a test is made of
    std::optional<int> newest_cast = {}; ///< days since 1970-01-01; absent where none is dated
};

/// How far a point lies from the line.
struct Residual {
    double logarithm;                    ///< of the strength over the line's
    std::optional<double> studentized{}; ///< over its own scatter with the point left out; absent
                                         ///< where too few points are left
};

/// Abrams' relation: the logarithm of strength linear in w/cm, fitted by least squares.
///
/// The line is the median of strength at a ratio. What is read from it holds for the materials of
/// its points and between its lowest and highest ratio.
struct StrengthLine {
    double intercept; ///< ln(MPa) at w/cm 0
    double slope;     ///< of ln(MPa) over w/cm
    std::vector<LinePoint> points;
    std::vector<Residual> residuals; ///< one for each point
    double mean_w_cm;
    double spread;    ///< sum of the squared distances of w/cm from its mean, > 0
    double deviation; ///< residual standard deviation of ln(strength)
    double r_squared; ///< of ln(strength)
    double lowest_w_cm;
    double highest_w_cm;
    double confidence;       ///< of the bands, 0 to 1
    double one_sided_t;      ///< Student's t for one bound
    double two_sided_t;      ///< for a pair of bounds
    double outlier_t;        ///< beyond which the largest of all studentized residuals stands out
    std::size_t ratio_count; ///< different w/cm
};

/// Least number of different ratios.
constexpr std::size_t least_ratios = 3;

/// How many different ratios the points have.
std::size_t count_ratios(const std::vector<LinePoint>& points);

/// The line of at least three different ratios; nothing for fewer, or for a confidence that is not
/// above 0 and below 1.
std::optional<StrengthLine> fit_line(std::vector<LinePoint> points, double confidence);

/// A pair of bounds, MPa.
struct Band {
    double low_mpa;
    double high_mpa;
};

double strength_at(const StrengthLine& line, double w_cm);

/// What the mean of many batches lies above, by the line's one-sided confidence.
double lower_mean_at(const StrengthLine& line, double w_cm);

/// Between which bounds the mean of many batches lies.
Band mean_band_at(const StrengthLine& line, double w_cm);

/// Between which bounds one further test lies.
Band prediction_at(const StrengthLine& line, double w_cm);

/// Which side of the scatter a ratio is read from.
enum class LineSide { lower, line };

/// The strength read from a side of the line.
double strength_at(const StrengthLine& line, double w_cm, LineSide side);

/// Bounds of the slope, ln(MPa) over w/cm, by the line's confidence.
struct SlopeBand {
    double low;
    double high;
};

SlopeBand slope_band(const StrengthLine& line);

/// Whether strength falls with w/cm beyond what the scatter could feign: the band of the slope lies
/// below zero.
bool surely_falls(const StrengthLine& line);

/// From so many results on, a fall that may be chance is no fall. Common practice, no source.
constexpr std::size_t results_of_a_sure_fall = 5;

/// Below this the scatter hides most of what w/cm does. Common practice, no source.
constexpr double least_r_squared = 0.3;

/// What may be read from a line.
enum class LineUse {
    read,
    doubtful, ///< read, but to be watched: few results of which the fall may be chance, or scatter
    none,     ///< no ratio and no strength
};

LineUse use_of(const StrengthLine& line);

/// Where a side of a falling line is strongest within the range of its points. That of the lower
/// side is not at the lowest ratio where the fall may be chance.
double strongest_w_cm(const StrengthLine& line, LineSide side);

/// The highest ratio at which a side of the line reaches a strength. The line must fall, and its
/// side reach the strength somewhere. Not held to the range of the points: the caller does.
double ratio_for(const StrengthLine& line, double strength_mpa, LineSide side);

} // namespace boardmark::core
