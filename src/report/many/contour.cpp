#include "contour.hpp"

#include <array>

namespace boardmark::report {
namespace {

struct Corner {
    PlotPoint at;
    double value;
};

PlotPoint between(const Corner& one, const Corner& other, double level) {
    const double part = (level - one.value) / (other.value - one.value);
    return {one.at.x + part * (other.at.x - one.at.x), one.at.y + part * (other.at.y - one.at.y)};
}

void add_piece(const std::array<std::optional<Corner>, 3>& triangle, double level,
               std::vector<ContourPiece>& pieces) {
    std::vector<PlotPoint> crossings;
    for (std::size_t i = 0; i < triangle.size(); ++i) {
        const auto& one = triangle[i];
        const auto& other = triangle[(i + 1) % triangle.size()];
        if (!one || !other) {
            return;
        }
        // A corner on the level counts as above it, so that each line crosses two sides or none.
        if ((one->value < level) != (other->value < level)) {
            crossings.push_back(between(*one, *other, level));
        }
    }
    if (crossings.size() == 2) {
        pieces.push_back({crossings[0], crossings[1]});
    }
}

} // namespace

std::vector<ContourPiece> contour(const ContourGrid& grid, double level) {
    const auto corner = [&](std::size_t x, std::size_t y) -> std::optional<Corner> {
        const auto& value = grid.values[x * grid.upright.size() + y];
        return value ? std::optional{Corner{{grid.across[x], grid.upright[y]}, *value}}
                     : std::nullopt;
    };
    std::vector<ContourPiece> pieces;
    for (std::size_t x = 0; x + 1 < grid.across.size(); ++x) {
        for (std::size_t y = 0; y + 1 < grid.upright.size(); ++y) {
            add_piece({corner(x, y), corner(x + 1, y), corner(x + 1, y + 1)}, level, pieces);
            add_piece({corner(x, y), corner(x + 1, y + 1), corner(x, y + 1)}, level, pieces);
        }
    }
    return pieces;
}

} // namespace boardmark::report
