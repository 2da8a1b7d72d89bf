#pragma once

#include <boardmark/core/paper/job_papers.hpp>

#include "../reading/file_context.hpp"

#include <optional>

namespace boardmark::input {

/// What the supplier asks for concrete at the site, where `supply` states a price. All prices are
/// in one currency.
std::optional<core::DeliveryTerms> read_delivery(const FileContext& context);

} // namespace boardmark::input
