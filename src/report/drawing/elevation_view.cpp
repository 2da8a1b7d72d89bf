#include "elevation_view.hpp"

#include <boardmark/core/layout/visible_part.hpp>
#include <boardmark/text/utf8.hpp>

#include "dimension.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

namespace boardmark::report {
namespace {

using core::Elevation;
using core::UnitSystem;

constexpr double left_mm = 4.6;  // for the height's dimension
constexpr double right_mm = 0.6; // what ticks and joints take
constexpr double step_mm = 5.2;  // for the height at the other end
constexpr double overshoot_mm = 1.2;
constexpr double tie_mm = 0.6; // radius: a symbol, not the tie's size
constexpr double chain_mm = 5;
constexpr double label_row_mm = 3;

/// The stretch of a face that one view shows.
struct Window {
    double from_m;
    double to_m;
    bool first;
    bool last;

    /// Whether an entry that begins at a station is counted here.
    bool counts(double station_m) const {
        return (first || station_m >= from_m) && (last || station_m < to_m);
    }
    bool shows(double station_m) const { return station_m >= from_m && station_m <= to_m; }
};

double left_height_m(const Elevation& elevation) {
    return core::top_of(elevation).front().z_m;
}

double right_height_m(const Elevation& elevation) {
    return core::top_of(elevation).back().z_m;
}

bool ends_differ(const Elevation& elevation) {
    return std::abs(left_height_m(elevation) - right_height_m(elevation)) > 1e-6;
}

double margins_mm(const Elevation& elevation) {
    return left_mm + (ends_differ(elevation) ? step_mm : right_mm);
}

std::vector<Window> windows_of(const Elevation& elevation, double scale, double most_width_mm) {
    const int count = views_needed(elevation, scale, most_width_mm);
    std::vector<Window> windows;
    for (int number = 0; number < count; ++number) {
        windows.push_back({elevation.length_m * number / count,
                           elevation.length_m * (number + 1) / count, number == 0,
                           number + 1 == count});
    }
    return windows;
}

/// One view while it is drawn.
class FaceDrawing {
public:
    FaceDrawing(const Elevation& elevation, const Window& window, const FaceLook& look)
        : m_elevation{elevation}
        , m_window{window}
        , m_turns_at_ends{look.turns_at_ends}
        , m_system{look.system}
        , m_view{.part = elevation.part,
                 .face = std::string{core::name_of(elevation.face)},
                 .scale = look.scale,
                 .width_mm =
                     margins_mm(elevation) + 1000 * (window.to_m - window.from_m) / look.scale,
                 .height_mm = 0} {}

    View draw() && {
        write_title();
        place_labels();
        m_top_mm = title_mm + 2.4 + label_row_mm * m_labels.rows() + overshoot_mm;
        m_bottom_mm = m_top_mm + 1000 * m_elevation.height_m / m_view.scale;
        m_view.origin = {x_of(0), m_bottom_mm};
        write_labels();
        draw_concrete();
        draw_boards();
        draw_slivers();
        draw_openings();
        draw_lines();
        draw_ties();
        draw_outline();
        draw_edges();
        draw_mitres();
        draw_dimensions();
        return std::move(m_view);
    }

private:
    struct Label {
        double middle_mm;
        int row;
        std::string text;
        Ink ink;
    };

    double x_of(double station_m) const {
        return left_mm + 1000 * (station_m - m_window.from_m) / m_view.scale;
    }
    double y_of(double height_m) const { return m_bottom_mm - 1000 * height_m / m_view.scale; }
    PaperPoint at(const core::DrawnPoint& point) const {
        return {x_of(point.x_m), y_of(point.z_m)};
    }
    std::string_view counted(double station_m, std::string_view token) const {
        return m_window.counts(station_m) ? token : std::string_view{};
    }

    std::vector<PaperPoint> box(double x_m, double z_m, double width_m, double height_m) const {
        const double from_m = std::max(x_m, m_window.from_m);
        const double to_m = std::min(x_m + width_m, m_window.to_m);
        return {at({from_m, z_m}), at({to_m, z_m}), at({to_m, z_m + height_m}),
                at({from_m, z_m + height_m})};
    }

