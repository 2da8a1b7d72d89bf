#pragma once

#include <boardmark/core/strength/control_chart.hpp>
#include <boardmark/core/strength/record_chart.hpp>
#include <boardmark/record/record.hpp>

#include "arguments.hpp"

#include <optional>
#include <string>
#include <vector>

namespace boardmark::commands {

/// The values of a chart that was asked for.
struct ChartedValues {
    core::ChartedName charted;
    std::optional<double> age_d; ///< of strengths
    std::string mix;             ///< may be empty
    std::string mix_title;       ///< where one was chosen
    std::vector<core::ChartPoint> points;
};

/// The values that the options ask for: of one quantity, one mix, at one age. Throws Failure where
/// there are none or it is not clear which.
ChartedValues charted_values(const record::Contents& contents, const Arguments& arguments);

} // namespace boardmark::commands
