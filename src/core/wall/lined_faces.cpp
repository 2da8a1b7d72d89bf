#include "lined_faces.hpp"

#include <boardmark/core/wall/course.hpp>

#include "../basis/tolerance.hpp"
#include "profile.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace boardmark::core {
namespace {

struct Span {
    double from_m;
    double to_m;
};

/// Spans without what lies in the gaps.
std::vector<Span> without(const std::vector<Span>& spans, std::vector<Span> gaps) {
    std::ranges::sort(gaps, {}, &Span::from_m);
    std::vector<Span> left;
    for (Span span : spans) {
        bool is_left = true;
        for (const Span& gap : gaps) {
            if (gap.from_m >= span.to_m) {
                break;
            }
            if (gap.to_m <= span.from_m) {
                continue;
            }
            if (below(span.from_m, gap.from_m)) {
                left.push_back({span.from_m, gap.from_m});
            }
            span.from_m = gap.to_m;
            is_left = below(gap.to_m, span.to_m);
            if (!is_left) {
                break;
            }
        }
        if (is_left) {
            left.push_back(span);
        }
    }
    return left;
}

/// Joints as gaps, which have no width.
std::vector<Span> gaps_at(const std::vector<double>& joints_m) {
    std::vector<Span> gaps;
    for (const double joint_m : joints_m) {
        gaps.push_back({joint_m, joint_m});
    }
    return gaps;
}

/// Where the run stands higher than a level.
std::vector<Span> higher_than(const Profile& profile, double level_m) {
    std::vector<Span> spans;
    for (const Stretch& stretch : profile.stretches) {
        Span span{stretch.from_m, stretch.to_m};
        const bool starts = below(level_m, stretch.from_height_m);
        const bool ends = below(level_m, stretch.to_height_m);
        if (!starts && !ends) {
            continue;
        }
        const double rise_m = stretch.to_height_m - stretch.from_height_m;
        if (starts != ends) {
            const double crossing_m = stretch.from_m + (stretch.to_m - stretch.from_m) *
                                                           (level_m - stretch.from_height_m) /
                                                           rise_m;
            (starts ? span.to_m : span.from_m) = crossing_m;
        }
        if (!spans.empty() && same(spans.back().to_m, span.from_m)) {
            spans.back().to_m = span.to_m;
        } else {
            spans.push_back(span);
        }
    }
    return spans;
}

std::vector<FaceBox> holes(const WallRun& run, const Profile& profile) {
    std::vector<FaceBox> boxes;
    for (const Opening& opening : run.openings) {
        if (!opening.depth_mm) {
            std::ranges::copy(boxes_of(opening, profile), std::back_inserter(boxes));
        }
    }
    return boxes;
}

/// Puts boards on one face after the other.
class Lining {
public:
    explicit Lining(const Wall& wall)
        : m_boards{*wall.boards}
        , m_from{wall.layout.courses_from}
        , m_longest_m{std::ranges::max(m_boards.stock_m)} {}

    void line(const WallRun& run, const std::vector<double>& joints_m) {
        const Profile profile = profile_of(run);
        const auto openings = holes(run, profile);
        for (const Face face : {Face::front, Face::back}) {
            if (face == Face::back && run.shows == ShownFaces::one) {
                continue;
            }
            begin({run.name, face});
            if (lies()) {
                line_courses(profile, openings, joints_m);
            } else {
                line_standing(profile, openings, joints_m);
            }
            if (face == Face::back) {
                mirror(run.length_m, m_faces.back().boards);
            }
        }
        line_ends(run.name, profile);
    }

    /// Each side between its corners and joints; stations run round the outside.
    void line(const Planter& planter, const std::vector<double>& joints_m) {
        double from_m = 0;
        for (const auto& [face, side_m] :
             {std::pair{Face::front, planter.length_m}, std::pair{Face::right, planter.width_m},
              std::pair{Face::back, planter.length_m}, std::pair{Face::left, planter.width_m}}) {
            const auto panels = without({{from_m, from_m + side_m}}, gaps_at(joints_m));
            for (int number = 1; number <= planter.count; ++number) {
                begin({planter.name, face, number});
                for (const Span& panel : panels) {
                    line_rectangle(
                        {panel.from_m - from_m, panel.to_m - from_m, 0, planter.height_m});
                }
            }
            from_m += side_m;
        }
    }

    /// Its front, its ends and its underside are too narrow for boards to stand.
    void line(const BenchTop& bench) {
        const double thickness_m = bench.thickness_mm / 1000;
        const auto strip = [&](Face face, double length_m, double width_m, int times) {
            for (int number = 1; width_m > 0 && number <= times; ++number) {
                begin({bench.name, face, number});
                lay_courses({0, length_m, 0, width_m});
            }
        };
        strip(Face::front, bench.length_m, thickness_m, bench.count);
        strip(Face::end, bench.depth_mm / 1000, thickness_m, 2 * bench.count);
        strip(Face::underside, bench.length_m, bench.overhang_mm / 1000, bench.count);
    }

    std::vector<LinedFace> take() && { return std::move(m_faces); }

private:
    struct Begun {
        std::string part;
        Face face;
        int number = 1;
    };

    void begin(Begun begun) {
        m_faces.push_back({std::move(begun.part), begun.face, begun.number, {}});
    }

    bool lies() const { return m_boards.direction == BoardDirection::horizontal; }

    /// Boards that lie end to end, or stand on each other, and what numbers their course.
    void put(const FaceBox& strip, bool stands, int course) {
        double at_m = stands ? strip.low_m : strip.from_m;
        const double length_m = stands ? strip.height_m() : strip.width_m();
        for (const double piece_m : course_pieces_m(length_m, m_longest_m, course)) {
            m_faces.back().boards.push_back({.x_m = stands ? strip.from_m : at_m,
                                             .z_m = stands ? at_m : strip.low_m,
                                             .length_m = piece_m,
                                             .width_m = stands ? strip.width_m() : strip.height_m(),
                                             .stands = stands});
            at_m += piece_m;
        }
    }

