#pragma once

#include <boardmark/core/basis/phrase.hpp>
#include <boardmark/core/basis/source.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// How the sea reaches a wall.
enum class Sea { none, spray, tidal };

/// What is known of the place where the concrete stands. What is not stated is not assumed.
struct Site {
    std::optional<bool> freezing;               ///< whether it freezes and thaws there
    std::optional<bool> wet_when_freezing;      ///< whether the concrete is often wet then
    std::optional<bool> deicer;                 ///< whether deicing salt reaches it
    std::optional<Sea> sea;                     ///< sea water or its spray
    std::optional<double> soil_sulfate_percent; ///< water-soluble SO4 by mass of the soil, 0–100
};

/// Sulfate of the soil from which a class holds.
struct SulfateBand {
    std::string class_name; ///< "S1"
    double from_percent;
    bool holds_at_bound; ///< whether the class holds at the figure itself, or only above it
};

/// What a code says of sites.
struct SiteRules {
    std::vector<SulfateBand> soil_sulfate; ///< increasing
    Source source;                         ///< of the table of classes
};

/// The exposure class of one category that follows from a site.
struct SiteClass {
    char category;    ///< 'F', 'S', 'W' or 'C'
    std::string name; ///< "F2"; empty where none follows
    Phrase reason;    ///< why this class, or why none
    Source source;
};

/// One entry for each category, in the order F, S, W, C. Where the table's wording leaves a choice
/// the safer class is taken and the reason says so.
///
/// Source: ACI 318-19 Table 19.3.1.1.
std::vector<SiteClass> site_classes(const Site& site, bool reinforced, const SiteRules& rules);

struct Requirements;

/// Adds the classes of the site to `exposure`, in each category where none is stated, and to
/// `exposure_by_site`. Does nothing where no site is stated.
void add_site_classes(Requirements& requirements, const SiteRules& rules);

} // namespace boardmark::core
