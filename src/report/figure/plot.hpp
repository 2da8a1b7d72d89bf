#pragma once

#include "figure.hpp"

#include <string>
#include <vector>

namespace boardmark::report {

/// A point in the values that a figure shows.
struct PlotPoint {
    double x;
    double y;

    bool operator==(const PlotPoint&) const = default;
};

/// A place of an axis that a reader counts by.
struct Tick {
    double at;
    std::string label;
};

/// An axis between two values.
struct Axis {
    std::string name; ///< with its unit
    double from;
    double to; ///< > from
    std::vector<Tick> ticks;
};

/// The axis that holds both values between round ones, in about five round steps.
Axis round_axis(std::string name, double least, double most);

/// To which side y grows. Depths and pressures are read downwards, from an axis on top.
enum class Upright { up, down };

/// Draws values into a figure; what its lines and spots mean stands in words below them.
class Plot {
public:
    Plot(std::string caption, Axis across, Axis upright, Upright growth = Upright::up);

    void add_line(const std::vector<PlotPoint>& points, const std::string& role,
                  const std::string& name);
    void add_spots(const std::vector<PlotPoint>& points, const std::string& role,
                   const std::string& name);

    /// A line without words of its own.
    void add_stroke(const std::vector<PlotPoint>& points, const std::string& role);
    /// Words to the right of a place.
    void add_label(PlotPoint at, const std::string& words);

    const Figure& figure() const { return figure_; }

private:
    void draw_across();
    void draw_upright();
    std::string x_of(double value, double aside = 0) const;
    std::string y_of(double value, double lower = 0) const;

    Axis across_;
    Axis upright_;
    Upright growth_;
    Figure figure_;
};

} // namespace boardmark::report
