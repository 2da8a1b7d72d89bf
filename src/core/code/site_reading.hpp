#pragma once

#include <boardmark/core/code/site.hpp>

#include <array>
#include <cstddef>
#include <string>

namespace boardmark::core {

/// A site held against a code's table: which row of each category holds. Costs no allocation.
class SiteReading {
public:
    SiteReading(const Site& site, bool reinforced, const SiteRules& rules);

    /// The row that holds, or nullptr where the table says nothing of such a site.
    const SiteRule* row_of(std::size_t category) const;

    /// The class that follows; empty where none does.
    const std::string& class_of(std::size_t category) const;

    /// Whether the class is the most severe of those that are possible while an answer is missing.
    bool at_worst(std::size_t category) const;

    /// Whether such a site needs no class of the category.
    bool asks_none(std::size_t category) const;

    /// Why this class, or why none.
    Phrase reason_of(std::size_t category) const;

private:
    const Site& site_;
    const SiteRules& rules_;
    const SulfateBand* band_; ///< of the soil; nullptr where its sulfate is not stated
    std::array<FactValue, site_facts> facts_; ///< by SiteFact
};

} // namespace boardmark::core
