#pragma once

#include <boardmark/core/mix/any_mix.hpp>
#include <boardmark/core/panels/panel_wishes.hpp>

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// How the top of a run goes from one stated height to the next.
enum class Top {
    level,   ///< one height
    stepped, ///< each height holds up to the next station
    sloping, ///< straight between the stations
};

/// A height of a run, from the top of its footing, and where along the run it begins.
struct HeightAt {
    double station_m; ///< ≥ 0, from the run's start
    double height_m;  ///< > 0
};

/// How many faces show and carry the print of the boards.
enum class ShownFaces { one, both };

/// A strip of concrete below a run, cast with it or before it.
struct Footing {
    double width_mm;
    double depth_mm;
    std::optional<double> cover_mm = {}; ///< of its bars, to the ground
};

/// A box-out of a run: a niche, or an opening through it.
struct Opening {
    std::string name;
    double width_mm;
    double height_mm;
    std::optional<double> depth_mm; ///< of a niche, from a shown face; absent: through the wall
    std::optional<double> sill_m;   ///< of its lower edge above the footing
    std::vector<double> at_m;       ///< stations of its left edges; may be empty
    int count;                      ///< ≥ 1; the number of stations where they are stated
};

/// A bend of a run.
struct Corner {
    double station_m; ///< 0 or the run's length where it meets another wall there
    double turn_deg;  ///< of its direction, above 0 and below 180
};

/// A straight or bent wall, measured along its length. Where it is battered, the thickness changes
/// evenly from the bottom to the greatest height.
struct WallRun {
    std::string name;
    double length_m;
    Top top = Top::level;
    std::vector<HeightAt> heights; ///< at least one, the first at station 0, increasing
    double thickness_mm;           ///< at the greatest height
    double bottom_thickness_mm;    ///< the same where it is not battered
    ShownFaces shows = ShownFaces::one;
    int corners = 0;                     ///< bends of the run
    std::vector<Corner> corners_at = {}; ///< increasing; all of them, or none where only counted
    std::optional<Footing> footing = {};
    std::vector<Opening> openings = {};
    std::optional<double> output_m3_h = {}; ///< of the crew here, in place of the placing's
};

/// The greatest height of a run, m.
double greatest_height_m(const WallRun& run);

/// A box of four walls, filled with soil. Its outer faces show.
struct Planter {
    std::string name;
    double length_m; ///< outside
    double width_m;  ///< outside; more than two thicknesses, like the length
    double height_m;
    double thickness_mm;
    double floor_mm = 0; ///< 0: open to the ground
    int count = 1;
    std::optional<double> output_m3_h = {}; ///< of the crew here, in place of the placing's
};

/// A slab to sit on. Its front, its ends and its free underside are formed and show.
struct BenchTop {
    std::string name;
    double length_m;
    double depth_mm; ///< front to back
    double thickness_mm;
    double overhang_mm = 0;                   ///< of the depth, free underside
    std::optional<double> span_m = {};        ///< clear, between supports; 0: none is free
    std::optional<double> live_load_kpa = {}; ///< that the engineer counts on
    int count = 1;
    std::optional<double> cover_mm = {}; ///< of its bars, to the nominal face
};

/// Something cast in: a lamp box, a sleeve, an anchor.
struct Embedment {
    std::string name;
    int count;
};

enum class BoardDirection { horizontal, vertical };

/// The boards that line the forms of the faces that show.
struct Boards {
    double face_width_mm; ///< of one board, as it shows
    double thickness_mm;
    double course_mm; ///< height of one course; the face width unless stated
    BoardDirection direction = BoardDirection::horizontal;
    std::vector<double> stock_m; ///< lengths that the yard sells, increasing, at least one
    double saw_cut_mm;
    double spoiled_percent = 0; ///< of the boards bought: warped, split, wrong grain
    int uses = 1;               ///< how often a board lines a form
    double relief_mm = 0;       ///< depth of the deepest board joint behind the nominal face
    std::string treatment = {}; ///< the user's words
    bool relief_stated = true;
};

enum class TieKind { mild_steel, stainless_steel, glass_fibre };

/// The ties that hold the two sides of a form together, on a grid.
struct Ties {
    TieKind kind;
    double across_mm; ///< spacing along the wall
    double up_mm;     ///< spacing of the rows
    std::optional<double> working_load_kn = {};
    std::optional<double> breaking_load_kn = {}; ///< where the paper gives no working load
    std::optional<double> first_mm = {}; ///< of the lowest row; half of `up_mm` unless stated
    std::optional<double> cone_mm = {};  ///< by which their ends stay behind the face
    std::optional<bool> plug = {};       ///< whether the holes that cones leave are closed
};

enum class EdgeKind { chamfered, tooled, sharp };

struct Edges {
    EdgeKind kind;
    double size_mm = 0; ///< of the chamfer's leg or the tool's radius
};

/// Contraction joints, where the file states them in place of the rules.
struct JointWishes {
    std::optional<double> spacing_m = {};
    std::optional<double> groove_mm = {}; ///< depth of both faces' grooves together
};

