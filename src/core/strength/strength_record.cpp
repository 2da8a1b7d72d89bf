#include <boardmark/core/strength/strength_record.hpp>

#include "../basis/tolerance.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

namespace boardmark::core {
namespace {

StrengthTest test_of(const CastBatch& batch, std::vector<CrushedSpecimen> specimens) {
    const auto [lowest, highest] =
        std::ranges::minmax(specimens, {}, &CrushedSpecimen::strength_mpa);
    double sum = 0;
    for (const CrushedSpecimen& specimen : specimens) {
        sum += specimen.strength_mpa;
    }
    return {.batch = batch,
            .age_d = specimens.front().age_d,
            .specimens = specimens,
            .mean_mpa = sum / double(specimens.size()),
            .range_mpa = highest.strength_mpa - lowest.strength_mpa};
}

} // namespace

std::vector<std::size_t> order_of_casting(const std::vector<CastBatch>& batches) {
    std::vector<std::size_t> order;
    for (const BatchPurpose purpose : {BatchPurpose::production, BatchPurpose::trial}) {
        std::vector<std::size_t> group;
        for (std::size_t i = 0; i < batches.size(); ++i) {
            if (batches[i].purpose == purpose) {
                group.push_back(i);
            }
        }
        if (std::ranges::all_of(group,
                                [&](std::size_t i) { return batches[i].cast.has_value(); })) {
            std::ranges::stable_sort(group, {}, [&](std::size_t i) { return *batches[i].cast; });
        }
        order.insert(order.end(), group.begin(), group.end());
    }
    return order;
}

std::vector<StrengthTest> tests_of(const StrengthRecord& record) {
    std::map<std::size_t, std::map<double, std::vector<CrushedSpecimen>>> by_batch;
    for (const CrushedSpecimen& specimen : record.specimens) {
        by_batch[specimen.batch][specimen.age_d].push_back(specimen);
    }
    std::vector<StrengthTest> tests;
    for (const std::size_t batch : order_of_casting(record.batches)) {
        for (auto& [age_d, specimens] : by_batch[batch]) {
            tests.push_back(test_of(record.batches[batch], std::move(specimens)));
        }
    }
    return tests;
}

std::vector<StrengthTest> tests_of_line(const std::vector<StrengthTest>& tests, double age_d) {
    std::vector<StrengthTest> of_line;
    for (const StrengthTest& test : tests) {
        if (test.batch.w_cm && same(test.age_d, age_d)) {
            of_line.push_back(test);
        }
    }
    return of_line;
}

std::vector<LinePoint> line_points(const std::vector<StrengthTest>& tests, double age_d) {
    std::vector<LinePoint> points;
    for (const StrengthTest& test : tests_of_line(tests, age_d)) {
        points.push_back({test.batch.name, *test.batch.w_cm, test.mean_mpa});
    }
    return points;
}

StrengthRecord at_nominal_age(StrengthRecord record, double age_d, double tolerance_d) {
    for (CrushedSpecimen& specimen : record.specimens) {
        if (!above(std::abs(specimen.age_d - age_d), tolerance_d)) {
            specimen.age_d = age_d;
        }
    }
    return record;
}

} // namespace boardmark::core
