#pragma once

#include <boardmark/core/basis/source.hpp>
#include <boardmark/core/basis/step.hpp>
#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/strength/complete_record.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

struct Tables;

/// A production test at the strength age, or later where a batch has none of it, judged.
struct JudgedTest {
    StrengthTest test;
    bool late = false;                           ///< at the strength age it was no stronger
    Verdict verdict;                             ///< as a single test; a late one never holds
    double short_mpa = 0;                        ///< how far below the least of a single test
    std::optional<double> running_mean_mpa = {}; ///< of it and those before, where there are enough
    Verdict mean_verdict = Verdict::not_checked;
    double mean_short_mpa = 0; ///< how far below the least mean
};

/// What tests are held against.
struct Acceptance {
    double single_least_mpa;
    int averaged;                         ///< consecutive tests of a mean; 0: means are not held
    std::optional<double> mean_least_mpa; ///< absent where means are not held
    std::string mean_id;                  ///< "strength.average_of_three"
    std::string rule;                     ///< "initial production"; empty under ACI
    Source source;
    double deviation_mpa = 0;                   ///< of continuous production, by its first tests
    std::optional<double> outgrown_by_mpa = {}; ///< the deviation of later ones, where it is more
                                                ///< than goes with that
};

/// The scatter between the specimens of one test.
struct WithinTest {
    std::size_t tests;    ///< with at least two specimens
    double deviation_mpa; ///< from the mean range
    double percent;       ///< coefficient of variation
    std::string rating;   ///< "good", or "poor" beyond the table
    Source source;
};

/// What the tests of one class of concrete show together.
struct StrengthStatistics {
    std::size_t tests;
    double mean_mpa;
    double lowest_mpa;
    double highest_mpa;
    std::optional<double> deviation_mpa; ///< of two tests or more
    std::optional<double> percent;       ///< coefficient of variation
    std::optional<WithinTest> within_test;
    std::size_t counted;                         ///< tests that the required average is based on
    std::optional<double> counted_mean_mpa;      ///< theirs; absent where none counts
    std::optional<double> counted_deviation_mpa; ///< theirs
    std::optional<double> deviation_factor;      ///< for so many; absent where too few
    std::optional<double> required_average_mpa;  ///< ACI only
};

/// A batch that has no test at the strength age yet.
struct ProjectedTest {
    std::string batch;
    double early_mpa;
    bool outside; ///< of the range of the pairs: then nothing is projected
    double expected_mpa;
    double low_mpa; ///< between these bounds one test lies, by the confidence of the tables
    double high_mpa;
};

/// What an early age says of the strength age, from batches that were tested at both.
struct Projection {
    double early_age_d;
    std::size_t pairs;
    double lowest_early_mpa;
    double highest_early_mpa;
    double ratio;           ///< mean of strength over early strength
    double ratio_deviation; ///< of the ratios
    double low_ratio;       ///< bounds for one further batch
    double high_ratio;
    bool sufficient; ///< enough pairs to project from
    std::vector<ProjectedTest> pending;
};

/// A core with its strength as it is judged.
struct JudgedCore {
    DrilledCore core;
    double ratio;        ///< length over diameter
    double factor;       ///< for that ratio
    double strength_mpa; ///< crushed times factor
};

/// The cores of one low test.
struct CoredTest {
    std::string batch;
    std::vector<JudgedCore> cores;
    double average_mpa;
    double least_mpa;
};

/// A step on the way from a low result, in its order.
struct WayStep {
    std::string name; ///< "specimens and handling"
    Phrase text;
    Source source;
};

/// What strength results show.
struct StrengthFindings {
    Acceptance acceptance;
    std::vector<JudgedTest> tests; ///< production, one of each batch, in order of casting
    /// Batches of production whose test at the strength age is missing, late ones among them.
    std::vector<std::string> untested = {};
    std::vector<StrengthTest> other_tests; ///< trials, and other ages
    std::optional<StrengthStatistics> statistics;
    std::vector<Projection> projections; ///< by age
    std::vector<LinePoint> points;       ///< batches that state their ratio
    std::optional<StrengthLine> line;
    std::vector<CoredTest> cores = {};
    std::vector<WayStep> way_on = {}; ///< empty where no test is low
    std::vector<Check> checks;
    Worksheet worksheet;
};

/// Judges and evaluates strength results.
///
/// @param today days since 1970-01-01, by which records grow too old
StrengthFindings find_strength(const CompleteRecord& record, int today, const Tables& tables);

} // namespace boardmark::core
