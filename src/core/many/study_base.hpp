#pragma once

#include <boardmark/core/basis/phrase.hpp>
#include <boardmark/core/mix/complete_mix.hpp>

#include <optional>

namespace boardmark::core {

struct Tables;

/// The mix as written, to be changed by a study: it holds for which water and ratio its readings of
/// charts were taken. As it is where no mix follows from it.
Mix study_base(const CompleteMix& mix, const Tables& tables);

/// What is to be told of a mix of other coarse shares than those on which the file's dry-rodded
/// density was measured; nothing where it still is the measured one.
std::optional<Phrase> leaves_blend_density(const Mix& written, const Mix& studied);

} // namespace boardmark::core
