#pragma once

// One sound mix, and every field of it that can be left out or made impossible.

#include <boardmark/core/mix/complete_mix.hpp>

#include <functional>
#include <string>
#include <vector>

namespace boardmark::test {

/// A number of a mix: how it is set, and how it is left out where it may be.
struct NumberField {
    core::Field field;
    std::string place; ///< for the failure's message
    std::function<void(core::Mix&, double)> set;
    std::function<void(core::Mix&)> leave_out; ///< empty where the struct always holds it
};

/// A mix of a quay terrace that states every figure once. Figures are of no published mix.
core::Mix whole_mix();

/// The same amounts as somebody submits them.
core::SubmittedMix whole_submittal();

std::vector<NumberField> number_fields();

/// A change after which the mix cannot be worked with, and the field that must be named.
struct Contradiction {
    std::string what;
    core::Field field;
    std::function<void(core::Mix&)> make;
};

std::vector<Contradiction> contradictions();

/// The same for a submittal.
struct SubmittedFault {
    std::string what;
    core::Field field;
    std::function<void(core::SubmittedMix&)> make;
};

std::vector<SubmittedFault> submitted_faults();

} // namespace boardmark::test
