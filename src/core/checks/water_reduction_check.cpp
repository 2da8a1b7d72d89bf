#include "../basis/phrases.hpp"
#include "checks.hpp"

namespace boardmark::core {

/// A reduction without its dose is an assumption: nobody's data say it of this dose.
void check_water_reduction(const CheckContext& context, Findings& findings) {
    for (const Ingredient* admixture : of_role(context.proportions, Role::admixture)) {
        const AdmixtureFigures& figures = admixture->material->admixture;
        if (!figures.reduction_dose_assumed || figures.water_reduction.empty()) {
            continue;
        }
        const double percent = figures.water_reduction.front().percent;
        findings.add({.id = check_ids::water_reduction,
                      .verdict = Verdict::watch,
                      .value = percent,
                      .measure = Measure::percent},
                     [&](Check& told) {
                         told.requirement = "product data";
                         told.message = {"{name}: the water reduction of {value} is stated without "
                                         "its dose and taken at the dose of this mix: the product "
                                         "data sheet has the dose; write 'water_reduction' by dose",
                                         {word("name", std::string{admixture->name}),
                                          percent_of("value", percent)}};
                     });
    }
}

} // namespace boardmark::core
