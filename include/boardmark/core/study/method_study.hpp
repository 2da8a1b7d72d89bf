#pragma once

#include <boardmark/core/study/comparison.hpp>

#include <string>
#include <vector>

namespace boardmark::core {

struct Tables;

/// A method and the tables that it is worked with.
struct MethodOfStudy {
    Method method;
    const Tables* tables;
};

/// One set of materials and requirements by each method, each a column under the method's name.
/// Selections that are another method's are left out; a column that cannot be made says why.
std::vector<ComparedMix> by_methods(const CompleteMix& mix,
                                    const std::vector<MethodOfStudy>& methods);

/// How far the columns that could be made lie apart, and what makes the methods differ.
std::vector<Phrase> spread_of_methods(const std::vector<ComparedMix>& columns);

} // namespace boardmark::core
