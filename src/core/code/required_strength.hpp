#pragma once

#include <boardmark/core/basis/phrase.hpp>
#include <boardmark/core/basis/source.hpp>
#include <boardmark/core/basis/step.hpp>
#include <boardmark/core/code/code_tables.hpp>
#include <boardmark/core/mix/requirements.hpp>

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace boardmark::core {

/// By the specified strength alone: a factor of it and a margin.
struct NoRecord {
    double factor;
    double margin_mpa;
};

/// By a record: the larger of two rules.
struct OfRecord {
    double average_of_three_mpa;
    double single_test_mpa;
    double deviation_mpa; ///< of the record
    double factor;        ///< on it, by the number of tests
    int tests;
};

/// By a number of deviations above the specified strength.
struct OfDeviation {
    double deviations;
    double deviation_mpa;
    bool of_record; ///< otherwise assumed
};

/// Why a record does not count.
enum class SetAside { too_few_tests, too_old, of_other_strength };

/// The average strength that the code asks for, so that few tests fall below the specified one.
struct CodeAverage {
    double strength_mpa;
    const Source& source; ///< in the tables
    double specified_mpa;
    std::variant<NoRecord, OfRecord, OfDeviation> way;
    std::optional<SetAside> record_set_aside = {}; ///< why a stated record does not count
    bool lacks_strength = false; ///< of the record that the average goes by: nobody can tell
    bool lacks_age = false;      ///< whether it counts
    bool borrowed = false;       ///< the rule is that of another code

    /// Whether the figure can be relied on: the code's own, and read.
    bool is_sure() const { return !borrowed && source.confidence != Confidence::from_memory; }

    bool record_is_silent() const { return lacks_strength || lacks_age; }

    /// The keys that a silent record lacks.
    std::vector<std::string> record_lacks() const;

    /// How the strength follows.
    Phrase reason() const;
};

/// The factor on the standard deviation of so many tests, 1 from 30 on. At least 15.
double deviation_factor(int tests, const AverageStrengthRules& rules);

/// Costs no allocation.
CodeAverage code_average(const Requirements& requirements, const AverageStrengthRules& rules);

/// Why a stated record does not count where so many tests are asked; nothing where it counts or
/// none is stated. A method with its own rule asks its own number; age and strength are the code's.
std::optional<SetAside> set_aside(const Requirements& requirements, double least_tests,
                                  const AverageStrengthRules& rules);

/// The sentence for a record that was set aside by the code's number of tests, age or strength; the
/// requirements hold one.
Phrase why_set_aside(SetAside reason, const Requirements& requirements,
                     const AverageStrengthRules& rules);

/// The average strength to proportion for, recorded with its reason.
double required_average_strength(const Requirements& requirements,
                                 const AverageStrengthRules& rules, Worksheet& worksheet);

} // namespace boardmark::core
