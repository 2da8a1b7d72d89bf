#pragma once

#include <string>
#include <vector>

namespace boardmark::report {

/// A coordinate as a figure holds it: a tenth is finer than any screen.
std::string coordinate(double value);

/// A straight or broken line, or the outline of an area, in the figure's own units.
struct Stroke {
    std::string points; ///< "x,y x,y …", as SVG takes them
    std::string role;   ///< the class that gives it a colour and a dash: "limit", "value", "axis"
    bool is_area = false;
};

/// A mark at a place, with the words that say what it is.
struct Spot {
    std::string x;
    std::string y;
    std::string role;
    std::string meaning;
};

/// Words at a place of a figure.
struct Label {
    std::string x;
    std::string y;
    std::string text;
    std::string anchor = "start"; ///< start, middle or end
};

/// What a line or the spots of a figure mean.
struct KeyEntry {
    std::string role;
    bool is_spot;
    std::string meaning;
};

/// A drawing: what it shows in words, its size, and what it is made of. All coordinates are rounded
/// and written already.
struct Figure {
    std::string caption;
    int width;
    int height;
    std::vector<Stroke> strokes = {};
    std::vector<Spot> spots = {};
    std::vector<Label> labels = {};
    std::vector<KeyEntry> key = {}; ///< written below the figure
};

} // namespace boardmark::report
