#pragma once

#include <boardmark/core/wall/cast_part.hpp>
#include <boardmark/core/wall/wall_cover.hpp>
#include <boardmark/core/wall/wall_plan.hpp>

namespace boardmark::core {

/// `size.form` of each part: the largest stone against the narrowest between its forms and against
/// the depth of its slab, whichever asks for less.
void check_stone_in_parts(const std::vector<CastPart>& parts, double size_mm, const Tables& tables,
                          std::vector<Check>& checks);

/// `section.agrees`: whether the mix was asked for a section that the thinnest part, its bars and
/// their cover have.
Check check_section_of_mix(const Wall& wall, const std::vector<CastPart>& parts);

/// `cover.least` of a face, where bars that are not stated count as large and a relief that is not
/// stated leaves the answer open.
Check check_part_cover(const Reinforcement& bars, FaceExposure exposure, const Wall& wall,
                       const Tables& tables);

/// Footings and benches, which are low: cover, the lift, the full head of the concrete on the sides
/// of their forms.
void check_low_parts(const Wall& wall, const std::vector<CastPart>& parts,
                     const Proportions& proportions, const Tables& tables,
                     std::vector<Check>& checks);

/// Adds a `not checked` with the key or the paper that is missing for everything that a part's
/// verdict needs and that has no check yet.
void add_missing_checks(const Wall& wall, const std::vector<CastPart>& parts,
                        std::vector<Check>& checks);

/// What stands for the evaporation and for the trucks' time where the file does not say enough.
Check missing_evaporation();
Check missing_trucks(const Wall& wall);

} // namespace boardmark::core
