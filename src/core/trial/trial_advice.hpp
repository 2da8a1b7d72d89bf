#pragma once

#include <boardmark/core/basis/phrase.hpp>
#include <boardmark/core/trial/yield.hpp>

#include <vector>

namespace boardmark::core {

struct Tables;

/// What the tests of a trial ask to do or to think of, beside what its next amounts say.
std::vector<Phrase> advice_on_tests(const Trial& trial, const Yield& yield,
                                    const Proportions& designed, const Tables& tables);

} // namespace boardmark::core
