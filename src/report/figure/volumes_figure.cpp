#include "volumes_figure.hpp"

#include "../writing/names.hpp"
#include "../writing/quantity_format.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::report {
namespace {

constexpr int width = 560;
constexpr double left = 196;
constexpr double right = 470;
constexpr double row_height = 26;
constexpr double bar_height = 16;
constexpr double top = 12;
constexpr double gap = 8;
constexpr double baseline = 12.5; // of letters in a bar's row

/// The bars of a figure: each begins where the one above it ends.
class Cascade {
public:
    Cascade(Figure& figure, double whole_m3)
        : figure_(figure)
        , whole_m3_(whole_m3) {}

    void add(const std::string& name, double m3, const std::string& amount, bool odd) {
        const double from = x_of(sum_m3_);
        sum_m3_ += m3;
        const double to = std::max(x_of(sum_m3_), from + 1); // the smallest stays to be seen
        figure_.strokes.push_back(
            {fmt::format("{0:.1f},{2:.1f} {1:.1f},{2:.1f} {1:.1f},{3:.1f} {0:.1f},{3:.1f}", from,
                         to, y_, y_ + bar_height),
             odd ? "band" : "band2", true});
        figure_.labels.push_back({coordinate(left - gap), coordinate(y_ + baseline), name, "end"});
        figure_.labels.push_back(
            {coordinate(width - gap), coordinate(y_ + baseline), amount, "end"});
        y_ += row_height;
        figure_.height = static_cast<int>(y_ + top);
    }

private:
    double x_of(double m3) const { return left + (right - left) * m3 / whole_m3_; }

    Figure& figure_;
    double whole_m3_;
    double sum_m3_ = 0;
    double y_ = top;
};

} // namespace

Flow volumes_figure(const core::Proportions& proportions, core::UnitSystem system) {
    if (!proportions.totals.volume_m3) {
        return {};
    }
    Figure figure{.caption = "Absolute volumes of the ingredients, as they add up to the concrete.",
                  .width = width,
                  .height = 0};
    Cascade cascade{figure, *proportions.totals.volume_m3};
    bool odd = false;
    for (const core::Ingredient& ingredient : proportions.ingredients) {
        if (ingredient.volume_m3.value_or(0) <= 0) {
            continue;
        }
        odd = !odd;
        cascade.add(column_name(std::string{ingredient.name}), *ingredient.volume_m3,
                    shown({*ingredient.volume_m3, core::Measure::absolute_volume}, system), odd);
    }
    return Block{figure};
}

} // namespace boardmark::report
