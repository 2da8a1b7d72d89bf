#pragma once

#include <cassert>
#include <cstdint>
#include <optional>

namespace boardmark::core {

/// A number or nothing, as `std::optional<double>` has it, in the size of a double: nothing is one
/// certain not-a-number that no calculation makes, so that one that went wrong is still a figure,
/// and told. It moves in a register, where an optional's flag is written as a byte and read as a
/// word, which waits: a tenth of the verdicts of a mix.
class OptionalNumber {
public:
    constexpr OptionalNumber(std::nullopt_t = std::nullopt) {}
    constexpr OptionalNumber(double number)
        : number_{number} {}
    constexpr OptionalNumber(const std::optional<double>& number)
        : number_{number ? *number : nothing} {}

    constexpr bool has_value() const {
        // Nearly every number is told by the first comparison.
        return number_ == number_ || __builtin_bit_cast(std::uint64_t, number_) != bits_of_nothing;
    }
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
    // std::bit_cast, which emscripten's library lacks yet.
    static constexpr std::uint64_t bits_of_nothing = 0x7ff8'0000'0000'0b0d;
    static constexpr double nothing = __builtin_bit_cast(double, bits_of_nothing);

    double number_ = nothing;
};

} // namespace boardmark::core
