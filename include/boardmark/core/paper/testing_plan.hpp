#pragma once

#include <boardmark/core/paper/specification.hpp>
#include <boardmark/core/pour/pour_card.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// A rate of sampling for strength, and how many tests it gives here.
struct SamplingRate {
    Phrase rule;              ///< "one for each 150 yd3"
    std::optional<int> tests; ///< absent where the files do not tell the amount
    Phrase amount = {};       ///< what it was counted from; may be empty
    Source source = {};
};

/// How strength is sampled.
struct SamplingPlan {
    std::vector<SamplingRate> rates;
    std::optional<double> volume_m3 = {}; ///< ordered, footings too
    std::optional<double> area_m2 = {};   ///< one side of the walls
    std::optional<int> pour_days = {};
    bool days_assumed = false;              ///< each part on a day of its own
    std::optional<int> batches = {};        ///< loads; absent: not known
    std::optional<int> tests = {};          ///< the largest number of the code's rates
    bool each_batch = false;                ///< so few that each is tested
    bool waiver_possible = false;           ///< so little concrete, if the official agrees
    std::optional<int> stricter_tests = {}; ///< by the stricter rate that is often asked
    double stricter_each_m3 = 0;
    Source source = {};
};

/// How often a concrete of a mean is judged wrong or right.
struct LuckOfTests {
    std::string concrete; ///< "sound, at the required average"
    double mean_mpa;
    bool sound;         ///< otherwise it is weak, and passing is the error
    double low_test;    ///< probability of one test
    double low_average; ///< of one average of three
    double job_fails;   ///< of the whole job
};

/// Specimens of one test.
struct SpecimenPlan {
    Specimen specimen = Specimen::cylinder; ///< by which the strength is stated
    int large_early = 0;                    ///< cylinders of 6 x 12 in, or cubes
    int large = 0;                          ///< at the strength age: one test
    int small_early = 0;
    int small = 0;
    int held = 0;
    double early_age_d = 0;
    double age_d = 0;
    Source source = {};
};

/// What is sampled and tested, how often, and what the tests can tell.
struct TestingPlan {
    SamplingPlan sampling;
    SpecimenPlan specimens;
    std::vector<PourTest> fresh;   ///< slump, air, temperature, density
    std::vector<LuckOfTests> luck; ///< empty where no scatter is known
    std::optional<double> deviation_mpa = {};
    bool few_tests_behind = false; ///< the record's factor for few tests is in it
    std::vector<Phrase> handling;  ///< of samples and specimens
    std::vector<Phrase> kept;      ///< what is written down and kept
    std::vector<Phrase> notes;
    std::vector<Check> checks; ///< `tests.scatter`
};

TestingPlan testing_plan_of(const PaperCase& papers);

} // namespace boardmark::core
