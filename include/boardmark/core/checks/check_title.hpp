#pragma once

#include <boardmark/core/checks/check_id.hpp>

#include <span>
#include <string>
#include <string_view>

namespace boardmark::core {

/// What a check is called where people read: "Water/cement limit" beside "w_cm.exposure".
struct CheckTitle {
    std::string_view id;
    std::string_view title; ///< no comma and no full stop: titles are told in lists
};

/// The titles of all checks, each id once.
std::span<const CheckTitle> check_titles();

/// The title of a check by its id; of a batched material with its name: "Amount of sand batched".
/// An id that the table does not know is its own title.
std::string title_of(std::string_view id);

} // namespace boardmark::core