/// Bars of one direction.
struct BarGrid {
    double bar_mm;     ///< nominal diameter
    double area_mm2;   ///< of one bar
    double spacing_mm; ///< centre to centre, in each layer
};

struct Reinforcement {
    std::optional<BarGrid> vertical = {};
    std::optional<BarGrid> horizontal = {};
    int layers = 1;                      ///< 1 or 2
    std::optional<double> cover_mm = {}; ///< to the nominal face
    double yield_strength_mpa = 413.7;   ///< 60 ksi
    bool layers_stated = true;
    bool yield_stated = true;
};

/// How the wall is meant to be placed; nothing here is assumed.
struct WallPlacing {
    std::optional<double> rise_m_h = {};    ///< of the concrete in the form
    std::optional<double> output_m3_h = {}; ///< of the crew or the pump
    std::optional<double> lift_m = {};      ///< height of one lift
    std::optional<double> concrete_c = {};  ///< temperature in the form
    std::optional<double> air_c = {};
    std::optional<double> humidity_percent = {};
    std::optional<double> wind_km_h = {};
    std::optional<double> setting_h = {}; ///< until a lift no longer knits with the next
    std::optional<double> truck_m3 = {};
    std::optional<double> round_trip_min = {}; ///< of a truck
    std::optional<double> vibrator_head_mm = {};
    std::optional<double> vibrator_depth_m = {}; ///< immersion of an internal vibrator
    bool external_vibration = false;
    bool pumped_from_below = false;
    bool redosed_on_site = false;
    bool self_consolidating = false;
    bool by_formula = false;          ///< the pressure formula is asked for in spite of a reducer
    std::string pressure_method = {}; ///< asked for by name; empty: the highest of all
    std::optional<double> form_pressure_kpa = {}; ///< that the forms are designed for
    std::optional<int> flow_class = {};           ///< 1 to 6, F1 to F6 of EN 206, for DIN 18218
    std::optional<double> spread_mm = {};         ///< on the flow table, in place of the class
    std::optional<double> end_of_set_h = {};      ///< for DIN 18218
    std::optional<double> strip_after_h =
        {};                                  ///< the one age at which the forms of faces are struck
    std::optional<double> lowest_air_c = {}; ///< forecast until the protection ends
    std::optional<double> held_at_c = {};    ///< of the concrete while it is protected
    std::optional<double> protected_until_h = {};       ///< after placing
    std::optional<double> loaded_after_h = {};          ///< backfill or another load, after placing
    std::optional<double> soffit_strip_after_h = {};    ///< absent: that of the faces counts
    std::optional<double> soffit_strength_percent = {}; ///< of the specified, asked by the engineer
    std::optional<double> strip_strength_mpa = {};      ///< measured when the faces are struck
    std::string season = {};                            ///< the user's words
};

/// The panel that proves the face.
struct Mockup {
    std::optional<double> length_m = {};
    std::optional<double> height_m = {};
    std::optional<double> thickness_mm = {};
    int number = 1;
    std::string viewed_from = {};         ///< "10 ft, at 28 d, dry": the user's words
    std::string signed_by = {};           ///< a role
    std::vector<PanelFeature> shows = {}; ///< what it is meant to show; empty: what the walls have
};

/// From where courses of boards that lie are counted.
enum class CoursesFrom { bottom, top, both };

/// Where the lines between lifts go.
enum class LiftLines { as_stated, on_board_joints };

/// How the look of the faces is laid out.
struct LayoutWishes {
    CoursesFrom courses_from = CoursesFrom::bottom;
    LiftLines lifts = LiftLines::as_stated;
};

/// What the supplier sells in.
struct OrderRules {
    double waste_percent = 0;                ///< of the concrete, 0–30
    std::optional<double> increment_m3 = {}; ///< the order is rounded up to it
};

/// A price as a range, in the SI unit of what it counts (m2, m, m3, piece, h, d, job).
struct PriceRange {
    double low;
    double likely;
    double high;
    bool likely_stated = true; ///< otherwise the middle of the range
};

struct WallPrices {
    std::string currency;                   ///< of all of them
    std::map<std::string, PriceRange> item; ///< by the key of the wall file
};

/// The work that a wall file describes: everything but the concrete that it is of.
struct WallWork {
    std::vector<WallRun> runs;
    std::vector<Planter> planters = {};
    std::vector<BenchTop> benches = {};
    std::vector<Embedment> embedments = {};
    std::optional<Boards> boards = {};
    std::optional<Ties> ties = {};
    std::optional<Edges> edges = {};
    JointWishes joints = {};
    LayoutWishes layout = {};
    std::optional<Reinforcement> reinforcement = {};
    WallPlacing placing = {};
    std::optional<Mockup> mockup = {};
    std::optional<PanelWishes> panels = {};
    OrderRules order = {};
    std::optional<WallPrices> prices = {};
};

/// Everything that a wall file says, complete and in SI.
struct Wall : WallWork {
    std::string title;
    UnitSystem system; ///< of the file
    AnyCompleteMix mix;
};

} // namespace boardmark::core
