#pragma once

#include <boardmark/core/basis/optional_number.hpp>
#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/checks/finding.hpp>
#include <boardmark/core/mix/complete_mix.hpp>

#include <vector>

namespace boardmark::core {

struct Tables;

/// In what a mix of a study leaves the concrete that the own strengths were found with.
struct LeftStrengths {
    bool shares = false; ///< other ones of the cementitious material
    bool air = false;    ///< more of it, which weakens

    bool any() const { return shares || air; }
};

/// The own strengths of a mix as written: they are of its shares and, where no results file tells
/// the air of its batches, of its air.
class OwnStrengths {
public:
    /// @param written must outlive it
    OwnStrengths(const CompleteMix& written, const Tables& tables);

    LeftStrengths left_by(const Mix& studied) const;

private:
    const Mix& written_;
    OptionalNumber air_percent_ = {};
};

/// What holds by those strengths is a watch then.
void watch_own_strengths(std::vector<Finding>& findings);
void watch_own_strengths(std::vector<Check>& checks, const LeftStrengths& left);

} // namespace boardmark::core
