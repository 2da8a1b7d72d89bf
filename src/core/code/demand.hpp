#pragma once

#include <boardmark/core/checks/finding.hpp>

#include "stated_classes.hpp"

#include <span>

namespace boardmark::core {

/// What a class of a code can bound.
enum class Demanded { w_cm, strength, air, chloride, addition, cement };

/// One bound that a class sets on one figure of a mix, with the word of its code.
struct Demand {
    Demanded quantity;
    Addition addition; ///< only where an addition's share is bounded
    Specimen specimen; ///< only where a strength is: by which the bound is printed
    double low;        ///< at least; -infinity where there is no such bound
    double high;       ///< at most; infinity likewise
    double low_twin;   ///< `low` as the other system of units prints it: to equal it is enough
    double precision;  ///< to which the bounds are printed
    double target;     ///< in the middle of a tolerance; NaN where the code has no figure
    const ExposureClass* by;
    const Source* source;

    /// Whether the code's table reaches this mix.
    bool has_figure() const { return low == low; }

    /// Whether the bound was not read again: it never makes a figure hold.
    bool from_memory() const { return source->confidence == Confidence::from_memory; }

    Limit limit() const;

    /// What the demanding class says of such a member.
    const ClassLimits& limits(bool reinforced) const;
};

/// What decides which figure of a code's tables applies, beside the classes.
struct DemandCase {
    UnitSystem system;
    double nominal_max_size_mm;
    const Requirements& requirements; ///< by which specimen the strength is stated
};

/// Everything that the stated classes demand of one mix: class by class, in the order of Demanded.
/// Costs no allocation.
class Demands {
public:
    Demands(const StatedClasses& stated, const CodeTables& code, const DemandCase& about);

    std::span<const Demand> all() const { return {demands_.data(), count_}; }

    /// The first demand on a figure, or nullptr.
    const Demand* first(Demanded quantity) const;

    /// The demand on a figure that asks most: the highest lower bound, else the lowest upper one;
    /// before all one without a figure, because nobody knows what it asks. Or nullptr.
    const Demand* strictest(Demanded quantity) const;

private:
    void add(const Demand& demand);

    static constexpr std::size_t most_of_a_class = 10;
    std::array<Demand, most_classes * most_of_a_class> demands_;
    std::size_t count_ = 0;
};

/// A figure of a mix held against a demand: the one place where that is done. A figure that rounds
/// to the bound but passes it is a `watch`, and so is one within a bound from memory.
Verdict held(const Demand& demand, double value);

} // namespace boardmark::core
