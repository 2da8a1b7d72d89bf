#pragma once

#include <boardmark/core/trial/trial.hpp>

#include "../reading/file_context.hpp"

namespace boardmark::input {

/// Reads the tests of the fresh concrete of a trial.
struct FreshTestReader {
    const FileContext& context;

    /// The tests; where one is missing or wrong its fault is told and the value is not to be used.
    core::FreshTests read() const;

private:
    core::DensityTest read_density() const;
    core::FilledMeasure read_measure() const;
    void demand_possible_density() const;
    std::vector<core::TimedSlump> read_slumps() const;
};

/// A value of a document as a reading of an instrument; zero where there is none.
core::Reading reading_of(const Parsed* parsed);

} // namespace boardmark::input
