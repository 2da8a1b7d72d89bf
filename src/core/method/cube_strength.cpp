#include "cube_strength.hpp"

#include "../basis/phrases.hpp"

namespace boardmark::core {

Outcome<double> specified_cube_mpa(const Requirements& requirements, const std::string& method) {
    if (requirements.specimen == Specimen::cube) {
        return requirements.strength_mpa; // and so are the trials beside it
    }
    return Unresolved{{"{method} designs for the strength of cubes; the file states {strength} of "
                       "cylinders, and one is never turned into the other",
                       {word("method", method),
                        quantity("strength", {requirements.strength_mpa, Measure::strength})}},
                      {{"state the strength of cubes ('requirements.specimen: cube')", {}},
                       {"name a class that pairs the two ('requirements.strength: C30/37'), or one "
                        "of cubes ('M40')",
                        {}}}};
}

} // namespace boardmark::core
