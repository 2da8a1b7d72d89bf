#pragma once

#include <boardmark/core/panels/panel_design.hpp>

#include <vector>

namespace boardmark::core {

/// Rows of numbers, all of one length.
using PanelMatrix = std::vector<std::vector<double>>;

/// A level as columns that add up to zero over all levels: one column less than levels.
void append_level(int level, int levels, std::vector<double>& columns);

/// Products of the columns of two levels.
void append_pair(const PanelRow& row, const PanelPair& pair, const PanelAsk& ask,
                 std::vector<double>& columns);

/// The design matrix: mean, factors, asked pairs.
PanelMatrix design_matrix(const std::vector<PanelRow>& rows, const PanelAsk& ask);

/// Linearly independent rows of a matrix. Entries are whole numbers.
int rank_of(PanelMatrix matrix);

/// Inverse of the matrix's columns times its columns. Nothing where they are dependent.
bool inverse_of_products(const PanelMatrix& matrix, PanelMatrix& inverse);

/// A difference between two levels, or between two pairs of levels, in the columns of the matrix.
struct EffectContrast {
    std::size_t begin; ///< first of its columns
    std::vector<double> columns;
};

/// Of every two levels of a factor.
std::vector<EffectContrast> contrasts_of(std::size_t factor, const PanelAsk& ask);

/// Of every two levels of both factors of the asked pair at a place.
std::vector<EffectContrast> contrasts_of_pair(std::size_t place, const PanelAsk& ask);

/// Whether a variance is smaller by more than rounding; infinite ones are the largest.
inline bool clearly_smaller(double variance, double other) {
    constexpr double rounding = 1e-9;
    return variance < other - rounding;
}

/// Variance of a contrast over that of one panel.
double variance_of(const EffectContrast& contrast, const PanelMatrix& inverse);

} // namespace boardmark::core
