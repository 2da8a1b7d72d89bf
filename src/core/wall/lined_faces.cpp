#include "lined_pieces.hpp"

#include "../basis/tolerance.hpp"
#include "profile.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

struct Span {
    double from_m;
    double to_m;
};

/// Spans without what lies in the gap.
std::vector<Span> without(const std::vector<Span>& spans, const Span& gap) {
    std::vector<Span> left;
    for (const Span& span : spans) {
        if (gap.to_m <= span.from_m || gap.from_m >= span.to_m) {
            left.push_back(span);
            continue;
        }
        if (below(span.from_m, gap.from_m)) {
            left.push_back({span.from_m, gap.from_m});
        }
        if (below(gap.to_m, span.to_m)) {
            left.push_back({gap.to_m, span.to_m});
        }
    }
    return left;
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

class Lining {
public:
    Lining(const Boards& boards)
        : m_boards{boards}
        , m_course_m{boards.course_mm / 1000}
        , m_longest_m{std::ranges::max(boards.stock_m)} {}

    void line(const WallRun& run, const std::vector<double>& joints_m) {
        const Profile profile = profile_of(run);
        const int faces = run.shows == ShownFaces::both ? 2 : 1;
        if (m_boards.direction == BoardDirection::horizontal) {
            line_courses(profile, holes(run, profile), joints_m, faces);
        } else {
            line_standing(profile, holes(run, profile), joints_m, faces);
        }
        line_end(profile, 0, profile.stretches.front().from_height_m);
        line_end(profile, 0, profile.stretches.back().to_height_m);
        for (std::size_t next = 1; next < profile.stretches.size(); ++next) {
            const double before_m = profile.stretches[next - 1].to_height_m;
            const double after_m = profile.stretches[next].from_height_m;
            line_end(profile, std::min(before_m, after_m), std::max(before_m, after_m));
        }
    }

    /// A rectangle; boards run along its length or stand.
    void line_rectangle(double length_m, double height_m, int faces) {
        if (m_boards.direction == BoardDirection::horizontal) {
            for (int course = 0; course < courses(height_m); ++course) {
                add(length_m, course, faces);
            }
        } else {
            add(height_m, 0, faces * courses(length_m));
        }
    }

    /// A strip too narrow for boards to stand.
    void line_strip(double length_m, double width_m, int faces) {
        for (int course = 0; course < courses(width_m); ++course) {
            add(length_m, course, faces);
        }
    }

    std::vector<Pieces> take() && { return std::move(m_pieces); }

private:
    /// That cover an extent, the cut one with them.
    int courses(double extent_m) const {
        const double exact = extent_m / m_course_m;
        const double nearest = std::round(exact);
        return static_cast<int>(same(exact, nearest) ? nearest : std::ceil(exact));
    }

    void add(double length_m, int course, int times) {
        for (const double piece_m : course_pieces_m(length_m, m_longest_m, course)) {
            m_pieces.push_back({piece_m, times});
        }
    }

    void line_courses(const Profile& profile, const std::vector<FaceBox>& openings,
                      const std::vector<double>& joints_m, int faces) {
        for (int course = 0; course < courses(profile.greatest_height_m); ++course) {
            const double low_m = course * m_course_m;
            const double high_m = std::min(low_m + m_course_m, profile.greatest_height_m);
            std::vector<Span> spans = higher_than(profile, low_m);
            for (const FaceBox& box : openings) {
                if (!below(low_m, box.low_m) && !above(high_m, box.high_m)) {
                    spans = without(spans, {box.from_m, box.to_m});
                }
            }
            for (const double joint_m : joints_m) {
                spans = without(spans, {joint_m, joint_m});
            }
            for (const Span& span : spans) {
                add(span.to_m - span.from_m, course, faces);
            }
        }
    }

    void line_standing(const Profile& profile, const std::vector<FaceBox>& openings,
                       const std::vector<double>& joints_m, int faces) {
        std::vector<Span> panels{{0, profile.whole().to_m}};
        for (const double joint_m : joints_m) {
            panels = without(panels, {joint_m, joint_m});
        }
        for (const Span& panel : panels) {
            for (int board = 0; board < courses(panel.to_m - panel.from_m); ++board) {
                const double from_m = panel.from_m + board * m_course_m;
                stand(profile, openings, {from_m, std::min(from_m + m_course_m, panel.to_m)}, board,
                      faces);
            }
        }
    }

    void stand(const Profile& profile, const std::vector<FaceBox>& openings, const Span& board,
               int course, int faces) {
        double height_m = 0;
        for (const Stretch& stretch : profile.stretches) {
            const double from_m = std::max(board.from_m, stretch.from_m);
            const double to_m = std::min(board.to_m, stretch.to_m);
            if (below(from_m, to_m)) {
                height_m = std::max({height_m, stretch.height_at(from_m), stretch.height_at(to_m)});
            }
        }
        std::vector<Span> spans{{0, height_m}};
        for (const FaceBox& box : openings) {
            if (!below(board.from_m, box.from_m) && !above(board.to_m, box.to_m)) {
                spans = without(spans, {box.low_m, box.high_m});
            }
        }
        for (const Span& span : spans) {
            add(span.to_m - span.from_m, course, faces);
        }
    }

    /// An end of a run or the rise of a step, as wide as the wall is there at its thickest.
    void line_end(const Profile& profile, double low_m, double high_m) {
        if (low_m < high_m) {
            line_rectangle(std::max(profile.thickness_at(low_m), profile.thickness_at(high_m)),
                           high_m - low_m, 1);
        }
    }

    const Boards& m_boards;
    double m_course_m;
    double m_longest_m;
    std::vector<Pieces> m_pieces;
};

/// Each side between its corners and joints; stations run round the outside.
void line_planter(const Planter& planter, const std::vector<double>& joints_m, Lining& lining) {
    double from_m = 0;
    for (const double side_m :
         {planter.length_m, planter.width_m, planter.length_m, planter.width_m}) {
        std::vector<Span> panels{{from_m, from_m + side_m}};
        for (const double joint_m : joints_m) {
            panels = without(panels, {joint_m, joint_m});
        }
        for (const Span& panel : panels) {
            lining.line_rectangle(panel.to_m - panel.from_m, planter.height_m, planter.count);
        }
        from_m += side_m;
    }
}

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
    (course % 2 == 0 ? pieces_m.front() : pieces_m.back()) += part_m / 4;
    (course % 2 == 0 ? pieces_m.back() : pieces_m.front()) -= part_m / 4;
    return pieces_m;
}

std::vector<Pieces> lined_pieces(const Wall& wall, const JointStations& joints) {
    Lining lining{*wall.boards};
    for (const WallRun& run : wall.runs) {
        const auto found = joints.find(run.name);
        lining.line(run, found == joints.end() ? std::vector<double>{} : found->second);
    }
    for (const Planter& planter : wall.planters) {
        const auto found = joints.find(planter.name);
        line_planter(planter, found == joints.end() ? std::vector<double>{} : found->second,
                     lining);
    }
    for (const BenchTop& bench : wall.benches) {
        lining.line_strip(bench.length_m, bench.thickness_mm / 1000, bench.count);
        lining.line_strip(bench.depth_mm / 1000, bench.thickness_mm / 1000, 2 * bench.count);
        lining.line_strip(bench.length_m, bench.overhang_mm / 1000, bench.count);
    }
    return std::move(lining).take();
}

} // namespace boardmark::core
