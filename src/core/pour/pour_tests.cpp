#include "../basis/phrases.hpp"
#include "pour_case.hpp"

namespace boardmark::core {
namespace {

Argument count_of(const char* name, int count) {
    return quantity(name, {static_cast<double>(count), Measure::count});
}

Phrase every_load() {
    return {"every load", {}};
}

/// Of the first load and of that which fills the specimens.
PourTest density_test(const PourCase& pour) {
    return {.name = "density",
            .when = {"first load", {}},
            .asked = {.asked = pour.plan.proportions.totals.fresh_density_kg_m3},
            .measure = Measure::fresh_density};
}

PourTest strength_test(const PourCase& pour) {
    const AciAcceptance& rules = pour.tables.strength->aci;
    return {.name = "strength",
            .when = {"one a day at least", {}},
            .asked = {.low = pour.asked.strength_mpa},
            .measure = Measure::strength,
            .note = {pour.asked.specimen == Specimen::cube
                         ? "at {age}: {large} cubes; more beside the wall for stripping"
                         : "at {age}: {large} large or {small} small cylinders; more beside the "
                           "wall for stripping",
                     {count_of("large", rules.large_specimens),
                      count_of("small", rules.small_specimens),
                      quantity("age", {pour.asked.strength_age_d, Measure::age})}}};
}

} // namespace

std::vector<PourTest> pour_tests(const PourCase& pour) {
    const PourLimits& limits = pour.card.limits;
    return {{.name = "slump",
             .when = every_load(),
             .asked = limits.slump_mm,
             .measure = Measure::slump},
            {.name = "air",
             .when = every_load(),
             .asked = limits.air_percent,
             .measure = Measure::percent},
            {.name = "temperature",
             .when = every_load(),
             .asked = limits.concrete_c,
             .measure = Measure::temperature},
            density_test(pour),
            strength_test(pour)};
}

} // namespace boardmark::core
