#pragma once

#include <boardmark/core/mix/any_mix.hpp>

namespace boardmark::core {

/// What is asked of a mix that passed the door, so that its words are known to the tables. It
/// refers to the mix, which must outlive it.
class CompleteRequirements {
public:
    CompleteRequirements(const CompleteMix& mix)
        : requirements_{mix->requirements} {}
    CompleteRequirements(const CompleteSubmittedMix& mix)
        : requirements_{mix->requirements} {}
    CompleteRequirements(const AnyCompleteMix& mix)
        : requirements_{requirements_of(mix)} {}

    operator const Requirements&() const { return requirements_; }

private:
    const Requirements& requirements_;
};

} // namespace boardmark::core
