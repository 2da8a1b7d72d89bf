#pragma once

#include <boardmark/core/basis/phrase.hpp>
#include <boardmark/core/basis/source.hpp>

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// How the sea reaches a wall.
enum class Sea { none, spray, tidal };

/// How the concrete at the face gets wet.
enum class Wetting { dry, sheltered, rain, long_wet, under_water };

/// How a face lies to rain and meltwater.
enum class Facing { vertical, horizontal };

/// What is known of the place where the concrete stands. What is not stated is not assumed.
struct Site {
    std::optional<bool> freezing;               ///< whether it freezes and thaws there
    std::optional<bool> wet_when_freezing;      ///< whether the concrete is often wet then
    std::optional<bool> deicer;                 ///< whether deicing salt reaches it
    std::optional<Sea> sea;                     ///< sea water or its spray
    std::optional<double> soil_sulfate_percent; ///< water-soluble SO4 by mass of the soil, 0–100
    std::optional<bool> salty_air = {};         ///< whether the air brings salt from the sea
    std::optional<Wetting> wetting = {};
    std::optional<Facing> facing = {};
    std::optional<bool> aggressive_ground = {}; ///< whether ground or ground water attacks concrete
};

/// Sulfate of the soil from which a class holds.
struct SulfateBand {
    std::string class_name; ///< "S1"
    double from_percent;
    bool holds_at_bound; ///< whether the class holds at the figure itself, or only above it
};

/// What a rule of a site may ask about.
enum class SiteFact {
    freezing,
    wet_when_freezing,
    deicer,
    sea,
    soil_sulfate,
    reinforced,
    salty_air,
    wetting,
    facing,
    aggressive_ground,
};
constexpr std::size_t site_facts = 10;

/// What a fact may be; a rule holds for any of several, so each is a bit of its own.
enum class FactValue : unsigned {
    open = 1, ///< not stated
    no = 2,
    yes = 4,
    spray = 8,
    tidal = 16,
    harmless = 32, ///< sulfate of the mildest band
    more = 64,     ///< sulfate of any other band
    dry = 128,
    sheltered = 256,
    rain = 512,
    long_wet = 1024,
    under_water = 2048,
    vertical = 4096,
    horizontal = 8192,
};

/// A fact and the values for which a rule holds, FactValue by FactValue.
struct SiteCondition {
    SiteFact fact;
    unsigned values;
};

/// One row of the table that leads from a site to the class of a category.
struct SiteRule {
    std::vector<SiteCondition> conditions; ///< that must all hold
    std::string class_name;                ///< empty where the row gives none
    bool by_soil = false;                  ///< the class of the soil's sulfate instead
    std::string reason;  ///< may speak of {sulfate}; empty where a fact is missing
    std::string missing; ///< keys that would decide; a class beside it is the most severe possible
    std::string open_point; ///< what may still ask more, after the class; empty where nothing
    bool asks_none = false; ///< such a site needs no class of the category
};

/// What a code says of sites.
struct SiteRules {
    std::vector<SulfateBand> soil_sulfate;          ///< increasing
    std::vector<std::vector<SiteRule>> of_category; ///< the first that holds gives the class
    Source source;                                  ///< of the table of classes

    /// Whether there is a table at all.
    bool is_known() const { return !source.citation.empty(); }
};

/// The exposure class of one category that follows from a site.
struct SiteClass {
    std::size_t category; ///< its place among the code's categories
    std::string name;     ///< "F2"; empty where none follows
    Phrase reason;        ///< why this class, or why none
    Source source;
};

/// One entry for each category, in the order of the code. Where the table's wording leaves a choice
/// the safer class is taken and the reason says so.
std::vector<SiteClass> site_classes(const Site& site, bool reinforced, const SiteRules& rules);

struct CodeTables;
struct Requirements;

/// Adds the classes of the site to `exposure`, in each category where none is stated, and to
/// `exposure_by_site`. Does nothing where no site is stated.
void add_site_classes(Requirements& requirements, const CodeTables& code);

} // namespace boardmark::core
