#pragma once

#include <boardmark/core/basis/source.hpp>
#include <boardmark/core/method/method_tables.hpp>

#include <vector>

namespace boardmark::core {

/// Age for which the method's table of strengths holds.
constexpr double strength_table_age_d = 28;

/// A strength and its ratio in one column of the table.
struct StrengthPoint {
    double strength_mpa;
    double w_cm;
    bool continues; ///< a row of another work that carries on
    const Source* source;
};

/// The column for air-entrained or plain concrete, increasing strength; gaps are left out.
std::vector<StrengthPoint> strength_column(const std::vector<StrengthRow>& rows,
                                           bool air_entrained);

} // namespace boardmark::core
