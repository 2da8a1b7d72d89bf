#include <boardmark/report/strength/strength_report.hpp>
#include <boardmark/report/writing/words.hpp>
#include <boardmark/units/date.hpp>

#include "../writing/json_values.hpp"
#include "../writing/names.hpp"

namespace boardmark::report {
namespace {

Json date_or_null(std::optional<int> day) {
    return day ? Json(units::written_date(*day)) : Json(nullptr);
}

Json json_of(const core::StrengthTest& test) {
    Json specimens = Json::array();
    for (const core::CrushedSpecimen& specimen : test.specimens) {
        specimens.push_back({{"name", specimen.name}, {"strength_mpa", specimen.strength_mpa}});
    }
    const bool trial = test.batch.purpose == core::BatchPurpose::trial;
    return {{"batch", test.batch.name},
            {"purpose", trial ? "trial" : "production"},
            {"cast", date_or_null(test.batch.cast)},
            {"w_cm", number_or_null(test.batch.w_cm)},
            {"air_percent", number_or_null(test.batch.air_percent)},
            {"age_d", test.age_d},
            {"strength_mpa", test.mean_mpa},
            {"range_mpa", test.range_mpa},
            {"specimens", std::move(specimens)}};
}

Json json_of(const core::JudgedTest& judged) {
    Json object = json_of(judged.test);
    object["verdict"] = name_of(judged.verdict);
    object["short_mpa"] = judged.short_mpa;
    object["running_mean_mpa"] = number_or_null(judged.running_mean_mpa);
    object["mean_verdict"] = name_of(judged.mean_verdict);
    object["mean_short_mpa"] = judged.mean_short_mpa;
    return object;
}

Json json_of(const core::StrengthStatistics& found) {
    Json within = nullptr;
    if (found.within_test) {
        within = {{"tests", found.within_test->tests},
                  {"standard_deviation_mpa", found.within_test->deviation_mpa},
                  {"variation_percent", found.within_test->percent},
                  {"rating", found.within_test->rating}};
    }
    return {{"tests", found.tests},
            {"mean_mpa", found.mean_mpa},
            {"lowest_mpa", found.lowest_mpa},
            {"highest_mpa", found.highest_mpa},
            {"standard_deviation_mpa", number_or_null(found.deviation_mpa)},
            {"variation_percent", number_or_null(found.percent)},
            {"within_test", std::move(within)},
            {"counted_tests", found.counted},
            {"counted_standard_deviation_mpa", number_or_null(found.counted_deviation_mpa)},
            {"deviation_factor", number_or_null(found.deviation_factor)},
            {"required_average_strength_mpa", number_or_null(found.required_average_mpa)}};
}

Json json_of(const core::Projection& projection) {
    Json pending = Json::array();
    for (const core::ProjectedTest& test : projection.pending) {
        const bool projected = projection.sufficient && !test.outside;
        const auto where_projected = [&](double mpa) {
            return projected ? Json(mpa) : Json(nullptr);
        };
        pending.push_back({{"batch", test.batch},
                           {"early_strength_mpa", test.early_mpa},
                           {"expected_mpa", where_projected(test.expected_mpa)},
                           {"low_mpa", where_projected(test.low_mpa)},
                           {"high_mpa", where_projected(test.high_mpa)}});
    }
    const auto where_sufficient = [&](double value) {
        return projection.sufficient ? Json(value) : Json(nullptr);
    };
    return {{"early_age_d", projection.early_age_d},
            {"pairs", projection.pairs},
            {"ratio", where_sufficient(projection.ratio)},
            {"low_ratio", where_sufficient(projection.low_ratio)},
            {"high_ratio", where_sufficient(projection.high_ratio)},
            {"pending", std::move(pending)}};
}

Json json_of(const core::StrengthLine& line) {
    Json points = Json::array();
    for (std::size_t i = 0; i < line.points.size(); ++i) {
        const core::LinePoint& point = line.points[i];
        const core::Band mean = core::mean_band_at(line, point.w_cm);
        const core::Band next = core::prediction_at(line, point.w_cm);
        points.push_back({{"batch", point.name},
                          {"w_cm", point.w_cm},
                          {"strength_mpa", point.strength_mpa},
                          {"line_mpa", core::strength_at(line, point.w_cm)},
                          {"lower_mean_mpa", core::lower_mean_at(line, point.w_cm)},
                          {"mean_band_mpa", {mean.low_mpa, mean.high_mpa}},
                          {"prediction_band_mpa", {next.low_mpa, next.high_mpa}},
                          {"residual_ln", line.residuals[i].logarithm},
                          {"studentized_residual", number_or_null(line.residuals[i].studentized)}});
    }
    return {{"intercept_ln_mpa", line.intercept},
            {"slope_ln_mpa", line.slope},
            {"tests", line.points.size()},
            {"ratios", line.ratio_count},
            {"r_squared", line.r_squared},
            {"residual_deviation_ln", line.deviation},
            {"lowest_w_cm", line.lowest_w_cm},
            {"highest_w_cm", line.highest_w_cm},
            {"confidence_percent", 100 * line.confidence},
            {"surely_falls", core::surely_falls(line)},
            {"points", std::move(points)}};
}

Json json_of(const core::CoredTest& test) {
    Json cores = Json::array();
    for (const core::JudgedCore& judged : test.cores) {
        const core::DrilledCore& core = judged.core;
        cores.push_back({{"name", core.name},
                         {"diameter_mm", core.diameter_mm},
                         {"length_mm", core.length_mm},
                         {"crushed_mpa", core.strength_mpa},
                         {"length_ratio", judged.ratio},
                         {"factor", judged.factor},
                         {"strength_mpa", judged.strength_mpa},
                         {"drilled", date_or_null(core.drilled)},
                         {"bagged_after_h", number_or_null(core.bagged_after_h)},
                         {"last_wetted", date_or_null(core.last_wetted)},
                         {"tested", date_or_null(core.tested)}});
    }
    return {{"batch", test.batch},
            {"average_mpa", test.average_mpa},
            {"least_mpa", test.least_mpa},
            {"cores", std::move(cores)}};
}

Json json_of(const core::WayStep& step) {
    return {{"step", step.name},
            {"text", words(step.text, core::UnitSystem::si)},
            {"source", step.source.citation},
            {"from_memory", step.source.confidence == core::Confidence::from_memory}};
}

template <class Value>
Json strength_list(const std::vector<Value>& values) {
    Json list = Json::array();
    for (const Value& value : values) {
        list.push_back(json_of(value));
    }
    return list;
}

} // namespace

std::string json(const StrengthResult& result) {
    const core::StrengthRecord& record = result.record;
    const core::StrengthFindings& findings = result.findings;
    Json object =
        json_heading("strength", record.title, core::verdicts_of(findings.checks), result.inputs);
    object["today"] = units::written_date(result.today);
    object["code"] = record.code_name;
    object["strength_class"] =
        record.strength_class.empty() ? Json(nullptr) : Json(record.strength_class);
    object["specified_strength_mpa"] = record.specified_mpa;
    object["strength_age_d"] = record.strength_age_d;
    object["specimen"] = {
        {"shape", record.specimen.shape == core::SpecimenShape::cube ? "cube" : "cylinder"},
        {"width_mm", record.specimen.width_mm},
        {"height_mm", record.specimen.height_mm}};
    object["single_test_least_mpa"] = findings.acceptance.single_least_mpa;
    object["averaged_tests"] = findings.acceptance.averaged;
    object["mean_least_mpa"] = number_or_null(findings.acceptance.mean_least_mpa);
    object["tests"] = strength_list(findings.tests);
    object["other_tests"] = strength_list(findings.other_tests);
    object["statistics"] = findings.statistics ? json_of(*findings.statistics) : Json(nullptr);
    object["cores"] = strength_list(findings.cores);
    object["way_on"] = strength_list(findings.way_on);
    object["projections"] = strength_list(findings.projections);
    object["line"] = findings.line ? json_of(*findings.line) : Json(nullptr);
    object["checks"] = json_of(findings.checks);
    object["steps"] = json_of(findings.worksheet.steps);
    object["cautions"] = json_of(findings.worksheet.cautions);
    return written(object);
}

} // namespace boardmark::report
