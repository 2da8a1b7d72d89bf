#pragma once

#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/mix/mix.hpp>

#include <optional>
#include <string_view>

namespace boardmark::core {

/// What a rate of rise comes from.
enum class RiseBy { stated, output };

/// "stated", "output".
std::string_view name_of(RiseBy by);

/// How fast concrete rises in one form. Where both a rate and an output are known the pressure goes
/// by the faster of the two; what waits for concrete, lifts and trucks, goes by the slower.
struct FormRise {
    double smallest_plan_m2;                     ///< of the form, over its height; > 0
    std::optional<double> stated_m_h = {};       ///< > 0
    std::optional<double> output_m3_h = {};      ///< into this form, > 0
    std::optional<double> smallest_part_m2 = {}; ///< that may be filled by itself; > 0

    /// What the output makes of the smallest plan area.
    std::optional<double> by_output_m_h() const;

    /// What it makes of a part that the crew fills by itself, where it can and that is faster than
    /// the pressure counts with.
    std::optional<double> alone_m_h() const;

    /// The rate that the pressure counts with; nothing where neither is known.
    std::optional<double> fastest_m_h() const;

    /// Which of the two that is.
    std::optional<RiseBy> by() const;

    /// The output that keeps the stated rate where the form is narrowest.
    std::optional<double> keeps_m3_h() const;
};

/// `placing.rise`: fails where the output fills the form faster than the stated rate, compared at
/// 0.1 ft/h or 0.05 m/h. Nothing where an output alone is stated: the rate is then its own.
std::optional<Check> rise_check(const FormRise& rise, UnitSystem system);

} // namespace boardmark::core
