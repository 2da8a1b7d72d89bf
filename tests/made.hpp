#pragma once

#include <boardmark/core/basis/outcome.hpp>

namespace boardmark::test {

/// The result, which a test counts on. Throws core::Unresolved where there is none.
template <class Result>
Result made(core::Outcome<Result> outcome) {
    if (!outcome) {
        throw outcome.why();
    }
    return *std::move(outcome);
}

} // namespace boardmark::test
