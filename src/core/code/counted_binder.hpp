#pragma once

#include <boardmark/core/code/binder_rules.hpp>
#include <boardmark/core/mix/material.hpp>
#include <boardmark/core/mix/proportions.hpp>

#include "stated_classes.hpp"

#include <array>

namespace boardmark::core {

/// An addition as a code counts it.
struct CountedMass {
    double kg = 0;         ///< what is there
    double counted_kg = 0; ///< as much of it as may count, before k
    double k = 0;
    const CountedAddition* by = nullptr; ///< nullptr where the code counts none of it
    bool other_standard = false; ///< its standard is not stated to be the one that the code asks
};

/// Fly ash, slag cement, silica fume.
constexpr std::size_t countable_additions = 3;

/// The binder as a code counts it, in the unit of mass in which it was added up.
struct CountedBinder {
    double cement_kg = 0;
    double all_kg = 0;     ///< cement and additions
    double counted_kg = 0; ///< cement and what counts beside it
    std::array<CountedMass, countable_additions> additions = {};
    bool cement_is_assumed = false; ///< its standard does not tell the type for which k is given
    bool in_doubt = false; ///< something counts by a figure from memory or by no firm rule

    /// How much of all cementitious material counts, 0–1.
    double counted_share() const { return all_kg > 0 ? counted_kg / all_kg : 1; }
};

/// Adds a binder up, material by material. Costs no allocation.
class BinderCount {
public:
    /// @param classes the ones stated: in some an addition does not count, or counts less
    BinderCount(const CodeTables& code, const StatedClasses& classes);

    void add(const Material& material, double kg);

    CountedBinder counted() const;

private:
    CountedMass counted_of(std::size_t index) const;
    double k_of(const CountedAddition& rule) const;

    const CodeTables& code_;
    const StatedClasses& classes_;
    double plain_kg_ = 0;     ///< CEM I, or what is taken for it
    double composite_kg_ = 0; ///< CEM II/A
    double other_kg_ = 0;     ///< cements beside which nothing counts
    double rest_kg_ = 0;      ///< additions that never count by k
    bool cement_is_assumed_ = false;
    std::array<double, countable_additions> addition_kg_ = {};
    std::array<bool, countable_additions> other_standard_ = {};
};

/// The binder of proportions, by the code's rules.
CountedBinder count_binder(const Proportions& proportions, const CodeTables& code,
                           const StatedClasses& classes);

/// The binder of a mix that is still to be proportioned, per 100 kg of it.
CountedBinder count_binder(const std::vector<Share>& binder, const CodeTables& code,
                           const StatedClasses& classes);

} // namespace boardmark::core
