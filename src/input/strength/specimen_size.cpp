#include "specimen_size.hpp"

#include <boardmark/units/quantity.hpp>

namespace boardmark::input {
namespace {

constexpr double least_mm = 40;
constexpr double most_mm = 700;

std::optional<double> read_length_mm(std::string_view text) {
    const auto reading = units::read_quantity(text);
    const auto* quantity = std::get_if<units::Quantity>(&reading);
    const bool sound = quantity && quantity->unit->dimension == units::Dimension::length &&
                       quantity->inside() >= least_mm && quantity->inside() <= most_mm;
    return sound ? std::optional{quantity->inside()} : std::nullopt;
}

} // namespace

std::optional<core::SpecimenSize> read_specimen_size(std::string_view text) {
    constexpr std::string_view cube = "cube ";
    constexpr std::string_view cylinder = "cylinder ";
    constexpr std::string_view by = " x ";
    if (text.starts_with(cube)) {
        const auto edge = read_length_mm(text.substr(cube.size()));
        return edge ? std::optional{core::SpecimenSize{core::SpecimenShape::cube, *edge, *edge}}
                    : std::nullopt;
    }
    const std::size_t between = text.find(by);
    if (!text.starts_with(cylinder) || between == std::string_view::npos) {
        return std::nullopt;
    }
    const auto width = read_length_mm(text.substr(cylinder.size(), between - cylinder.size()));
    const auto height = read_length_mm(text.substr(between + by.size()));
    return width && height && *height > *width
               ? std::optional{core::SpecimenSize{core::SpecimenShape::cylinder, *width, *height}}
               : std::nullopt;
}

} // namespace boardmark::input
