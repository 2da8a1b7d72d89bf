#pragma once

#include "checks.hpp"

#include <optional>

namespace boardmark::core {

/// A slump that the doses of a mix do not bring, or are not known to bring.
struct DosedSlump {
    const Ingredient* reducer;        ///< whose dose it is
    std::optional<double> reached_mm; ///< with that dose; absent where its data do not tell
};

/// Nothing where the data of each water reducer bring the slump at its dose, as near as slump is
/// read.
std::optional<DosedSlump> slump_in_doubt(const CheckContext& context);

/// Says so of the slump {asked}.
void append_slump_doubt(const DosedSlump& doubt, Phrase& message);

} // namespace boardmark::core
