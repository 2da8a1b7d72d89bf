#pragma once

#include <boardmark/core/basis/phrase.hpp>
#include <boardmark/core/basis/quantity.hpp>
#include <boardmark/core/basis/source.hpp>
#include <boardmark/core/basis/step_id.hpp>

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace boardmark::core {

/// What a reader must know before trusting a value as the method's own.
enum class Mark {
    given,        ///< stated in the mix file instead of selected by the method
    interpolated, ///< between two cells of a table
    continued,    ///< beyond the method's own table, by another published one or along its line
    typical,      ///< a usual figure, because the file states none
    from_memory,  ///< a published figure that was not read again
    estimate,     ///< a figure that only a test can settle
};

using Marks = std::vector<Mark>;

/// What kind of reason a value has.
enum class Provenance { given, table, code, computed };

/// One value of a result with its reason. The arguments of the reason are the inputs of the value.
struct Step {
    std::string quantity; ///< "water", "w_cm": the noun of the step
    std::optional<double> value;
    Measure measure;
    Provenance provenance;
    Phrase reason;
    Source source = {};
    Marks marks = {};
    Keep keep = Keep::nearest; ///< how its value is shown

    bool is(StepId wanted) const { return quantity == wanted.name(); }
};

/// The steps of one calculation, in the order they were taken, and what must be said beside them.
///
/// Figures come first: a step is a function that tells what was computed, called only where
/// somebody reads it. It may look at figures and branches, never compute one.
struct Worksheet {
    std::vector<Step> steps;
    std::vector<Phrase> cautions;
    bool is_told = true; ///< false where figures alone are wanted: nothing is written then

    /// @param telling  gives the Step
    template <class Telling>
    void record(Telling&& telling) {
        if (is_told) {
            steps.push_back(std::forward<Telling>(telling)());
        }
    }

    /// @param telling  gives the Phrase
    template <class Telling>
    void caution(Telling&& telling) {
        if (is_told) {
            cautions.push_back(std::forward<Telling>(telling)());
        }
    }
};

/// Adds the mark that a source's confidence asks for.
Marks with_confidence(Marks marks, const Source& source);

} // namespace boardmark::core
