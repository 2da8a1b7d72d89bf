#include "findings.hpp"

namespace boardmark::core {

Check& Findings::open(const Finding& finding) {
    told_->push_back({.id = finding.id,
                      .verdict = finding.verdict,
                      .value = finding.value,
                      .limit = finding.limit.is_any() ? std::optional{finding.limit} : std::nullopt,
                      .measure = finding.measure,
                      .requirement = {}});
    return told_->back();
}

} // namespace boardmark::core
