#include "../basis/phrases.hpp"
#include "checks.hpp"

namespace boardmark::core {

/// A reduction without its dose is an assumption: nobody's data say it of this dose.
Checks check_water_reduction(const CheckContext& context) {
    Checks checks;
    for (const Ingredient* admixture : of_role(context.proportions, Role::admixture)) {
        const AdmixtureFigures& figures = admixture->material->admixture;
        if (!figures.reduction_dose_assumed || figures.water_reduction.empty()) {
            continue;
        }
        checks.push_back(
            {.id = "water.reduction",
             .verdict = Verdict::watch,
             .value = figures.water_reduction.front().percent,
             .measure = Measure::percent,
             .requirement = "product data",
             .message = {
                 "{name}: a water reduction of {value} stands without its dose and is taken "
                 "at the dose of this mix: the product data sheet has it; write "
                 "'water_reduction' by dose",
                 {word("name", admixture->name),
                  quantity("value",
                           {figures.water_reduction.front().percent, Measure::percent})}}});
    }
    return checks;
}

} // namespace boardmark::core
