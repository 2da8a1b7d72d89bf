#pragma once

#include <boardmark/core/mix/designation.hpp>

#include <span>

/// Looking for words among those of a designation.
namespace boardmark::core {

using Words = std::vector<std::string>;

bool has_word(const Words& words, std::string_view word);

/// Whether any word is one of those.
bool has_any(const Words& words, std::span<const std::string_view> of);

/// "C150", and the two words of "C 150".
bool has_number(const Words& words, std::string_view number);

/// Each word that follows that one: what "CEM" or "TABLE" speaks of.
Words words_after(const Words& words, std::string_view word);

} // namespace boardmark::core
