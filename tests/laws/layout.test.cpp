// Laws of what is drawn: boards cover each face exactly once and are the pieces that are cut, ties
// are those that are counted, nothing stands outside its sheet.

#include <boardmark/core/layout/visible_part.hpp>
#include <boardmark/core/wall/course.hpp>

#include "laws/walls.hpp"
#include "report/drawing/sheet.hpp"

#include <map>
#include <set>

using namespace boardmark;
using namespace boardmark::test;

namespace {

core::Wall any_boarded_wall() {
    core::Wall wall = any_wall_file();
    const double course_mm = between(60, 400, "course, mm");
    wall.boards =
        core::Boards{.face_width_mm = course_mm,
                     .thickness_mm = 20,
                     .course_mm = course_mm,
                     .direction = perhaps("boards stand") ? core::BoardDirection::vertical
                                                          : core::BoardDirection::horizontal,
                     .stock_m = {between(2, 3, "short stock, m"), between(3.5, 5, "long stock, m")},
                     .saw_cut_mm = 3,
                     .uses = *rc::gen::inRange(1, 4).as("uses")};
    const int from = *rc::gen::inRange(0, 3).as("courses from bottom, top, both");
    wall.layout.courses_from = static_cast<core::CoursesFrom>(from);
    if (perhaps("lifts on board joints")) {
        wall.layout.lifts = core::LiftLines::on_board_joints;
    }
    return wall;
}

double top_at(const core::Elevation& elevation, double x_m) {
    double height_m = 0;
    const auto top = core::top_of(elevation);
    for (std::size_t next = 1; next < top.size(); ++next) {
        const auto& from = top[next - 1];
        const auto& to = top[next];
        if (from.x_m < x_m && x_m < to.x_m) {
            height_m = from.z_m + (to.z_m - from.z_m) * (x_m - from.x_m) / (to.x_m - from.x_m);
        }
    }
    return height_m;
}

bool in_a_hole(const core::Elevation& elevation, const core::DrawnPoint& point) {
    return std::ranges::any_of(elevation.openings, [&](const core::DrawnOpening& opening) {
        return !opening.depth_m && point.x_m > opening.x_m &&
               point.x_m < opening.x_m + opening.width_m && point.z_m > opening.z_m &&
               point.z_m < opening.z_m + opening.height_m;
    });
}

int boards_at(const core::Elevation& elevation, const core::DrawnPoint& point) {
    return static_cast<int>(
        std::ranges::count_if(elevation.boards, [&](const core::LaidBoard& board) {
            const double width_m = board.stands ? board.width_m : board.length_m;
            const double height_m = board.stands ? board.length_m : board.width_m;
            return point.x_m > board.x_m && point.x_m < board.x_m + width_m &&
                   point.z_m > board.z_m && point.z_m < board.z_m + height_m;
        }));
}

bool inside(const report::PaperPoint& point, const report::SheetSize& size) {
    constexpr double hair = 1e-6;
    return point.x_mm >= -hair && point.y_mm >= -hair && point.x_mm <= size.width_mm + hair &&
           point.y_mm <= size.height_mm + hair;
}

/// The ends of a mark on its sheet; of words, where they begin and end.
std::vector<report::PaperPoint> ends_of(const report::Mark& mark,
                                        const report::PaperPoint& corner) {
    std::vector<report::PaperPoint> ends;
    for (const report::PaperPoint& point : mark.points) {
        ends.push_back({corner.x_mm + point.x_mm, corner.y_mm + point.y_mm});
    }
    if (mark.shape == report::Mark::Shape::words && !mark.upright) {
        const double width_mm = report::width_of_words_mm(mark.words, mark.size_mm);
        const double before = mark.anchor == report::Anchor::start    ? 0
                              : mark.anchor == report::Anchor::middle ? width_mm / 2
                                                                      : width_mm;
        ends.push_back({ends.front().x_mm - before, ends.front().y_mm});
        ends.push_back({ends.front().x_mm - before + width_mm, ends.front().y_mm});
    }
    return ends;
}

/// Whether a point lies on an edge of a board, where nobody can say which board is there.
bool on_an_edge(const core::Elevation& elevation, const core::DrawnPoint& point) {
    const auto near = [](double one, double other) { return std::abs(one - other) < 1e-6; };
    return std::ranges::any_of(elevation.boards, [&](const core::LaidBoard& board) {
        const double width_m = board.stands ? board.width_m : board.length_m;
        const double height_m = board.stands ? board.length_m : board.width_m;
        return near(point.x_m, board.x_m) || near(point.x_m, board.x_m + width_m) ||
               near(point.z_m, board.z_m) || near(point.z_m, board.z_m + height_m);
    });
}

} // namespace

TEST_CASE("boards cover each face exactly once") {
    holds([] {
        const core::WallPlan plan = planned(any_boarded_wall());
        for (const core::Elevation& elevation : plan.layout.elevations) {
            for (int drawn = 0; drawn < 20; ++drawn) {
                // Inside the face: on its outline no board is to be counted.
                const double x_m = elevation.length_m * between(0.001, 0.999, "along");
                const core::DrawnPoint point{x_m,
                                             top_at(elevation, x_m) * between(0.001, 0.999, "up")};
                if (on_an_edge(elevation, point)) {
                    continue;
                }
                const int boards = boards_at(elevation, point);
                const bool covered = boards == 1 || (boards == 0 && in_a_hole(elevation, point));
                RC_ASSERT(covered);
            }
        }
    });
}

