#pragma once

#include <boardmark/core/many/sweep.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::report {

/// A value of a variable with its unit, rounded as the trade rounds, and finer where steps are.
std::string variable_text(const core::Variable& variable, double value, core::UnitSystem system);

/// "dose.reducer, fl oz/cwt"
std::string variable_axis(const core::Variable& variable, core::UnitSystem system);

/// A value of a variable in the unit of a spreadsheet or a figure.
double variable_amount(const core::Variable& variable, double value, core::UnitSystem system);

/// Its unit, "1" for plain numbers.
std::string variable_unit(const core::Variable& variable, core::UnitSystem system);

/// What a point comes to: its verdict with what fails, or why there is no mix.
std::string verdict_words(const core::SweepPoint& point, core::UnitSystem system);

/// Why there is no mix, in one line.
std::string reason_words(const core::SweepPoint& point, core::UnitSystem system);

/// What a figure of a sweep shows upright.
struct SweptFigure {
    std::string name;      ///< "cementitious materials"
    std::string unit;      ///< "lb/yd3", "USD/yd3"
    core::Measure measure; ///< money for a cost
    std::optional<double> (*of)(const core::SweptMix&);
    const core::PartialSum* (*sum_of)(const core::SweptMix&); ///< behind it; nullptr: it is none

    /// Whether a price or an amount is missing in it.
    bool is_at_least(const core::SweptMix& mix) const {
        const core::PartialSum* sum = sum_of(mix);
        return sum && !sum->is_whole();
    }
};

/// Binder, cost and carbon, as far as a point has them.
std::vector<SweptFigure> swept_figures(const core::Sweep& sweep, core::UnitSystem system);

/// A value of a figure in its unit.
double swept_amount(const SweptFigure& figure, double value, core::UnitSystem system);

} // namespace boardmark::report
