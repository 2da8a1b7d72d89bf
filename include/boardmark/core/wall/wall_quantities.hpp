#pragma once

#include <boardmark/core/basis/step.hpp>
#include <boardmark/core/mix/practice_tables.hpp>
#include <boardmark/core/wall/wall.hpp>

#include <string>
#include <vector>

namespace boardmark::core {

struct Tables;

/// What one run, all planters of a name or all benches of a name hold, or the whole wall file.
/// Every figure is ≥ 0, by the nominal faces, without allowance.
struct PartQuantities {
    std::string name;           ///< of the run, planter or bench; empty in a total
    double concrete_m3 = 0;     ///< net of box-outs and planter voids, without the footing
    double box_outs_m3 = 0;     ///< left out of it by niches and openings
    double footing_m3 = 0;      ///< beside it
    double form_face_m2 = 0;    ///< every formed face: both sides, ends, steps, sides of box-outs
    double shown_m2 = 0;        ///< of it what shows and takes the print of the boards
    double footing_form_m2 = 0; ///< sides of the footing, beside it
    double open_top_m2 = 0;     ///< not formed: tops of walls, benches and planter floors
    double release_m2 = 0;      ///< faces that release agent goes on: the formed ones
    double curing_m2 = 0;       ///< faces to cure once the forms are off: formed and open ones
    double top_edge_m = 0;      ///< edges of the top that border a face that shows
    double edges_m = 0; ///< all edges of the faces that show: top, ends, steps, corners, openings
    double chamfer_strip_m = 0; ///< the same where the wall file asks for chamfers, else 0
    int ties = 0;
    int tie_holes = 0;  ///< of them in faces that show
    double soil_m3 = 0; ///< that the planters hold, filled to the top
};

/// Ties of one run or planter wall as a grid.
struct TieCount {
    std::string name;
    int columns; ///< along the wall
    int rows;    ///< in the highest column
    int ties;
};

/// Concrete to order for the walls, planters and benches, without the footings.
struct ConcreteOrder {
    double net_m3;
    double waste_percent;
    double exact_m3; ///< with the waste
    double order_m3; ///< rounded up to the increment where there is one
};

/// What boards and chamfers take away from the nominal faces.
struct FaceDeductions {
    double chamfers_m3;
    double relief_at_most_m3; ///< were every shown face set back by the whole relief
    double chamfers_percent;  ///< of the concrete by the nominal faces
    double relief_percent;    ///< likewise
    bool chamfers_deducted;   ///< more than the trade's threshold, so they are left out of the
                              ///< concrete
    bool relief_matters;      ///< likewise; told and not deducted, because it is an upper bound
};

/// The bill of quantities of a wall file.
struct WallQuantities {
    std::vector<PartQuantities> parts; ///< runs, planters, benches in the order of the file
    PartQuantities total;
    std::vector<TieCount> tie_grids; ///< empty where the file states no ties
    ConcreteOrder order;
    ConcreteOrder footing_order;
    FaceDeductions deductions;
    Worksheet worksheet; ///< the rules that were used
};

/// Measures a wall. Geometry is exact for level, stepped, sloping and battered runs; the batter is
/// taken on one face, the one that does not show where one shows.
WallQuantities wall_quantities(const Wall& wall, const PracticeTables& practice);

/// Concrete that forms take in when they spread by so much over a face.
///
/// @param face_m2 of one side of the wall, ≥ 0
/// @param spread_mm of both sides together, ≥ 0
double form_spread_m3(double face_m2, double spread_mm);

/// Adds an allowance to a net volume and rounds it up to the supplier's increment.
///
/// @param net_m3 ≥ 0
ConcreteOrder concrete_order(double net_m3, const OrderRules& rules);

} // namespace boardmark::core
