#pragma once

#include <span>
#include <string_view>

namespace boardmark::record {

/// Stands in the header of every record ("bmrk"), so that no other database is taken for one.
constexpr int application_id = 0x626D726B;

/// The statements that lead from each form of the database to the next; the first makes form 1. A
/// form that was ever released is never changed: a change is one more entry.
std::span<const std::string_view> migrations();

} // namespace boardmark::record