    void lay_courses(const FaceBox& box) {
        int number = 0;
        for (const Course& course : courses_of(box.height_m(), m_boards, m_from)) {
            put({box.from_m, box.to_m, box.low_m + course.low_m, box.low_m + course.high_m}, false,
                number++);
        }
    }

    /// Boards that stand between two stations, the last one cut.
    std::vector<Span> standing(const Span& panel) const {
        const double board_m = m_boards.course_mm / 1000;
        std::vector<Span> boards;
        for (int board = 0; below(panel.from_m + board * board_m, panel.to_m); ++board) {
            const double from_m = panel.from_m + board * board_m;
            boards.push_back({from_m, std::min(from_m + board_m, panel.to_m)});
        }
        return boards;
    }

    void line_rectangle(const FaceBox& box) {
        if (lies()) {
            lay_courses(box);
            return;
        }
        int number = 0;
        for (const Span& board : standing({box.from_m, box.to_m})) {
            put({board.from_m, board.to_m, box.low_m, box.high_m}, true, number++);
        }
    }

    void line_courses(const Profile& profile, const std::vector<FaceBox>& openings,
                      const std::vector<double>& joints_m) {
        int number = 0;
        for (const auto& [low_m, high_m] :
             courses_of(profile.greatest_height_m, m_boards, m_from)) {
            std::vector<Span> gaps = gaps_at(joints_m);
            for (const FaceBox& box : openings) {
                if (!below(low_m, box.low_m) && !above(high_m, box.high_m)) {
                    gaps.push_back({box.from_m, box.to_m});
                }
            }
            for (const Span& span : without(higher_than(profile, low_m), std::move(gaps))) {
                FaceBox strip{span.from_m, span.to_m, low_m, high_m};
                strip.high_m = std::min(high_m, profile.highest_along_m(strip));
                put(strip, false, number);
            }
            ++number;
        }
    }

    void line_standing(const Profile& profile, const std::vector<FaceBox>& openings,
                       const std::vector<double>& joints_m) {
        for (const Span& panel : without({{0, profile.whole().to_m}}, gaps_at(joints_m))) {
            int number = 0;
            for (const Span& board : standing(panel)) {
                stand(profile, openings, board, number++);
            }
        }
    }

    void stand(const Profile& profile, const std::vector<FaceBox>& openings, const Span& board,
               int course) {
        const FaceBox strip{board.from_m, board.to_m, 0, 0};
        std::vector<Span> gaps;
        for (const FaceBox& box : openings) {
            if (!below(board.from_m, box.from_m) && !above(board.to_m, box.to_m)) {
                gaps.push_back({box.low_m, box.high_m});
            }
        }
        for (const Span& span : without({{0, profile.highest_along_m(strip)}}, std::move(gaps))) {
            put({board.from_m, board.to_m, span.from_m, span.to_m}, true, course);
        }
    }

    void line_ends(const std::string& part, const Profile& profile) {
        line_end(part, profile, {0, profile.stretches.front().from_height_m});
        line_end(part, profile, {0, profile.stretches.back().to_height_m});
        for (std::size_t next = 1; next < profile.stretches.size(); ++next) {
            const double before_m = profile.stretches[next - 1].to_height_m;
            const double after_m = profile.stretches[next].from_height_m;
            line_end(part, profile, {std::min(before_m, after_m), std::max(before_m, after_m)});
        }
    }

    /// An end of a run or the rise of a step, as wide as the wall is there at its thickest.
    void line_end(const std::string& part, const Profile& profile, const Span& rise) {
        if (rise.from_m < rise.to_m) {
            begin({part, Face::end});
            line_rectangle(
                {0, std::max(profile.thickness_at(rise.from_m), profile.thickness_at(rise.to_m)), 0,
                 rise.to_m - rise.from_m});
        }
    }

    const Boards& m_boards;
    CoursesFrom m_from;
    double m_longest_m;
    std::vector<LinedFace> m_faces;
};

} // namespace

std::vector<double> course_pieces_m(double length_m, double longest_m, int course) {
    if (!above(length_m, longest_m)) {
        return {length_m};
    }
    // A board a quarter longer than the equal part must still be a stock length at most.
    const double parts = 1.25 * length_m / longest_m;
    const double nearest = std::round(parts);
    const int count =
        static_cast<int>(std::max(2.0, same(parts, nearest) ? nearest : std::ceil(parts)));
    const double part_m = length_m / count;
    std::vector<double> pieces_m(static_cast<std::size_t>(count), part_m);
    constexpr double shifts[] = {0.25, -0.25, 0}; // in turn, so that two courses below differ too
    const double shift_m = part_m * shifts[course % 3];
    pieces_m.front() += shift_m;
    pieces_m.back() -= shift_m;
    return pieces_m;
}

std::vector<LinedFace> lined_faces(const Wall& wall, const JointStations& joints) {
    Lining lining{wall};
    const auto joints_of_part = [&](const std::string& name) {
        const auto found = joints.find(name);
        return found == joints.end() ? std::vector<double>{} : found->second;
    };
    for (const WallRun& run : wall.runs) {
        lining.line(run, joints_of_part(run.name));
    }
    for (const Planter& planter : wall.planters) {
        lining.line(planter, joints_of_part(planter.name));
    }
    for (const BenchTop& bench : wall.benches) {
        lining.line(bench);
    }
    return std::move(lining).take();
}

} // namespace boardmark::core
