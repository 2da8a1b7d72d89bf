#include <boardmark/core/trial/batching_tolerance.hpp>

namespace boardmark::core {

const TypicalFigure& batching_tolerance(Role role, const BatchingTolerances& tolerances) {
    switch (role) {
    case Role::water:
        return tolerances.water_percent;
    case Role::binder:
        return tolerances.binder_percent;
    case Role::admixture:
        return tolerances.admixture_percent;
    default:
        return tolerances.aggregate_percent;
    }
}

double batching_tolerance_kg(Role role, double kg, const BatchingTolerances& tolerances) {
    return kg * batching_tolerance(role, tolerances).value / 100;
}

} // namespace boardmark::core
