#pragma once

#include <cassert>
#include <limits>
#include <optional>

namespace boardmark::core {

/// A number or nothing, as `std::optional<double>` has it, in the size of a double: nothing is
/// not-a-number, which no figure is. It moves in a register, where an optional's flag is written as
/// a byte and read as a word, which waits: a fifth of the verdicts of a mix.
class OptionalNumber {
public:
    constexpr OptionalNumber(std::nullopt_t = std::nullopt) {}
    constexpr OptionalNumber(double number)
        : number_{number} {}
    constexpr OptionalNumber(const std::optional<double>& number)
        : number_{number ? *number : nothing} {}

    constexpr bool has_value() const { return number_ == number_; }
    constexpr explicit operator bool() const { return has_value(); }

    /// The number. Asserts that there is one.
    constexpr double operator*() const {
        assert(has_value());
        return number_;
    }

    /// The number. Throws std::bad_optional_access where there is none.
    constexpr double value() const { return std::optional<double>{*this}.value(); }

    constexpr double value_or(double otherwise) const { return has_value() ? number_ : otherwise; }

    constexpr operator std::optional<double>() const {
        return has_value() ? std::optional{number_} : std::nullopt;
    }

    friend constexpr bool operator==(OptionalNumber one, OptionalNumber other) {
        return one.has_value() ? one.number_ == other.number_ : !other.has_value();
    }
    friend constexpr bool operator==(OptionalNumber one, double other) {
        return one == OptionalNumber{other};
    }
    /// Else the optional would hold its number, or none, against this one as against a number.
    friend constexpr bool operator==(OptionalNumber one, const std::optional<double>& other) {
        return one == OptionalNumber{other};
    }

private:
    static constexpr double nothing = std::numeric_limits<double>::quiet_NaN();

    double number_ = nothing;
};

} // namespace boardmark::core
