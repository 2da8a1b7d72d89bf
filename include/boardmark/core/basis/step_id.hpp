#pragma once

#include <string>
#include <string_view>

namespace boardmark::core {

/// Which value a step fixes, where something looks for the step: one of `step_ids`, so that a
/// wrong name does not compile.
class StepId {
public:
    /// @param name of static storage
    explicit constexpr StepId(std::string_view name)
        : name_{name} {}

    /// As results print it, "w_cm".
    constexpr std::string_view name() const { return name_; }

    operator std::string() const { return std::string{name_}; }

private:
    std::string_view name_;
};

/// The steps of a mix that a study reads again.
namespace step_ids {

inline constexpr StepId water{"water"};
inline constexpr StepId w_cm{"w_cm"};
inline constexpr StepId binder{"binder"};
inline constexpr StepId water_reduction{"water_reduction"};

} // namespace step_ids
} // namespace boardmark::core
