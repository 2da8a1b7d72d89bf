#pragma once

#include <boardmark/core/basis/step.hpp>
#include <boardmark/core/cutting/cutting_plan.hpp>
#include <boardmark/core/wall/lined_face.hpp>
#include <boardmark/core/wall/wall.hpp>

#include <map>
#include <string>
#include <vector>

namespace boardmark::core {

/// Stations of the contraction joints of each run, by its name, increasing.
using JointStations = std::map<std::string, std::vector<double>>;

/// Boards of one length that are bought.
struct BoughtBoards {
    double stock_m;
    int cut;    ///< by the cutting plan
    int bought; ///< with those that are spoiled
};

/// The boards of a wall file.
struct BoardOrder {
    std::vector<LinedFace> faces; ///< that show; their boards are numbered by the cutting list
    std::vector<Pieces> pieces;   ///< that line every form once, longest first
    double lined_m = 0;           ///< their length; of the joints between them too, one each course
    CuttingPlan plan;             ///< of the pieces that are cut: each serves `uses` forms
    std::vector<BoughtBoards> boards;
    double length_m = 0;          ///< bought
    int count = 0;                ///< boards bought
    double cut_waste_percent = 0; ///< of the boards cut: what is left over, saw cuts with it
    double waste_percent = 0;     ///< of the boards bought: left over or spoiled
    Worksheet worksheet;
};

/// Lines every face that shows with boards, cuts them out of stock and adds the spoiled ones. Empty
/// where the wall file has no boards.
BoardOrder board_order(const Wall& wall, const JointStations& joints);

/// A course of a length in boards: one where a stock length reaches, else the fewest equal ones
/// that can be shifted by a quarter: one way, the other way and not at all in turn, so that no end
/// stands within a quarter of one in the two courses below.
std::vector<double> course_pieces_m(double length_m, double longest_m, int course);

} // namespace boardmark::core