TEST_CASE("the boards that are laid are the pieces of the cutting list") {
    holds([] {
        const core::Wall wall = any_boarded_wall();
        const core::BoardOrder order = planned(wall).boards;
        std::map<int, std::vector<const core::LaidBoard*>> by_piece;
        for (const core::LinedFace& face : order.faces) {
            for (const core::LaidBoard& board : face.boards) {
                by_piece[board.piece].push_back(&board);
            }
        }
        std::map<double, int> cut;
        int pieces = 0;
        for (const core::CutBoard& board : order.plan.boards) {
            for (const core::Pieces& piece : board.pieces) {
                cut[board.stock_m] += board.count * piece.count;
                pieces += board.count * piece.count;
            }
        }
        RC_ASSERT(static_cast<int>(by_piece.size()) == pieces);
        RC_ASSERT(by_piece.begin()->first == 1);
        RC_ASSERT(by_piece.rbegin()->first == pieces);
        for (const auto& [piece, laid] : by_piece) {
            RC_ASSERT(static_cast<int>(laid.size()) <= wall.boards->uses);
            for (const core::LaidBoard* board : laid) {
                RC_ASSERT(std::abs(board->length_m - laid.front()->length_m) < 1e-4);
                RC_ASSERT(board->cut_from_m == laid.front()->cut_from_m);
                RC_ASSERT(board->length_m <= board->cut_from_m + 1e-6);
            }
            --cut[laid.front()->cut_from_m];
        }
        for (const auto& [stock_m, left] : cut) {
            RC_ASSERT(left == 0);
        }
    });
}

TEST_CASE("no board end stands within a quarter board of one in the two courses below") {
    holds([] {
        const double longest_m = between(1, 6, "longest, m");
        const double length_m = longest_m * between(1.01, 9, "length in longest");
        const int course = *rc::gen::inRange(2, 40).as("course");
        std::vector<std::vector<double>> ends;
        std::size_t parts = 0;
        for (int below = 0; below < 3; ++below) {
            ends.emplace_back();
            double at_m = 0;
            const auto pieces = core::course_pieces_m(length_m, longest_m, course - below);
            parts = pieces.size();
            for (const double piece_m : pieces) {
                RC_ASSERT(piece_m <= longest_m * (1 + 1e-9));
                at_m += piece_m;
                ends.back().push_back(at_m);
            }
            demand_same(at_m, length_m, 1e-9, "sum of the pieces");
            ends.back().pop_back();
        }
        const double quarter_m = length_m / static_cast<double>(parts) / 4;
        for (const double end_m : ends[0]) {
            for (const std::size_t below : {1, 2}) {
                for (const double other_m : ends[below]) {
                    RC_ASSERT(std::abs(end_m - other_m) >= quarter_m * (1 - 1e-9));
                }
            }
        }
    });
}

TEST_CASE("the ties that are drawn are those that are counted") {
    holds([] {
        const core::Wall wall = any_wall_file();
        const core::WallPlan plan = planned(wall);
        int ties = 0;
        double hardest_kn = 0;
        for (const core::Elevation& elevation : plan.layout.elevations) {
            const bool again = elevation.face == core::Face::back &&
                               std::ranges::find(wall.runs, elevation.part, &core::WallRun::name) !=
                                   wall.runs.end();
            ties += again ? 0 : elevation.alike * static_cast<int>(elevation.ties.size());
            if (const core::DrawnTie* tie = core::hardest_tie(elevation)) {
                hardest_kn = std::max(hardest_kn, tie->load_kn);
            }
        }
        RC_ASSERT(ties == plan.quantities.total.ties);
        double counted_kn = 0;
        for (const core::FormForces& forces : plan.forces) {
            counted_kn = std::max(counted_kn, core::hardest_tie_kn(forces).value_or(0));
        }
        demand_same(hardest_kn, counted_kn, 1e-9, "hardest loaded tie, kN");
    });
}

TEST_CASE("lifts that end on board joints end there and fill the height") {
    holds([] {
        core::Wall wall = any_boarded_wall();
        wall.boards->direction = core::BoardDirection::horizontal;
        wall.layout.lifts = core::LiftLines::on_board_joints;
        for (const core::Elevation& elevation : planned(wall).layout.elevations) {
            const auto joints_m =
                core::board_joints_m(elevation.height_m, *wall.boards, wall.layout.courses_from);
            for (const double lift_m : elevation.lifts_m) {
                RC_ASSERT(std::ranges::any_of(
                    joints_m, [&](double joint_m) { return std::abs(joint_m - lift_m) < 1e-9; }));
            }
        }
    });
}

TEST_CASE("nothing is drawn outside its sheet") {
    holds([] {
        const core::Wall wall = any_boarded_wall();
        const core::WallPlan plan = planned(wall);
        const report::DrawingResult result{wall, plan, "walls.yaml", std::string(64, '0')};
        const auto paper = static_cast<report::Paper>(*rc::gen::inRange(0, 4).as("paper"));
        std::set<std::string> parts;
        for (const report::Sheet& sheet :
             report::sheets_of(result, {.paper = paper}, wall.system)) {
            for (const report::PlacedView& placed : sheet.views) {
                parts.insert(placed.view.part);
                for (const report::Mark& mark : placed.view.marks) {
                    for (const auto& end : ends_of(mark, placed.corner)) {
                        RC_ASSERT(inside(end, sheet.size));
                    }
                }
            }
            for (const report::Mark& mark : sheet.lettering.marks) {
                for (const auto& end : ends_of(mark, {0, 0})) {
                    RC_ASSERT(inside(end, sheet.size));
                }
            }
        }
        RC_ASSERT(parts.size() == plan.layout.sections.size());
    });
}
