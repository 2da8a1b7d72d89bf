#pragma once

#include <boardmark/core/mix/complete_mix.hpp>

namespace boardmark::core {

struct Tables;

/// The mix as written, to be changed by a study: it holds for which water and ratio its readings of
/// charts were taken. As it is where no mix follows from it.
Mix study_base(const CompleteMix& mix, const Tables& tables);

} // namespace boardmark::core
