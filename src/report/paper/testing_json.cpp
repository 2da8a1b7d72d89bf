#include <boardmark/report/paper/testing_report.hpp>
#include <boardmark/report/writing/words.hpp>

#include "../writing/measure_units.hpp"
#include "paper_flow.hpp"

namespace boardmark::report {
namespace {

template <class Number>
Json count_or_null(const std::optional<Number>& number) {
    return number ? Json(*number) : Json(nullptr);
}

Json json_of_rate(const core::SamplingRate& rate) {
    return {{"rate", json_of_items({rate.rule})[0]},
            {"tests", count_or_null(rate.tests)},
            {"source", source_words(rate.source)}};
}

Json json_of_sampling(const core::SamplingPlan& plan) {
    Json rates = Json::array();
    for (const core::SamplingRate& rate : plan.rates) {
        rates.push_back(json_of_rate(rate));
    }
    return {{"tests", count_or_null(plan.tests)},
            {"every_load", plan.each_batch},
            {"waiver_possible", plan.waiver_possible},
            {"stricter_tests", count_or_null(plan.stricter_tests)},
            {"stricter_each_m3", plan.stricter_each_m3},
            {"volume_m3", number_or_null(plan.volume_m3)},
            {"area_m2", number_or_null(plan.area_m2)},
            {"pour_days", count_or_null(plan.pour_days)},
            {"pour_days_assumed", plan.days_assumed},
            {"loads", count_or_null(plan.batches)},
            {"rates", std::move(rates)}};
}

Json json_of_specimens(const core::SpecimenPlan& plan) {
    const auto of_size = [&](int early, int of_age) {
        return Json{{"early", early},
                    {"at_age", of_age},
                    {"held", plan.held},
                    {"all", early + of_age + plan.held}};
    };
    return {{"early_age_d", plan.early_age_d},
            {"age_d", plan.age_d},
            {"of", core::plural_of(plan.specimen)},
            {"large", of_size(plan.large_early, plan.large)},
            {"small", plan.specimen == core::Specimen::cube
                          ? Json{}
                          : of_size(plan.small_early, plan.small)},
            {"source", source_words(plan.source)}};
}

Json json_of_fresh(const core::PourTest& test) {
    return {{"test", test.name},
            {"when", words(test.when, core::UnitSystem::si)},
            {"low", number_or_null(test.asked.low)},
            {"asked", number_or_null(test.asked.asked)},
            {"high", number_or_null(test.asked.high)},
            {"unit", si_unit(test.measure)},
            {"note", words(test.note, core::UnitSystem::si)}};
}

Json json_of_luck(const core::LuckOfTests& luck) {
    return {{"concrete", luck.concrete},       {"sound", luck.sound},
            {"mean_mpa", luck.mean_mpa},       {"test_low", luck.low_test},
            {"average_low", luck.low_average}, {"job_fails", luck.job_fails},
            {"job_passes", 1 - luck.job_fails}};
}

} // namespace

std::string json(const TestingPlanResult& result) {
    const core::TestingPlan& plan = result.plan;
    Json object = json_heading("specify", result.heading);
    object["sampling"] = json_of_sampling(plan.sampling);
    object["specimens"] = json_of_specimens(plan.specimens);
    object["fresh"] = Json::array();
    for (const core::PourTest& test : plan.fresh) {
        object["fresh"].push_back(json_of_fresh(test));
    }
    object["handling"] = json_of_items(plan.handling);
    object["standard_deviation_mpa"] = number_or_null(plan.deviation_mpa);
    object["luck"] = Json::array();
    for (const core::LuckOfTests& luck : plan.luck) {
        object["luck"].push_back(json_of_luck(luck));
    }
    object["kept"] = json_of_items(plan.kept);
    object["notes"] = json_of_items(plan.notes);
    add_checks(result.heading, object);
    object["cautions"] = Json::array();
    return written(object);
}

} // namespace boardmark::report
