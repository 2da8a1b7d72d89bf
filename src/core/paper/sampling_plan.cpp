#include "sampling_plan.hpp"

#include <boardmark/core/wall/cast_part.hpp>

#include "acceptance_rules.hpp"
#include "clause_words.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

/// Whole ones or a part of one, a hair below the next not counted.
int counted(double amount, double each) {
    return static_cast<int>(std::ceil(amount / each - 1e-9));
}

std::vector<SamplingRate> rates_of(const PaperRules& rules) {
    const Source& source = rules("volume_for_a_test").source;
    return {
        {.rule = {"one on each day of placing", {}}, .tests = {}, .source = source},
        {.rule = {"one for each {each}",
                  {quantity("each", {rules("volume_for_a_test").value, Measure::volume})}},
         .tests = {},
         .source = source},
        {.rule = {"one for each {each} of one side of the walls",
                  {quantity("each", {rules("area_for_a_test").value, Measure::area})}},
         .tests = {},
         .source = source},
        {.rule = {"{least} batches at random, or each batch where there are fewer, if the rates "
                  "give fewer tests for the job",
                  {as_count("least", rules("least_tests").value)}},
         .tests = {},
         .source = source}};
}

std::vector<SamplingRate> producer_rates_of(const PaperRules& rules) {
    const Source& source = rules("first_volume").source;
    return {{.rule = {"{first} in the first {volume}",
                      {as_count("first", rules("first_tests").value),
                       quantity("volume", {rules("first_volume").value, Measure::volume})}},
             .tests = {},
             .source = source},
            {.rule = {"then one for each {each}, by a certified producer who begins; {later} once "
                      "production is continuous",
                      {quantity("each", {rules("initial_volume").value, Measure::volume}),
                       quantity("later", {rules("continuous_volume").value, Measure::volume})}},
             .tests = {},
             .source = source}};
}

std::optional<int> batches_of(const PaperCase& papers) {
    const auto& truck_m3 = papers.wall->placing.truck_m3;
    if (!truck_m3) {
        return std::nullopt;
    }
    const WallQuantities& found = papers.plan->quantities;
    return counted(found.order.order_m3, *truck_m3) +
           counted(found.footing_order.order_m3, *truck_m3);
}

} // namespace

SamplingPlan sampled(const SampledWork& work, const PaperRules& rules) {
    SamplingPlan plan{.rates = rates_of(rules),
                      .volume_m3 = work.volume_m3,
                      .area_m2 = work.area_m2,
                      .pour_days = work.pour_days,
                      .batches = work.batches,
                      .source = rules("volume_for_a_test").source};
    plan.rates[0].tests = work.pour_days * static_cast<int>(rules("tests_a_day").value);
    plan.rates[1].tests = counted(work.volume_m3, rules("volume_for_a_test").value);
    plan.rates[2].tests = counted(work.area_m2, rules("area_for_a_test").value);
    int tests = 0;
    for (int i = 0; i < 3; ++i) {
        tests = std::max(tests, *plan.rates[static_cast<std::size_t>(i)].tests);
    }
    const int least = static_cast<int>(rules("least_tests").value);
    const int at_least = work.batches ? std::min(least, *work.batches) : least;
    plan.rates[3].tests = at_least;
    plan.each_batch = work.batches && *work.batches <= std::max(tests, at_least);
    plan.tests = std::max(tests, at_least);
    plan.waiver_possible = work.volume_m3 < rules("waiver_below").value * (1 - 1e-9);
    plan.stricter_tests =
        std::max(work.pour_days, counted(work.volume_m3, rules("stricter_volume").value));
    plan.stricter_tests = std::max(*plan.stricter_tests, *plan.tests);
    plan.stricter_each_m3 = rules("stricter_volume").value;
    return plan;
}

SamplingPlan sampled_by_producer(const SampledWork& work, const PaperRules& rules) {
    const TypicalFigure& first_m3 = rules("first_volume");
    const TypicalFigure& each_m3 = rules("initial_volume");
    const int first = static_cast<int>(rules("first_tests").value);
    const int later = counted(std::max(0.0, work.volume_m3 - first_m3.value), each_m3.value);
    SamplingPlan plan{.rates = producer_rates_of(rules),
                      .volume_m3 = work.volume_m3,
                      .area_m2 = work.area_m2,
                      .pour_days = work.pour_days,
                      .batches = work.batches,
                      .source = first_m3.source};
    plan.rates[0].tests = work.batches ? std::min(first, *work.batches) : first;
    plan.rates[1].tests = later;
    plan.tests = *plan.rates[0].tests + later;
    plan.each_batch = work.batches && *work.batches <= *plan.tests;
    plan.stricter_tests = plan.tests;
    plan.stricter_each_m3 = each_m3.value;
    return plan;
}

SamplingPlan sampling_plan_of(const PaperCase& papers) {
    const bool by_producer = accepted_by(papers) == AcceptedBy::identity;
    if (!papers.wall) {
        return by_producer ? SamplingPlan{.rates = producer_rates_of(papers.rules),
                                          .source = papers.rules("first_volume").source}
                           : SamplingPlan{.rates = rates_of(papers.rules),
                                          .source = papers.rules("volume_for_a_test").source};
    }
    const WallQuantities& found = papers.plan->quantities;
    const int parts = static_cast<int>(cast_parts(*papers.wall).size());
    const SampledWork sampled_work{.volume_m3 = found.order.order_m3 + found.footing_order.order_m3,
                                   .area_m2 = found.total.form_face_m2 / 2,
                                   .pour_days = papers.job.pour_days.value_or(parts),
                                   .batches = batches_of(papers)};
    SamplingPlan plan = by_producer ? sampled_by_producer(sampled_work, papers.rules)
                                    : sampled(sampled_work, papers.rules);
    plan.days_assumed = !papers.job.pour_days && !by_producer;
    return plan;
}

} // namespace boardmark::core
