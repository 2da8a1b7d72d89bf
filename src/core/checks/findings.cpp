#include "findings.hpp"

namespace boardmark::core {

Check& Findings::open(const Finding& finding) {
    told_->push_back({.id = std::string{finding.id.name()},
                      .verdict = finding.verdict,
                      .value = finding.value,
                      .limit = finding.limit,
                      .measure = finding.measure,
                      .requirement = {}});
    return told_->back();
}

} // namespace boardmark::core
