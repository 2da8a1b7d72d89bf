#pragma once

#include <boardmark/core/mix/material.hpp>

#include "../reading/file_context.hpp"

#include <string>

namespace boardmark::input {

/// Asks back a dose that its kind of admixture hardly has: millilitres typed for fluid ounces.
/// Pigments are left out.
///
/// @param written the figure, at whose place it is told
/// @param place the key that it stands under
/// @param dose_m3_kg product by mass of cementitious material
void ask_back_dose(const FileContext& context, const Parsed& written, const Path& place,
                   const core::Material& admixture, double dose_m3_kg);

/// A dose as volume of product, m3 by kg of cementitious material; without a relative density that
/// of water stands in.
double dose_m3_kg(const core::Material& admixture, const core::Dose& dose);

} // namespace boardmark::input
