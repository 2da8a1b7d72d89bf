#include <boardmark/core/mix/requirements.hpp>

#include <utility>

namespace boardmark::core {

std::optional<Requirements> restated_by(Specimen specimen, const Requirements& requirements) {
    if (requirements.specimen == specimen) {
        return requirements;
    }
    if (!requirements.twin_strength_mpa) {
        return std::nullopt;
    }
    Requirements restated = requirements;
    restated.specimen = specimen;
    std::swap(restated.strength_mpa, *restated.twin_strength_mpa);
    restated.records.reset();
    restated.strength_curve.clear();
    restated.strength_line.reset();
    restated.average.reset();
    return restated;
}

} // namespace boardmark::core
