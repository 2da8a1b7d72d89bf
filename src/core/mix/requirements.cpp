#include <boardmark/core/mix/requirements.hpp>

namespace boardmark::core {

std::optional<double> strength_by(Specimen specimen, const Requirements& requirements) {
    return requirements.specimen == specimen ? std::optional{requirements.strength_mpa}
                                             : requirements.twin_strength_mpa;
}

} // namespace boardmark::core
