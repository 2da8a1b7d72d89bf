#include "../basis/tolerance.hpp"
#include "record_evaluation.hpp"

#include <algorithm>
#include <iterator>
#include <map>

namespace boardmark::core {
namespace {

/// By place of its batch: the test at the strength age, which stands before any later one.
std::map<std::size_t, const StrengthTest*> first_by_batch(const StrengthRecord& record,
                                                          const std::vector<StrengthTest>& all) {
    std::map<std::size_t, const StrengthTest*> first;
    for (const StrengthTest& test : all) {
        if (!below(test.age_d, record.strength_age_d)) {
            first.emplace(test.specimens.front().batch, &test);
        }
    }
    return first;
}

/// A batch without a date may be past its age: nobody knows that it is not.
bool may_be_due(const CastBatch& batch, const StrengthRecord& record, int today) {
    return !batch.cast || *batch.cast + record.strength_age_d < today;
}

} // namespace

ProductionTests production_of(const StrengthRecord& record, const std::vector<StrengthTest>& all,
                              int today) {
    const auto tests = first_by_batch(record, all);
    ProductionTests production;
    std::vector<std::size_t> passed; // batches without a test since the last one that has one
    for (const std::size_t place : order_of_casting(record.batches)) {
        const CastBatch& batch = record.batches[place];
        if (batch.purpose != BatchPurpose::production) {
            continue;
        }
        const auto found = tests.find(place);
        if (found == tests.end()) {
            passed.push_back(place);
            continue;
        }
        for (const std::size_t missing : passed) {
            production.untested.push_back(record.batches[missing].name);
        }
        if (above(found->second->age_d, record.strength_age_d)) {
            production.untested.push_back(batch.name);
        }
        production.tests.push_back(*found->second);
        production.after_gap.push_back(!passed.empty());
        passed.clear();
    }
    for (const std::size_t last : passed) {
        if (may_be_due(record.batches[last], record, today)) {
            production.untested.push_back(record.batches[last].name);
        }
    }
    return production;
}

std::vector<StrengthTest> in_time(const std::vector<StrengthTest>& production,
                                  const StrengthRecord& record) {
    std::vector<StrengthTest> tests;
    std::ranges::copy_if(production, std::back_inserter(tests), [&](const StrengthTest& test) {
        return same(test.age_d, record.strength_age_d);
    });
    return tests;
}

} // namespace boardmark::core