    void write_title() {
        std::string title = fmt::format("{}: {}, 1:{:g}", text::printable(m_elevation.part),
                                        m_view.face, m_view.scale);
        if (m_elevation.alike > 1) {
            title += fmt::format(", {} alike", m_elevation.alike);
        }
        if (!m_window.first || !m_window.last) {
            title += fmt::format(", from {} to {}", dimension(m_window.from_m, m_system),
                                 dimension(m_window.to_m, m_system));
        }
        m_view.width_mm = std::max(m_view.width_mm, width_of_words_mm(title, title_mm));
        m_view.words(Ink::lettering, {0, title_mm}, title, Anchor::start, title_mm);
    }

    void place_label(double middle_m, std::string text, Ink ink) {
        const double half_mm = width_of_words_mm(text, letter_mm) / 2;
        const double middle_mm =
            std::max(half_mm, std::min(x_of(middle_m), m_view.width_mm - half_mm));
        const int row = m_labels.row_for(middle_mm - half_mm - 1, middle_mm + half_mm);
        m_placed.push_back({middle_mm, row, std::move(text), ink});
    }

    void place_labels() {
        for (const core::Sliver& sliver : m_elevation.slivers) {
            const double from_m = std::max(sliver.x_m, m_window.from_m);
            const double to_m = std::min(
                sliver.x_m + (sliver.stands ? sliver.width_m : sliver.length_m), m_window.to_m);
            if (from_m < to_m) {
                place_label((from_m + to_m) / 2,
                            fmt::format("cut {} {}", sliver.stands ? "board" : "course",
                                        dimension(sliver.width_m, m_system)),
                            Ink::warning);
            }
        }
        const double highest_m = m_elevation.height_m;
        if (highest_m - std::max(left_height_m(m_elevation), right_height_m(m_elevation)) > 1e-6) {
            const auto top = core::top_of(m_elevation);
            const auto peak = std::ranges::max_element(top, {}, &core::DrawnPoint::z_m);
            if (m_window.counts(peak->x_m)) {
                place_label(peak->x_m, dimension(highest_m, m_system) + " high", Ink::lettering);
            }
        }
    }

    void write_labels() {
        for (const Label& label : m_placed) {
            const double y_mm =
                m_top_mm - overshoot_mm - 0.6 - label_row_mm * (m_labels.rows() - 1 - label.row);
            m_view.words(label.ink, {label.middle_mm, y_mm}, label.text, Anchor::middle);
        }
    }

    /// The outline between the window's ends.
    std::vector<PaperPoint> outline() const {
        const core::LaidBoard all{.x_m = m_window.from_m,
                                  .z_m = 0,
                                  .length_m = m_window.to_m - m_window.from_m,
                                  .width_m = m_elevation.height_m};
        return on_paper(core::visible_part(all, m_elevation));
    }
    std::vector<PaperPoint> on_paper(const std::vector<core::DrawnPoint>& points) const {
        std::vector<PaperPoint> placed;
        for (const core::DrawnPoint& point : points) {
            placed.push_back(at(point));
        }
        return placed;
    }

    void draw_concrete() { m_view.area(Ink::concrete, outline()); }

    void draw_boards() {
        for (const core::LaidBoard& board : m_elevation.boards) {
            core::LaidBoard shown = board;
            double& along_m = board.stands ? shown.width_m : shown.length_m;
            const double to_m = std::min(board.x_m + along_m, m_window.to_m);
            shown.x_m = std::max(board.x_m, m_window.from_m);
            along_m = to_m - shown.x_m;
            if (along_m <= 0) {
                continue;
            }
            m_view.area(Ink::board, on_paper(core::visible_part(shown, m_elevation)),
                        counted(board.x_m, "board"));
            number(shown);
        }
    }

    /// The number of the piece, where there is room for it.
    void number(const core::LaidBoard& board) {
        constexpr double digits_mm = 2;
        const std::string text = std::to_string(board.piece);
        const double across_mm =
            1000 * (board.stands ? board.length_m : board.width_m) / m_view.scale;
        const double along_mm =
            1000 * (board.stands ? board.width_m : board.length_m) / m_view.scale;
        if (across_mm >= digits_mm + 0.8 && along_mm >= 2 * width_of_words_mm(text, digits_mm)) {
            const PaperPoint corner = at({board.x_m, board.z_m});
            m_view.words(Ink::piece_number, {corner.x_mm + 0.6, corner.y_mm - 0.6}, text,
                         Anchor::start, digits_mm);
        }
    }

