#include "findings.hpp"

#include <algorithm>
#include <cassert>
#include <iterator>

namespace boardmark::core {
namespace {

CheckId id_named(std::string_view name) {
    using namespace check_ids;
    for (const CheckId id :
         {w_cm_exposure, strength_exposure, air_exposure, scm_fly_ash, scm_slag_cement,
          scm_silica_fume, scm_total, scm_ash_and_fume, cement_sulfate, chloride_sulfate,
          exposure_stated, exposure_consistent, exposure_site, aggregate_reactivity}) {
        if (id.name() == name) {
            return id;
        }
    }
    assert(false);
    return exposure_stated;
}

} // namespace

void Findings::take(std::vector<Check> checks) {
    if (!verdicts_) {
        std::ranges::move(checks, std::back_inserter(*told_));
        return;
    }
    for (const Check& check : checks) {
        verdicts_->push_back(
            {id_named(check.id), check.verdict, check.value, check.limit, check.measure});
    }
}

Check& Findings::open(const Finding& finding) {
    told_->push_back({.id = finding.id,
                      .verdict = finding.verdict,
                      .value = finding.value,
                      .limit = finding.limit,
                      .measure = finding.measure,
                      .requirement = {}});
    return told_->back();
}

} // namespace boardmark::core
