#include <boardmark/report/mix/mix_report.hpp>

#include "../writing/json_values.hpp"
#include "aggregate_flow.hpp"
#include "code_matrix.hpp"

namespace boardmark::report {
std::string json(const MixResult& result) {
    const core::Proportions& proportions = result.proportions;
    Json object =
        json_heading(result.command, result.title, core::verdicts_of(result.checks), result.inputs);
    object["method"] = proportions.method.empty() ? Json(nullptr) : Json(proportions.method);
    object["selection"] = json_of(proportions.selection);
    object["selection"]["mixture_temperature_c"] =
        number_or_null(proportions.temperature ? proportions.temperature->mixed_c : std::nullopt);
    object["ingredients"] = json_of(proportions.ingredients);
    object["totals"] = json_of(proportions.totals);
    object["checks"] = json_of(result.checks);
    if (result.aggregate) {
        object["aggregate"] = json_of_aggregate(result);
    }
    if (!result.codes.empty()) {
        object["codes"] = json_of(result.codes);
    }
    object["steps"] = json_of(proportions.worksheet.steps);
    object["cautions"] = json_of(proportions.worksheet.cautions);
    return written(object);
}

} // namespace boardmark::report
