#pragma once

#include <boardmark/core/paper/specification.hpp>

namespace boardmark::core {

/// Whose rules judge the strength tests of a job.
enum class AcceptedBy {
    averages,  ///< no test and no average of consecutive tests too low
    identity,  ///< each test and the mean of all of them
    not_known, ///< no code is stated, or its rules are not known here
};

/// By the code of the files: the tables of acceptance say whose they are.
AcceptedBy accepted_by(const PaperCase& papers);

/// Below which no single test may be.
double single_test_least_mpa(const PaperCase& papers);

/// Over the specified strength, that the mean of so many tests must have; 0 for one.
double identity_margin_mpa(const PaperCase& papers, int tests);

} // namespace boardmark::core
