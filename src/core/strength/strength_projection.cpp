#include <boardmark/core/strength/strength_tables.hpp>

#include "../basis/student.hpp"
#include "../basis/tolerance.hpp"
#include "record_evaluation.hpp"

#include <algorithm>
#include <cmath>
#include <map>

namespace boardmark::core {
namespace {

const StrengthTest* find_test(const std::vector<StrengthTest>& tests, const std::string& batch,
                              double age_d) {
    const auto found = std::ranges::find_if(tests, [&](const StrengthTest& test) {
        return test.batch.name == batch && same(test.age_d, age_d);
    });
    return found == tests.end() ? nullptr : &*found;
}

/// Early tests of an age: those whose batch was tested at the strength age too, and the others.
struct EarlyTests {
    std::vector<double> early_mpa; ///< of the pairs
    std::vector<double> ratios;    ///< of the pairs
    std::vector<const StrengthTest*> pending;
};

std::map<double, EarlyTests> by_age(const StrengthRecord& record,
                                    const std::vector<StrengthTest>& tests) {
    std::map<double, EarlyTests> ages;
    for (const StrengthTest& test : tests) {
        if (!below(test.age_d, record.strength_age_d)) {
            continue;
        }
        EarlyTests& early = ages[test.age_d];
        if (const auto* later = find_test(tests, test.batch.name, record.strength_age_d)) {
            early.early_mpa.push_back(test.mean_mpa);
            early.ratios.push_back(later->mean_mpa / test.mean_mpa);
        } else if (test.batch.purpose == BatchPurpose::production) {
            early.pending.push_back(&test);
        }
    }
    return ages;
}

void add_ratio(Projection& projection, const EarlyTests& early, const StrengthTables& tables) {
    const double count = double(early.ratios.size());
    const auto [lowest, highest] = std::ranges::minmax(early.early_mpa);
    projection.lowest_early_mpa = lowest;
    projection.highest_early_mpa = highest;
    for (const double ratio : early.ratios) {
        projection.ratio += ratio / count;
    }
    projection.sufficient = !below(count, tables.least_pairs.value);
    if (!projection.sufficient) {
        return;
    }
    projection.ratio_deviation = standard_deviation(early.ratios);
    const double beyond = 1 - tables.confidence_percent.value / 100;
    const double half = student_quantile(1 - beyond / 2, count - 1) * projection.ratio_deviation *
                        std::sqrt(1 + 1 / count);
    projection.low_ratio = projection.ratio - half;
    projection.high_ratio = projection.ratio + half;
}

ProjectedTest projected(const StrengthTest& test, const Projection& projection) {
    const bool outside = below(test.mean_mpa, projection.lowest_early_mpa) ||
                         above(test.mean_mpa, projection.highest_early_mpa);
    return {.batch = test.batch.name,
            .early_mpa = test.mean_mpa,
            .outside = outside,
            .expected_mpa = projection.ratio * test.mean_mpa,
            .low_mpa = projection.low_ratio * test.mean_mpa,
            .high_mpa = projection.high_ratio * test.mean_mpa};
}

} // namespace

std::vector<Projection> projections_of(const StrengthRecord& record,
                                       const std::vector<StrengthTest>& tests,
                                       const StrengthTables& tables) {
    std::vector<Projection> projections;
    for (const auto& [age_d, early] : by_age(record, tests)) {
        Projection projection{.early_age_d = age_d,
                              .pairs = early.ratios.size(),
                              .lowest_early_mpa = 0,
                              .highest_early_mpa = 0,
                              .ratio = 0,
                              .ratio_deviation = 0,
                              .low_ratio = 0,
                              .high_ratio = 0,
                              .sufficient = false,
                              .pending = {}};
        if (!early.ratios.empty()) {
            add_ratio(projection, early, tables);
        }
        for (const StrengthTest* test : early.pending) {
            projection.pending.push_back(projected(*test, projection));
        }
        projections.push_back(std::move(projection));
    }
    return projections;
}

} // namespace boardmark::core
