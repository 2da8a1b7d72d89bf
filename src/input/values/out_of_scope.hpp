#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace boardmark::input {

/// Why a concrete is not proportioned here, and where its reader finds a method.
struct OutOfScope {
    std::string reason;
    std::string advice;
};

OutOfScope lightweight_aggregate();

/// What a key of a file, the word of a kind or a value says that is of a concrete that is not
/// proportioned here. Nothing where it is no such word.
std::optional<OutOfScope> key_out_of_scope(std::string_view key);
std::optional<OutOfScope> kind_out_of_scope(std::string_view kind);
std::optional<OutOfScope> value_out_of_scope(std::string_view value);

} // namespace boardmark::input
