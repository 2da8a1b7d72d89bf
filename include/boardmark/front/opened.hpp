#pragma once

#include <boardmark/core/basis/unresolved.hpp>

#include <cstddef>
#include <exception>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace boardmark {

/// Something wrong with what was handed over, and where.
struct Fault {
    std::string file;       ///< its name; the title of a mix that was built in memory
    std::size_t line = 0;   ///< from 1; 0 where it concerns the whole
    std::size_t column = 0; ///< from 1, in characters
    std::string message;
    std::string advice = {}; ///< may be empty
    bool is_warning = false; ///< the value is used as it stands
};

/// Thrown by `value()` where a file or a mix is faulty.
class Faulty : public std::exception {
public:
    explicit Faulty(std::string told)
        : told_{std::move(told)} {}
    const char* what() const noexcept override { return told_.c_str(); }

private:
    std::string told_;
};

/// Thrown by `value()` where well-formed inputs lead to no result.
class NothingFollows : public std::exception {
public:
    NothingFollows(core::Unresolved why, std::string told)
        : why_{std::move(why)}
        , told_{std::move(told)} {}
    const char* what() const noexcept override { return told_.c_str(); }
    const core::Unresolved& why() const { return why_; }

private:
    core::Unresolved why_;
    std::string told_;
};

/// A result, or why there is none. Ask first, or let `value()` throw.
template <class Result>
class [[nodiscard]] Opened {
public:
    Opened(Result result, std::vector<Fault> warnings)
        : result_{std::move(result)}
        , faults_{std::move(warnings)} {}
    /// @param told all faults as text for a terminal
    Opened(std::vector<Fault> faults, std::string told)
        : faults_{std::move(faults)}
        , told_{std::move(told)} {}
    Opened(core::Unresolved unresolved, std::string told, std::vector<Fault> warnings = {})
        : faults_{std::move(warnings)}
        , unresolved_{std::move(unresolved)}
        , told_{std::move(told)} {}

    explicit operator bool() const { return result_.has_value(); }

    /// @throws Faulty where the input is wrong, NothingFollows where no result follows from it
    const Result& value() const {
        if (unresolved_) {
            throw NothingFollows{*unresolved_, told_};
        }
        if (!result_) {
            throw Faulty{told_};
        }
        return *result_;
    }

    /// Faults of what was handed over, in file order; beside a result warnings only.
    const std::vector<Fault>& faults() const { return faults_; }

    /// What is missing and what would settle it, where the input is well formed.
    const std::optional<core::Unresolved>& unresolved() const { return unresolved_; }

    /// Why there is no result, as text for a terminal; empty where there is one.
    const std::string& told() const { return told_; }

private:
    std::optional<Result> result_;
    std::vector<Fault> faults_;
    std::optional<core::Unresolved> unresolved_;
    std::string told_;
};

} // namespace boardmark
