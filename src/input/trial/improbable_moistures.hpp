#pragma once

#include <boardmark/core/mix/material.hpp>

#include "../reading/file_context.hpp"

#include <string>
#include <vector>

namespace boardmark::input {

/// The moisture of one aggregate as somebody stated it.
struct StatedMoisture {
    const core::Material* aggregate; ///< with its total moisture
    std::string told;                ///< "materials.sand.moisture: 6.0 %"
    const Node* node;                ///< where it stands; nullptr on the command line
    double percent;                  ///< as stated, in the basis of the material
};

/// Asks back moistures that stockpiles hardly have, each by itself and beside each other.
void ask_back_moistures(const FileContext& context, const std::vector<StatedMoisture>& stated);

} // namespace boardmark::input
