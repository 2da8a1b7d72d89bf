#pragma once

#include <boardmark/core/study/comparison.hpp>

#include <vector>

namespace boardmark::core {

struct Tables;

/// What must be said of a column beside its figures: strength beyond need, the push on the forms,
/// flow that slump does not measure, heat.
std::vector<Phrase> remarks_on(const ComparedMix& column, const Requirements& asked,
                               const Tables& tables);

} // namespace boardmark::core
