#pragma once

#include <boardmark/core/checks/check_id.hpp>

#include <span>
#include <string_view>

namespace boardmark::core {

/// What to do where a check fails, in words: advice of the trade, nothing published.
struct CheckRemedy {
    std::string_view id;
    std::string_view remedy;
};

/// The remedies of all checks that can fail, each id once.
std::span<const CheckRemedy> check_remedies();

/// The remedy of a check by its id, of a batched material that of all; empty where there is none.
std::string_view remedy_of(std::string_view id);

} // namespace boardmark::core
