#include <boardmark/core/strength/strength_tables.hpp>

#include "../basis/tolerance.hpp"
#include "../checks/compare.hpp"
#include "record_evaluation.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

Acceptance aci_acceptance(const StrengthRecord& record, const AciAcceptance& rules) {
    return {.single_least_mpa = above(record.specified_mpa, rules.step_mpa)
                                    ? rules.single_test_fraction * record.specified_mpa
                                    : record.specified_mpa - rules.single_test_allowance_mpa,
            .averaged = rules.averaged_tests,
            .mean_least_mpa = record.specified_mpa,
            .mean_id = "strength.average_of_three",
            .rule = {},
            .source = rules.source};
}

/// On site: the mean of all tests of the volume in question.
void ask_identity(Acceptance& acceptance, double specified_mpa, int tests,
                  const EnConformity& rules) {
    acceptance.rule = "identity testing";
    if (tests < 2 || tests > rules.identity_most_tests) {
        return;
    }
    acceptance.averaged = tests;
    acceptance.mean_least_mpa =
        specified_mpa + (tests <= rules.identity_few_tests ? rules.identity_few_margin_mpa
                                                           : rules.identity_more_margin_mpa);
}

std::vector<double> means_of(const std::vector<StrengthTest>& tests, std::size_t begin,
                             std::size_t end) {
    std::vector<double> means;
    for (std::size_t i = begin; i < end; ++i) {
        means.push_back(tests[i].mean_mpa);
    }
    return means;
}

/// The largest deviation of so many consecutive tests behind the first ones, where it is more than
/// goes with theirs.
std::optional<double> outgrown_by_mpa(const std::vector<StrengthTest>& tests,
                                      const Acceptance& acceptance, const EnConformity& rules) {
    const auto count = static_cast<std::size_t>(rules.continuous_tests);
    double largest_mpa = rules.continuous_most_deviation * acceptance.deviation_mpa;
    std::optional<double> found;
    for (auto end = static_cast<std::size_t>(rules.continuous_from) + count; end <= tests.size();
         ++end) {
        const double later_mpa = standard_deviation(means_of(tests, end - count, end));
        if (above(later_mpa, largest_mpa)) {
            largest_mpa = later_mpa;
            found = later_mpa;
        }
    }
    return found;
}

Acceptance en_acceptance(const StrengthRecord& record, const std::vector<StrengthTest>& production,
                         const EnConformity& rules) {
    const std::vector<StrengthTest> timely = in_time(production, record);
    Acceptance acceptance{.single_least_mpa =
                              record.specified_mpa - rules.single_test_allowance_mpa,
                          .averaged = 0,
                          .mean_least_mpa = std::nullopt,
                          .mean_id = "strength.mean",
                          .rule = {},
                          .source = rules.source};
    if (record.assessment == Assessment::identity) {
        ask_identity(acceptance, record.specified_mpa, static_cast<int>(production.size()), rules);
    } else if (static_cast<int>(timely.size()) < rules.continuous_from) {
        acceptance.rule = "initial production";
        acceptance.averaged = rules.initial_tests;
        acceptance.mean_least_mpa = record.specified_mpa + rules.initial_margin_mpa;
    } else {
        const auto first = static_cast<std::size_t>(rules.continuous_from);
        acceptance.rule = "continuous production";
        acceptance.averaged = rules.continuous_tests;
        acceptance.deviation_mpa = standard_deviation(means_of(timely, 0, first));
        acceptance.mean_least_mpa =
            record.specified_mpa + rules.continuous_factor * acceptance.deviation_mpa;
        acceptance.outgrown_by_mpa = outgrown_by_mpa(timely, acceptance, rules);
    }
    return acceptance;
}

/// A mean over the last tests up to one.
struct Window {
    const ProductionTests& production;
    std::size_t begin;
    std::size_t end; ///< behind the last
};

double mean_of(const Window& window) {
    double sum = 0;
    for (std::size_t i = window.begin; i < window.end; ++i) {
        sum += window.production.tests[i].mean_mpa;
    }
    return sum / double(window.end - window.begin);
}

/// Whether its tests follow each other, and none of them was late.
bool is_whole(const Window& window, double strength_age_d) {
    for (std::size_t i = window.begin; i < window.end; ++i) {
        const bool gap = i > window.begin && window.production.after_gap[i];
        if (gap || above(window.production.tests[i].age_d, strength_age_d)) {
            return false;
        }
    }
    return true;
}

Verdict unless_it_fails(Verdict verdict, bool known) {
    return known || verdict == Verdict::fails ? verdict : Verdict::not_checked;
}

} // namespace

Acceptance acceptance_of(const StrengthRecord& record, const std::vector<StrengthTest>& production,
                         const StrengthTables& tables) {
    return record.code == AcceptanceCode::aci_318 ? aci_acceptance(record, tables.aci)
                                                  : en_acceptance(record, production, tables.en);
}

std::vector<JudgedTest> judge(const ProductionTests& production, const Acceptance& acceptance,
                              const StrengthRecord& record) {
    const double precision = strength_precision_mpa(record.system);
    const auto count = static_cast<std::size_t>(acceptance.averaged);
    std::vector<JudgedTest> judged;
    for (std::size_t i = 0; i < production.tests.size(); ++i) {
        const double strength_mpa = production.tests[i].mean_mpa;
        const double least_mpa = acceptance.single_least_mpa;
        const bool late = above(production.tests[i].age_d, record.strength_age_d);
        JudgedTest test{.test = production.tests[i],
                        .late = late,
                        .verdict =
                            unless_it_fails(at_least({strength_mpa, least_mpa, precision}), !late),
                        .short_mpa = std::max(least_mpa - strength_mpa, 0.0)};
        if (count > 0 && i + 1 >= count) {
            const Window window{production, i + 1 - count, i + 1};
            const double mean_mpa = mean_of(window);
            test.running_mean_mpa = mean_mpa;
            test.mean_verdict =
                unless_it_fails(at_least({mean_mpa, *acceptance.mean_least_mpa, precision}),
                                is_whole(window, record.strength_age_d));
            test.mean_short_mpa = std::max(*acceptance.mean_least_mpa - mean_mpa, 0.0);
        }
        judged.push_back(std::move(test));
    }
    return judged;
}

} // namespace boardmark::core
