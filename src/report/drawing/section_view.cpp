#include "section_view.hpp"

#include <boardmark/text/utf8.hpp>

#include "../writing/quantity_format.hpp"
#include "dimension.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::report {
namespace {

using core::UnitSystem;
using core::WallSection;

constexpr double heights_column_mm = 7;  // left: the height's dimension
constexpr double rod_mm = 2.5;           // what a tie stands out
constexpr double gap_mm = 9;             // from the section to the pressure
constexpr double pressure_width_mm = 38; // the highest pressure or rating
constexpr double load_words_mm = 17;

class SectionDrawing {
public:
    SectionDrawing(const WallSection& section, double scale, UnitSystem system)
        : m_section{section}
        , m_system{system}
        , m_view{.part = section.part, .scale = scale, .width_mm = 0, .height_mm = 0} {}

    View draw() && {
        double least_x_m = 0;
        double most_x_m = m_section.width_m;
        double lowest_m = 0;
        for (const core::DrawnPoint& point : m_section.footing) {
            least_x_m = std::min(least_x_m, point.x_m);
            most_x_m = std::max(most_x_m, point.x_m);
            lowest_m = std::min(lowest_m, point.z_m);
        }
        const double lifts_mm = m_section.lifts_m.empty() ? rod_mm : lift_words_mm();
        const double overhang_mm = -on_paper(least_x_m);
        const double words_mm = std::max(lifts_mm, overhang_mm);
        m_left_mm = heights_column_mm + words_mm;
        m_bottom_mm = title_mm + 8 + on_paper(m_section.height_m);
        m_view.origin = {m_left_mm, m_bottom_mm};
        m_right_mm = x_of(most_x_m);
        m_view.width_mm = m_right_mm + rod_mm + 1;
        write_title();
        draw_concrete();
        draw_lifts();
        draw_bars();
        draw_ties();
        draw_pressure();
        draw_dimensions(lowest_m);
        return std::move(m_view);
    }

private:
    double on_paper(double metres) const { return 1000 * metres / m_view.scale; }
    double x_of(double x_m) const { return m_left_mm + on_paper(x_m); }
    double y_of(double z_m) const { return m_bottom_mm - on_paper(z_m); }
    PaperPoint at(double x_m, double z_m) const { return {x_of(x_m), y_of(z_m)}; }
    std::string told(double value, core::Measure measure,
                     core::Keep keep = core::Keep::nearest) const {
        return shown({value, measure, keep}, m_system);
    }

    void write_title() {
        const std::string title = fmt::format("{}: section where it is highest, 1:{:g}",
                                              text::printable(m_section.part), m_view.scale);
        m_view.width_mm = std::max(m_view.width_mm, width_of_words_mm(title, title_mm));
        m_view.words(Ink::lettering, {0, title_mm}, title, Anchor::start, title_mm);
    }

    void draw_concrete() {
        for (const auto& [outline, ink] : {std::pair{&m_section.footing, Ink::footing},
                                           std::pair{&m_section.outline, Ink::concrete}}) {
            std::vector<PaperPoint> corners;
            for (const core::DrawnPoint& point : *outline) {
                corners.push_back(at(point.x_m, point.z_m));
            }
            if (corners.empty()) {
                continue;
            }
            m_view.area(ink, corners);
            corners.push_back(corners.front());
            m_view.line(Ink::frame, std::move(corners));
        }
    }

    std::string lift_words(int number, double lift_m) const {
        return fmt::format("lift {}: {}", number, dimension(lift_m, m_system));
    }

    /// Room left of the section for the longest of the lifts' words.
    double lift_words_mm() const {
        double widest_mm = 0;
        int number = 1;
        for (const double lift_m : m_section.lifts_m) {
            widest_mm =
                std::max(widest_mm, width_of_words_mm(lift_words(number++, lift_m), letter_mm));
        }
        return widest_mm + rod_mm + 1;
    }

    void draw_lifts() {
        double free_below_mm = m_bottom_mm;
        int number = 1;
        for (const double lift_m : m_section.lifts_m) {
            m_view.line(Ink::lift, {at(0, lift_m), at(m_section.width_m, lift_m)});
            const double y_mm = y_of(lift_m) + letter_mm / 3;
            if (y_mm < free_below_mm) {
                m_view.words(Ink::lettering, {m_left_mm - rod_mm - 1, y_mm},
                             lift_words(number, lift_m), Anchor::end);
                free_below_mm = y_mm - letter_mm - 0.6;
            }
            ++number;
        }
    }

    void draw_bars() {
        for (const core::StandingBar& bar : m_section.standing) {
            m_view.line(Ink::standing_bar, {at(bar.x_m, 0), at(bar.top_x_m, m_section.height_m)});
        }
        constexpr double least_mm = 0.35;
        for (const core::CutBar& bar : m_section.bars) {
            m_view.circle(Ink::bar, at(bar.x_m, bar.z_m),
                          std::max(least_mm, on_paper(bar.diameter_m) / 2));
        }
    }