    void draw_slivers() {
        for (const core::Sliver& sliver : m_elevation.slivers) {
            core::LaidBoard shown{.x_m = std::max(sliver.x_m, m_window.from_m),
                                  .z_m = sliver.z_m,
                                  .length_m = sliver.length_m,
                                  .width_m = sliver.width_m,
                                  .stands = sliver.stands};
            double& along_m = sliver.stands ? shown.width_m : shown.length_m;
            along_m = std::min(sliver.x_m + along_m, m_window.to_m) - shown.x_m;
            if (along_m > 0) {
                m_view.area(Ink::sliver, on_paper(core::visible_part(shown, m_elevation)),
                            counted(sliver.x_m, "sliver"));
            }
        }
    }

    void draw_openings() {
        for (const core::DrawnOpening& opening : m_elevation.openings) {
            if (opening.x_m >= m_window.to_m || opening.x_m + opening.width_m <= m_window.from_m) {
                continue;
            }
            const auto corners = box(opening.x_m, opening.z_m, opening.width_m, opening.height_m);
            m_view.area(Ink::opening, corners, counted(opening.x_m, "opening"));
            if (!opening.depth_m) {
                m_view.line(Ink::chamfer, {corners[0], corners[2]});
                m_view.line(Ink::chamfer, {corners[1], corners[3]});
            }
            const double leg_m = m_elevation.chamfer_m;
            if (leg_m > 0) {
                m_view.line(Ink::chamfer,
                            closed(box(opening.x_m - leg_m, opening.z_m - leg_m,
                                       opening.width_m + 2 * leg_m, opening.height_m + 2 * leg_m)));
            }
            write_name(opening);
        }
    }

    static std::vector<PaperPoint> closed(std::vector<PaperPoint> points) {
        points.push_back(points.front());
        return points;
    }

    void write_name(const core::DrawnOpening& opening) {
        const double width_mm = 1000 * opening.width_m / m_view.scale;
        const double height_mm = 1000 * opening.height_m / m_view.scale;
        const std::string name = text::printable(opening.name);
        if (m_window.counts(opening.x_m) && height_mm > letter_mm + 1 &&
            width_mm > width_of_words_mm(name, letter_mm) + 1) {
            m_view.words(Ink::lettering,
                         {x_of(opening.x_m + opening.width_m / 2),
                          y_of(opening.z_m + opening.height_m / 2) + letter_mm / 3},
                         name, Anchor::middle);
        }
    }

    double height_at(double station_m) const {
        double height_m = 0;
        const auto top = core::top_of(m_elevation);
        for (std::size_t next = 1; next < top.size(); ++next) {
            const auto& from = top[next - 1];
            const auto& to = top[next];
            if (station_m >= from.x_m && station_m <= to.x_m && to.x_m > from.x_m) {
                height_m =
                    std::max(height_m, from.z_m + (to.z_m - from.z_m) * (station_m - from.x_m) /
                                                      (to.x_m - from.x_m));
            }
        }
        return height_m;
    }

    /// Where the face is at least as high as a level.
    std::vector<std::pair<double, double>> stretches_at(double level_m) const {
        std::vector<std::pair<double, double>> stretches;
        const auto top = core::top_of(m_elevation);
        for (std::size_t next = 1; next < top.size(); ++next) {
            double from_m = top[next - 1].x_m;
            double to_m = top[next].x_m;
            const double from_z = top[next - 1].z_m;
            const double to_z = top[next].z_m;
            if (to_m <= from_m || std::max(from_z, to_z) < level_m) {
                continue;
            }
            const double crossing_m =
                from_z == to_z ? from_m
                               : from_m + (to_m - from_m) * (level_m - from_z) / (to_z - from_z);
            from_m = from_z < level_m ? crossing_m : from_m;
            to_m = to_z < level_m ? crossing_m : to_m;
            if (!stretches.empty() && std::abs(stretches.back().second - from_m) < 1e-9) {
                stretches.back().second = to_m;
            } else {
                stretches.emplace_back(from_m, to_m);
            }
        }
        return stretches;
    }

