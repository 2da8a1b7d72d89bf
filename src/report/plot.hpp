#pragma once

#include "figure.hpp"

#include <string>
#include <vector>

namespace boardmark::report {

/// A point in the values that a figure shows.
struct PlotPoint {
    double x;
    double y;
};

/// An axis: from zero to a round value, in steps that a reader counts in.
struct Axis {
    std::string name; ///< with its unit
    double end;       ///< > 0
    double step;      ///< > 0
};

/// An axis that holds values up to `most` in about five round steps.
Axis round_axis(std::string name, double most);

/// Draws values into a figure: x to the right from zero, y downwards from zero.
class DownwardPlot {
public:
    DownwardPlot(std::string caption, Axis across, Axis down);

    /// A line through points, told with a piece of it in the corner that such lines leave free.
    void add_line(const std::vector<PlotPoint>& points, const std::string& role,
                  const std::string& name);

    const Figure& figure() const { return figure_; }

private:
    std::string x_of(double value) const;
    std::string y_of(double value) const;

    Axis across_;
    Axis down_;
    Figure figure_;
    int lines_ = 0;
};

} // namespace boardmark::report
