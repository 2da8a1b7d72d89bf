#pragma once

#include <boardmark/core/basis/phrase.hpp>
#include <boardmark/core/basis/unresolved.hpp>
#include <boardmark/core/mix/mix.hpp>
#include <boardmark/report/writing/text_style.hpp>

#include <string>

namespace boardmark::report {

/// A phrase as a sentence, its quantities in the units of a system and rounded as the trade rounds.
/// Where a `value` would print like its `limit` (or `low`, `high`) without being it, all get more
/// digits.
std::string words(const core::Phrase& phrase, core::UnitSystem system);

/// The US trade says "cementitious materials" where the other says "cementitious material".
std::string in_us_trade_words(std::string text);

/// Why no mix follows, and the ways out, as text for a terminal of a width.
std::string text(const core::Unresolved& unresolved, const std::string& file,
                 core::UnitSystem system, std::size_t width = page_width);

} // namespace boardmark::report