    void draw_lines() {
        for (const double lift_m : m_elevation.lifts_m) {
            std::string_view token = "lift"; // the first of its lines stands for it
            for (const auto& [from_m, to_m] : stretches_at(lift_m)) {
                const double left_m = std::max(from_m, m_window.from_m);
                const double right_m = std::min(to_m, m_window.to_m);
                if (left_m < right_m) {
                    m_view.line(Ink::lift, {at({left_m, lift_m}), at({right_m, lift_m})},
                                counted(from_m, token));
                }
                token = {};
            }
        }
        for (const core::FaceJoint& joint : m_elevation.joints) {
            if (m_window.shows(joint.x_m)) {
                PaperPoint above = at({joint.x_m, height_at(joint.x_m)});
                PaperPoint below = at({joint.x_m, 0});
                above.y_mm -= overshoot_mm;
                below.y_mm += overshoot_mm;
                m_view.line(Ink::contraction_joint, {above, below}, counted(joint.x_m, "joint"));
            }
        }
    }

    void draw_ties() {
        const core::DrawnTie* hardest = core::hardest_tie(m_elevation);
        for (const core::DrawnTie& tie : m_elevation.ties) {
            if (m_window.counts(tie.x_m)) {
                const bool as_hard = tie.load_kn >= hardest->load_kn * (1 - 1e-9);
                m_view.circle(as_hard ? Ink::hardest_tie : Ink::tie, at({tie.x_m, tie.z_m}), tie_mm,
                              "tie");
            }
        }
    }

    void draw_outline() {
        m_view.line(Ink::frame, closed(outline()));
        for (const bool at_start : {true, false}) {
            if (at_start ? m_window.first : m_window.last) {
                continue;
            }
            const double station_m = at_start ? m_window.from_m : m_window.to_m;
            PaperPoint above = at({station_m, m_elevation.height_m});
            PaperPoint below = at({station_m, 0});
            above.y_mm -= overshoot_mm;
            below.y_mm += overshoot_mm;
            m_view.line(Ink::match_line, {above, below});
        }
    }

    /// A line between two stations, as far as the window shows it.
    void clipped_line(Ink ink, core::DrawnPoint from, core::DrawnPoint to) {
        if (to.x_m < from.x_m) {
            std::swap(from, to);
        }
        const double left_m = std::max(from.x_m, m_window.from_m);
        const double right_m = std::min(to.x_m, m_window.to_m);
        if (left_m > right_m) {
            return;
        }
        const double slope = to.x_m > from.x_m ? (to.z_m - from.z_m) / (to.x_m - from.x_m) : 0;
        const bool upright = to.x_m == from.x_m;
        m_view.line(ink,
                    {at({left_m, from.z_m + slope * (left_m - from.x_m)}),
                     at({right_m, upright ? to.z_m : from.z_m + slope * (right_m - from.x_m)})});
    }

    /// The inner line of the chamfers along the ends, the steps and the top.
    void draw_edges() {
        constexpr double least_mm = 0.3; // nearer lines would be one
        const double leg_m = m_elevation.chamfer_m;
        if (1000 * leg_m / m_view.scale < least_mm) {
            return;
        }
        const auto top = core::top_of(m_elevation);
        const auto rises = [&](std::size_t from, std::size_t to) {
            const bool upright = std::abs(top[to].x_m - top[from].x_m) < 1e-9;
            return !upright ? 0 : top[to].z_m > top[from].z_m ? 1 : -1;
        };
        core::DrawnPoint before{leg_m, 0};
        for (std::size_t i = 0; i < top.size(); ++i) {
            const int into = i == 0 ? 1 : rises(i - 1, i);
            const int out_of = i + 1 == top.size() ? -1 : rises(i, i + 1);
            const int side = into != 0 ? into : out_of; // where an upright edge has its concrete
            const core::DrawnPoint next{top[i].x_m + side * leg_m, top[i].z_m - leg_m};
            clipped_line(Ink::chamfer, before, next);
            before = next;
        }
        clipped_line(Ink::chamfer, before, {m_elevation.length_m - leg_m, 0});
    }

