#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace boardmark::report {

/// A place on paper: to the right and down from the upper left corner, mm.
struct PaperPoint {
    double x_mm;
    double y_mm;
};

/// What a mark stands for: it gives a line its weight and dash, and a layer its name.
enum class Ink {
    frame,
    concrete,
    footing,
    board,
    piece_number,
    sliver,
    chamfer,
    mitre,
    opening,
    contraction_joint,
    lift,
    tie,
    hardest_tie,
    bar,
    standing_bar,
    pressure,
    form_rating,
    match_line,
    dimension,
    lettering,
    warning,
};

enum class Anchor { start, middle, end };

/// A line, an area, a circle or words.
struct Mark {
    enum class Shape { line, area, circle, words };
    Shape shape;
    Ink ink;
    std::vector<PaperPoint> points;
    double size_mm = 0; ///< radius, or height of the letters
    std::string words = {};
    Anchor anchor = Anchor::start;
    bool upright = false;          ///< words that are read from the right
    std::string_view counted = {}; ///< "board": stands for one entry of the geometry
};

/// A drawing at one scale, with what is written round it.
struct View {
    std::string part;
    std::string face = {}; ///< empty: a section
    double scale;          ///< 20: 1:20
    double width_mm;
    double height_mm;
    PaperPoint origin = {0, 0}; ///< where the geometry's x and z are 0
    std::vector<Mark> marks = {};

    void line(Ink ink, std::vector<PaperPoint> points, std::string_view counted = {});
    void area(Ink ink, std::vector<PaperPoint> points, std::string_view counted = {});
    void circle(Ink ink, PaperPoint centre, double radius_mm, std::string_view counted = {});
    void words(Ink ink, PaperPoint place, std::string text, Anchor anchor = Anchor::start,
               double letters_mm = 2.5);
};

constexpr double letter_mm = 2.5;
constexpr double title_mm = 3.2;

/// What words take on paper, in a wide face.
double width_of_words_mm(std::string_view text, double letters_mm);

/// The beginning of a text that fits a width, with an ellipsis where it is cut.
std::string fitted(const std::string& text, double width_mm, double letters_mm);

/// Rows below each other into which words are put so that none meets another.
class WordRows {
public:
    /// The first row whose last word ends before a place, from 0; the words reach to the other.
    int row_for(double from_mm, double to_mm);
    int rows() const { return static_cast<int>(ends_mm_.size()); }

private:
    std::vector<double> ends_mm_;
};

} // namespace boardmark::report
