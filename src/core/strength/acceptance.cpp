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

std::vector<double> means_of(const std::vector<StrengthTest>& tests, std::size_t count) {
    std::vector<double> means;
    for (std::size_t i = 0; i < count; ++i) {
        means.push_back(tests[i].mean_mpa);
    }
    return means;
}

Acceptance en_acceptance(const StrengthRecord& record, const std::vector<StrengthTest>& production,
                         const EnConformity& rules) {
    const int tests = static_cast<int>(production.size());
    Acceptance acceptance{.single_least_mpa =
                              record.specified_mpa - rules.single_test_allowance_mpa,
                          .averaged = 0,
                          .mean_least_mpa = std::nullopt,
                          .mean_id = "strength.mean",
                          .rule = {},
                          .source = rules.source};
    if (record.assessment == Assessment::identity) {
        ask_identity(acceptance, record.specified_mpa, tests, rules);
    } else if (tests < rules.continuous_from) {
        acceptance.rule = "initial production";
        acceptance.averaged = rules.initial_tests;
        acceptance.mean_least_mpa = record.specified_mpa + rules.initial_margin_mpa;
    } else {
        const auto first = static_cast<std::size_t>(rules.continuous_from);
        acceptance.rule = "continuous production";
        acceptance.averaged = rules.continuous_tests;
        acceptance.mean_least_mpa =
            record.specified_mpa +
            rules.continuous_factor * standard_deviation(means_of(production, first));
    }
    return acceptance;
}

double mean_of_last(const std::vector<StrengthTest>& tests, std::size_t end, std::size_t count) {
    double sum = 0;
    for (std::size_t i = end + 1 - count; i <= end; ++i) {
        sum += tests[i].mean_mpa;
    }
    return sum / double(count);
}

} // namespace

Acceptance acceptance_of(const StrengthRecord& record, const std::vector<StrengthTest>& production,
                         const StrengthTables& tables) {
    return record.code == AcceptanceCode::aci_318 ? aci_acceptance(record, tables.aci)
                                                  : en_acceptance(record, production, tables.en);
}

std::vector<JudgedTest> judge(const std::vector<StrengthTest>& production,
                              const Acceptance& acceptance, UnitSystem system) {
    const double precision = strength_precision_mpa(system);
    const auto count = static_cast<std::size_t>(acceptance.averaged);
    std::vector<JudgedTest> judged;
    for (std::size_t i = 0; i < production.size(); ++i) {
        const double strength_mpa = production[i].mean_mpa;
        JudgedTest test{.test = production[i],
                        .verdict = at_least({strength_mpa, acceptance.single_least_mpa, precision}),
                        .short_mpa = std::max(acceptance.single_least_mpa - strength_mpa, 0.0)};
        if (count > 0 && i + 1 >= count) {
            const double mean_mpa = mean_of_last(production, i, count);
            test.running_mean_mpa = mean_mpa;
            test.mean_verdict = at_least({mean_mpa, *acceptance.mean_least_mpa, precision});
            test.mean_short_mpa = std::max(*acceptance.mean_least_mpa - mean_mpa, 0.0);
        }
        judged.push_back(std::move(test));
    }
    return judged;
}

} // namespace boardmark::core