    /// A stroke at each board end that is mitred: where the run bends or the face meets the next.
    void draw_mitres() {
        std::vector<double> corners_m;
        if (m_turns_at_ends) {
            corners_m = {0, m_elevation.length_m};
        }
        for (const core::FaceJoint& joint : m_elevation.joints) {
            if (joint.kind == core::FaceJointKind::corner) {
                corners_m.push_back(joint.x_m);
            }
        }
        for (const core::LaidBoard& board : m_elevation.boards) {
            for (const double corner_m : corners_m) {
                if (!board.stands && m_window.shows(corner_m)) {
                    draw_mitre(board, corner_m);
                }
            }
        }
    }

    void draw_mitre(const core::LaidBoard& board, double corner_m) {
        constexpr double stroke_mm = 1.3;
        const bool begins = std::abs(board.x_m - corner_m) < 1e-6;
        const bool ends = std::abs(board.x_m + board.length_m - corner_m) < 1e-6;
        if (begins || ends) {
            const PaperPoint corner = at({corner_m, board.z_m});
            const double high_mm = std::min(stroke_mm, 1000 * board.width_m / m_view.scale);
            m_view.line(
                Ink::mitre,
                {corner, {corner.x_mm + (begins ? high_mm : -high_mm), corner.y_mm - high_mm}});
        }
    }

    /// A chain of dimensions over the window at the stations that it shows.
    void chain(std::vector<double> stations_m, double& y_mm) {
        std::erase_if(stations_m, [&](double station_m) {
            return station_m <= m_window.from_m + 1e-9 || station_m >= m_window.to_m - 1e-9;
        });
        stations_m.push_back(m_window.from_m);
        stations_m.push_back(m_window.to_m);
        std::ranges::sort(stations_m);
        const auto from = stations_m.begin();
        stations_m.erase(std::unique(from, stations_m.end(),
                                     [](double one, double other) { return other - one < 1e-6; }),
                         stations_m.end());
        y_mm += chain_mm;
        y_mm += draw_chain({stations_m, y_mm, left_mm, m_view.scale}, m_system, m_view);
    }

    void draw_dimensions() {
        if (m_window.first) {
            draw_upright({left_mm - 1.6, y_of(left_height_m(m_elevation)), m_bottom_mm,
                          left_height_m(m_elevation)},
                         m_system, m_view);
        }
        if (m_window.last && ends_differ(m_elevation)) {
            draw_upright({x_of(m_elevation.length_m) + step_mm - 1,
                          y_of(right_height_m(m_elevation)), m_bottom_mm,
                          right_height_m(m_elevation)},
                         m_system, m_view);
        }
        double y_mm = m_bottom_mm + overshoot_mm - 0.8;
        std::vector<double> edges_m;
        for (const core::DrawnOpening& opening : m_elevation.openings) {
            edges_m.push_back(opening.x_m);
            edges_m.push_back(opening.x_m + opening.width_m);
        }
        if (!edges_m.empty()) {
            chain(edges_m, y_mm);
        }
        std::vector<double> joints_m;
        for (const core::FaceJoint& joint : m_elevation.joints) {
            joints_m.push_back(joint.x_m);
        }
        if (!joints_m.empty()) {
            chain(joints_m, y_mm);
        }
        chain({}, y_mm);
        m_view.height_mm = y_mm;
    }

    const Elevation& m_elevation;
    Window m_window;
    bool m_turns_at_ends;
    UnitSystem m_system;
    View m_view;
    WordRows m_labels;
    std::vector<Label> m_placed;
    double m_top_mm = 0;
    double m_bottom_mm = 0;
};

} // namespace

int views_needed(const Elevation& elevation, double scale, double most_width_mm) {
    const double most_m = (most_width_mm - margins_mm(elevation)) * scale / 1000;
    return std::max(1, static_cast<int>(std::ceil(elevation.length_m / most_m - 1e-9)));
}

std::vector<View> elevation_views(const Elevation& elevation, const FaceLook& look) {
    std::vector<View> views;
    for (const Window& window : windows_of(elevation, look.scale, look.most_width_mm)) {
        views.push_back(FaceDrawing{elevation, window, look}.draw());
    }
    return views;
}

} // namespace boardmark::report
