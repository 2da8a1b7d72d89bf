#pragma once

#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/forms/form_pressure.hpp>
#include <boardmark/core/wall/tie_layout.hpp>

#include <optional>
#include <vector>

namespace boardmark::core {

/// What the hardest loaded tie of one row carries: the highest pressure of the form that it holds
/// on all of its area, the safe side.
struct TieRowLoad {
    double height_m; ///< above the bottom of the concrete
    double depth_m;  ///< below its top
    double strip_m;  ///< height of form that the row holds
    double area_m2;  ///< of form that the tie holds
    double highest_kpa;
    double load_kn;
    bool takes_over;                ///< form of a tie that an opening or a step leaves out
    std::vector<double> stations_m; ///< of all ties of the row
};

/// The load of each row, from the lowest up.
std::vector<TieRowLoad> tie_loads(const FormPressure& pressure, const TieLayout& layout);

/// The load of the hardest loaded tie; 0 without ties.
double hardest_tie_kn(const FormPressure& pressure, const TieLayout& layout);

/// Where tie loads come from, in one sentence: what the tributary area leaves out.
Phrase tie_load_remark();

/// One pressure on the area that one tie holds.
struct TieArea {
    double kpa;
    double area_m2;
};
double tie_load_kn(TieArea area);

/// What a tie is said to bear.
struct TieRating {
    double kn;             ///< > 0
    bool breaking = false; ///< a breaking load, not a working load
};

/// Its working load: a breaking load over the factor of safety.
double working_load_kn(TieRating rating, const Tables& tables);

/// A pressure on rows of ties that bear a load.
struct TieRows {
    double kpa;           ///< > 0
    double row_spacing_m; ///< > 0
    double working_kn;    ///< of one tie
};

/// The widest spacing along a row, rounded down to whole inches or 10 mm; nothing below one step.
std::optional<double> tie_spacing_m(TieRows rows, UnitSystem system);

/// `forms.tie`: the hardest loaded tie against the rating; not checked without rating or ties, or
/// where part of the form has none, or where rating, pressure or layout is no number above 0. What
/// the pressure or the places of openings assume makes a `watch` of it.
Check tie_check(const FormPressure& pressure, const TieLayout& layout,
                const std::optional<TieRating>& rating, const Tables& tables);

/// `forms.pressure`: the greatest pressure against what the form is designed for, where stated; not
/// checked where either is no number above 0.
/// What the pressure assumes makes a `watch` of it.
Check form_pressure_check(const FormPressure& pressure, std::optional<double> design_kpa,
                          const Tables& tables);

} // namespace boardmark::core
