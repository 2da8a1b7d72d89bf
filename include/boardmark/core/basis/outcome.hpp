#pragma once

#include <boardmark/core/basis/unresolved.hpp>

#include <utility>
#include <variant>

namespace boardmark::core {

/// A result, or why well-formed inputs lead to none. Neither is thrown: the caller looks first.
template <class Result>
class [[nodiscard]] Outcome {
public:
    Outcome(Result result)
        : outcome_{std::in_place_index<0>, std::move(result)} {}
    Outcome(Unresolved why)
        : outcome_{std::in_place_index<1>, std::move(why)} {}

    explicit operator bool() const { return outcome_.index() == 0; }

    /// The result. Only where there is one.
    const Result& operator*() const& { return *std::get_if<0>(&outcome_); }
    Result& operator*() & { return *std::get_if<0>(&outcome_); }
    Result&& operator*() && { return std::move(*std::get_if<0>(&outcome_)); }
    const Result* operator->() const { return std::get_if<0>(&outcome_); }
    Result* operator->() { return std::get_if<0>(&outcome_); }

    /// What is missing and what would settle it. Only where there is no result.
    const Unresolved& why() const& { return *std::get_if<1>(&outcome_); }
    Unresolved&& why() && { return std::move(*std::get_if<1>(&outcome_)); }

private:
    std::variant<Result, Unresolved> outcome_;
};

} // namespace boardmark::core
