#pragma once

#include <boardmark/core/basis/unresolved.hpp>
#include <boardmark/core/mix/mix.hpp>
#include <boardmark/core/mix/proportions.hpp>

#include <optional>

namespace boardmark::core {

struct Tables;

/// Adds coarse and fine aggregate by the fine aggregate's share, 0–1, of the volume that is left.
std::optional<Unresolved> add_by_share_of_volume(const Mix& mix, double fine_share,
                                                 const Tables& tables,
                                                 std::vector<Ingredient>& ingredients);

/// The same by the share that the file states or its blend has, recorded.
std::optional<Unresolved> add_by_stated_share(const Mix& mix, const Tables& tables,
                                              Proportions& proportions);

} // namespace boardmark::core