    /// Thickness of what ties go through: the wall in front.
    double back_at(double z_m) const {
        const auto& outline = m_section.outline;
        constexpr std::size_t corners_of_slab = 4;
        if (outline.size() == corners_of_slab) {
            return outline[1].x_m + (outline[2].x_m - outline[1].x_m) * z_m / m_section.height_m;
        }
        return outline[outline.size() - 2].x_m;
    }

    void draw_ties() {
        for (const core::SectionTie& tie : m_section.ties) {
            PaperPoint from = at(0, tie.z_m);
            PaperPoint to = at(back_at(tie.z_m), tie.z_m);
            from.x_mm -= rod_mm;
            to.x_mm += rod_mm;
            m_view.line(Ink::tie, {from, to});
        }
    }

    double most_kpa() const {
        double most_kpa = m_section.form_rating_kpa.value_or(0);
        for (const core::PressureAt& point : m_section.pressure) {
            most_kpa = std::max(most_kpa, point.kpa);
        }
        return most_kpa;
    }

    void draw_pressure() {
        if (m_section.pressure.empty()) {
            return;
        }
        const double axis_mm = m_right_mm + gap_mm;
        const double per_kpa_mm = pressure_width_mm / most_kpa();
        std::vector<PaperPoint> envelope{{axis_mm, y_of(m_section.pressure.front().z_m)}};
        double highest_kpa = 0;
        for (const core::PressureAt& point : m_section.pressure) {
            envelope.push_back({axis_mm + per_kpa_mm * point.kpa, y_of(point.z_m)});
            highest_kpa = std::max(highest_kpa, point.kpa);
        }
        envelope.push_back({axis_mm, y_of(m_section.pressure.back().z_m)});
        m_view.area(Ink::pressure, envelope);
        const double top_mm = y_of(m_section.height_m);
        m_view.words(Ink::lettering, {axis_mm, m_bottom_mm + 3.4},
                     m_section.pressure_method + ": " +
                         told(highest_kpa, core::Measure::pressure, core::Keep::at_least));
        if (const auto rating_kpa = m_section.form_rating_kpa) {
            const double x_mm = axis_mm + per_kpa_mm * *rating_kpa;
            m_view.line(Ink::form_rating, {{x_mm, top_mm - 1}, {x_mm, m_bottom_mm}});
            m_view.words(Ink::lettering, {axis_mm + pressure_width_mm, top_mm - 1.8},
                         "forms " + told(*rating_kpa, core::Measure::pressure), Anchor::end);
        }
        write_loads(axis_mm);
        m_view.width_mm = std::max(m_view.width_mm, axis_mm + pressure_width_mm + load_words_mm);
    }

    void write_loads(double axis_mm) {
        double free_below_mm = m_bottom_mm + letter_mm;
        for (const core::SectionTie& tie : m_section.ties) {
            const double end_mm = axis_mm + pressure_width_mm;
            m_view.line(Ink::dimension, {{axis_mm, y_of(tie.z_m)}, {end_mm, y_of(tie.z_m)}});
            const double y_mm = y_of(tie.z_m) + letter_mm / 3;
            if (y_mm < free_below_mm) {
                m_view.words(Ink::lettering, {end_mm + 1, y_mm},
                             told(tie.load_kn, core::Measure::force, core::Keep::at_least));
                free_below_mm = y_mm - letter_mm - 0.6;
            }
        }
    }

    void draw_dimensions(double lowest_m) {
        draw_upright(
            {heights_column_mm - 1.5, y_of(m_section.height_m), m_bottom_mm, m_section.height_m},
            m_system, m_view);
        if (lowest_m < 0) {
            draw_upright({heights_column_mm - 1.5, m_bottom_mm, y_of(lowest_m), -lowest_m},
                         m_system, m_view);
        }
        const double top_m = back_at(m_section.height_m);
        m_view.words(Ink::lettering,
                     {x_of(0) + on_paper(top_m) / 2, y_of(m_section.height_m) - 1.2},
                     dimension(top_m, m_system), Anchor::middle);
        double y_mm = y_of(lowest_m) + 5;
        if (!m_section.footing.empty()) {
            y_mm += draw_chain({{m_section.footing[0].x_m, m_section.footing[1].x_m},
                                y_mm,
                                x_of(m_section.footing[0].x_m),
                                m_view.scale},
                               m_system, m_view);
        } else if (m_section.width_m - top_m > 1e-6) {
            y_mm +=
                draw_chain({{0, m_section.width_m}, y_mm, x_of(0), m_view.scale}, m_system, m_view);
        }
        m_view.height_mm = y_mm;
    }

    const WallSection& m_section;
    UnitSystem m_system;
    View m_view;
    double m_left_mm = 0;
    double m_right_mm = 0;
    double m_bottom_mm = 0;
};

} // namespace

View section_view(const WallSection& section, double scale, UnitSystem system) {
    return SectionDrawing{section, scale, system}.draw();
}

} // namespace boardmark::report
