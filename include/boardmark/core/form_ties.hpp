#pragma once

#include <boardmark/core/check.hpp>
#include <boardmark/core/form_pressure.hpp>

#include <optional>
#include <vector>

namespace boardmark::core {

/// Rows of ties in a form.
struct TieGrid {
    std::vector<double> row_heights_m; ///< above the bottom of the concrete, increasing, ≥ 0
    double column_spacing_m;           ///< > 0
};

/// Rows at one spacing, from the height of the lowest up to the top of the concrete.
struct EvenRows {
    double first_m;
    double spacing_m; ///< > 0
    double top_m;
};
std::vector<double> row_heights(EvenRows rows);

/// What the ties of one row carry. The load to design for is `load_kn`: the highest pressure of the
/// strip on all of its area, the safe side.
struct TieRowLoad {
    double height_m; ///< above the bottom of the concrete
    double depth_m;  ///< below its top
    double strip_m;  ///< height of form that the row holds
    double area_m2;  ///< of form that one tie holds
    double average_kpa;
    double highest_kpa;
    double average_load_kn;
    double load_kn;
};

/// The load of each row that stands in concrete; a row holds the form halfway to its neighbours,
/// the lowest down to the bottom, the highest up to the top.
std::vector<TieRowLoad> tie_loads(const FormPressure& pressure, const TieGrid& grid);

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

/// Ties of one working load, each holding one area.
struct TieCapacity {
    double working_kn;
    double area_m2; ///< > 0
};

/// The pressure that they bear: what allowable_rise asks for.
double pressure_of_ties_kpa(TieCapacity capacity);

/// `forms.tie`: the hardest loaded row against the rating; not checked without rating or rows.
Check tie_check(const FormPressure& pressure, const TieGrid& grid,
                const std::optional<TieRating>& rating, const Tables& tables);

/// `forms.pressure`: the greatest pressure against what the form is designed for, where stated.
Check form_pressure_check(const FormPressure& pressure, std::optional<double> design_kpa,
                          const Tables& tables);

} // namespace boardmark::core
