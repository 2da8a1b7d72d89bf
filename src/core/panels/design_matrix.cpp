#include "design_matrix.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace boardmark::core {
namespace {

constexpr double no_pivot = 1e-9; // entries are whole numbers: what is this small is zero

std::vector<double> columns_of(int level, int levels) {
    std::vector<double> columns;
    append_level(level, levels, columns);
    return columns;
}

std::vector<double> difference(int one, int other, int levels) {
    std::vector<double> columns = columns_of(one, levels);
    const std::vector<double> subtracted = columns_of(other, levels);
    for (std::size_t i = 0; i < columns.size(); ++i) {
        columns[i] -= subtracted[i];
    }
    return columns;
}

std::vector<double> products(const std::vector<double>& first, const std::vector<double>& second) {
    std::vector<double> all;
    for (const double left : first) {
        for (const double right : second) {
            all.push_back(left * right);
        }
    }
    return all;
}

std::size_t width_of(int levels) {
    return static_cast<std::size_t>(levels - 1);
}

/// The differences of every two levels of a factor.
std::vector<std::vector<double>> differences(int levels) {
    std::vector<std::vector<double>> all;
    for (int other = 0; other < levels; ++other) {
        for (int one = other + 1; one < levels; ++one) {
            all.push_back(difference(one, other, levels));
        }
    }
    return all;
}

std::size_t row_of_largest(const PanelMatrix& matrix, std::size_t column, std::size_t from) {
    std::size_t largest = from;
    for (std::size_t row = from; row < matrix.size(); ++row) {
        if (std::abs(matrix[row][column]) > std::abs(matrix[largest][column])) {
            largest = row;
        }
    }
    return largest;
}

void subtract(const std::vector<double>& pivot, double factor, std::vector<double>& row) {
    for (std::size_t i = 0; i < row.size(); ++i) {
        row[i] -= factor * pivot[i];
    }
}

/// Columns' products, the unit matrix beside them.
PanelMatrix products_beside_unit(const PanelMatrix& matrix) {
    const std::size_t size = matrix.front().size();
    PanelMatrix both(size, std::vector<double>(2 * size, 0.0));
    for (std::size_t i = 0; i < size; ++i) {
        for (std::size_t j = i; j < size; ++j) {
            double sum = 0;
            for (const std::vector<double>& row : matrix) {
                sum += row[i] * row[j];
            }
            both[i][j] = sum;
            both[j][i] = sum;
        }
        both[i][size + i] = 1;
    }
    return both;
}

} // namespace

void append_level(int level, int levels, std::vector<double>& columns) {
    for (int column = 0; column + 1 < levels; ++column) {
        columns.push_back(level + 1 == levels ? -1.0 : level == column ? 1.0 : 0.0);
    }
}

void append_pair(const PanelRow& row, const PanelPair& pair, const PanelAsk& ask,
                 std::vector<double>& columns) {
    const auto of = [&](std::size_t factor) { return columns_of(row[factor], ask.levels[factor]); };
    const std::vector<double> all = products(of(pair.first), of(pair.second));
    columns.insert(columns.end(), all.begin(), all.end());
}

PanelMatrix design_matrix(const std::vector<PanelRow>& rows, const PanelAsk& ask) {
    PanelMatrix matrix;
    for (const PanelRow& row : rows) {
        std::vector<double>& columns = matrix.emplace_back(std::vector<double>{1.0});
        for (std::size_t factor = 0; factor < row.size(); ++factor) {
            append_level(row[factor], ask.levels[factor], columns);
        }
        for (const PanelPair& pair : ask.pairs) {
            append_pair(row, pair, ask, columns);
        }
    }
    return matrix;
}

int rank_of(PanelMatrix matrix) {
    std::size_t rank = 0;
    const std::size_t columns = matrix.empty() ? 0 : matrix.front().size();
    for (std::size_t column = 0; column < columns && rank < matrix.size(); ++column) {
        const std::size_t largest = row_of_largest(matrix, column, rank);
        if (std::abs(matrix[largest][column]) < no_pivot) {
            continue;
        }
        std::swap(matrix[rank], matrix[largest]);
        for (std::size_t row = rank + 1; row < matrix.size(); ++row) {
            subtract(matrix[rank], matrix[row][column] / matrix[rank][column], matrix[row]);
        }
        ++rank;
    }
    return static_cast<int>(rank);
}

bool inverse_of_products(const PanelMatrix& matrix, PanelMatrix& inverse) {
    PanelMatrix both = products_beside_unit(matrix);
    const std::size_t size = both.size();
    for (std::size_t column = 0; column < size; ++column) {
        const std::size_t largest = row_of_largest(both, column, column);
        if (std::abs(both[largest][column]) < no_pivot) {
            return false;
        }
        std::swap(both[column], both[largest]);
        const double pivot = both[column][column];
        for (double& entry : both[column]) {
            entry /= pivot;
        }
        for (std::size_t row = 0; row < size; ++row) {
            if (row != column && both[row][column] != 0) {
                subtract(both[column], both[row][column], both[row]);
            }
        }
    }
    inverse.assign(size, {});
    for (std::size_t row = 0; row < size; ++row) {
        inverse[row].assign(both[row].begin() + static_cast<std::ptrdiff_t>(size), both[row].end());
    }
    return true;
}

std::vector<EffectContrast> contrasts_of(std::size_t factor, const PanelAsk& ask) {
    std::size_t begin = 1;
    for (std::size_t before = 0; before < factor; ++before) {
        begin += width_of(ask.levels[before]);
    }
    std::vector<EffectContrast> all;
    for (auto& columns : differences(ask.levels[factor])) {
        all.push_back({begin, std::move(columns)});
    }
    return all;
}

std::vector<EffectContrast> contrasts_of_pair(std::size_t place, const PanelAsk& ask) {
    std::size_t begin = 1;
    for (const int levels : ask.levels) {
        begin += width_of(levels);
    }
    for (std::size_t before = 0; before < place; ++before) {
        begin += width_of(ask.levels[ask.pairs[before].first]) *
                 width_of(ask.levels[ask.pairs[before].second]);
    }
    const PanelPair& pair = ask.pairs[place];
    std::vector<EffectContrast> all;
    for (const auto& first : differences(ask.levels[pair.first])) {
        for (const auto& second : differences(ask.levels[pair.second])) {
            std::vector<double> columns = products(first, second);
            for (double& column : columns) {
                column /= 2; // half the difference of two differences
            }
            all.push_back({begin, std::move(columns)});
        }
    }
    return all;
}

double variance_of(const EffectContrast& contrast, const PanelMatrix& inverse) {
    double variance = 0;
    for (std::size_t i = 0; i < contrast.columns.size(); ++i) {
        for (std::size_t j = 0; j < contrast.columns.size(); ++j) {
            variance += contrast.columns[i] * contrast.columns[j] *
                        inverse[contrast.begin + i][contrast.begin + j];
        }
    }
    return variance;
}

} // namespace boardmark::core
