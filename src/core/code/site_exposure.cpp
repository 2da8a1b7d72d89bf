// Exposure classes of a site, by the wording of ACI 318-19 Table 19.3.1.1.

#include "site_exposure.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"

#include <algorithm>
#include <cassert>
#include <map>

namespace boardmark::core {
namespace {

struct Found {
    std::string name;
    Phrase reason;
};

Found open(const std::string& keys) {
    return {"", {"{missing} of the site is not stated", {word("missing", keys)}}};
}

bool is_yes(std::optional<bool> answer) {
    return answer.value_or(false);
}

bool sea_reaches(const Site& site) {
    return site.sea.value_or(Sea::none) != Sea::none;
}

bool is_tidal(const Site& site) {
    return site.sea == Sea::tidal;
}

Found freezing_class(const Site& site) {
    if (!site.freezing) {
        return open("'freezing'");
    }
    if (!*site.freezing) {
        return {"F0", {"no freezing and thawing", {}}};
    }
    if (!is_tidal(site) && !site.wet_when_freezing) {
        return open("'wet_when_freezing'");
    }
    if (!is_tidal(site) && !*site.wet_when_freezing) {
        return {"F1",
                {is_yes(site.deicer) ? "it freezes, and the concrete is seldom wet then; where "
                                       "salted meltwater reaches it, it is wet: F3"
                                     : "it freezes, and the concrete is seldom wet then",
                 {}}};
    }
    if (!site.deicer) {
        return open("'deicer'");
    }
    if (*site.deicer) {
        return {"F3", {"it freezes, the concrete is wet then, and deicing salt reaches it", {}}};
    }
    return {"F2",
            {sea_reaches(site) ? "it freezes, the concrete is wet then, no deicing salt; the table "
                                 "counts deicing salt for F3, not the sea's"
                               : "it freezes, the concrete is wet then, no deicing salt",
             {}}};
}

const SulfateBand& band_of(double percent, const std::vector<SulfateBand>& bands) {
    assert(!bands.empty());
    const SulfateBand* found = &bands.front();
    for (const SulfateBand& band : bands) {
        const bool reached = band.holds_at_bound ? !below(percent, band.from_percent)
                                                 : above(percent, band.from_percent);
        found = reached ? &band : found;
    }
    return *found;
}

Found class_by_sea(const Site& site) {
    std::string text = is_tidal(site) ? "sea water reaches the wall"
                                      : "spray is sea water; the table names sea water only, the "
                                        "safe side is taken";
    text += site.soil_sulfate_percent ? ", and the soil asks no more"
                                      : "; the soil's sulfate is not stated and may ask more";
    return {"S1", {text, {}}};
}

Found sulfate_class(const Site& site, const SiteRules& rules) {
    if (!site.soil_sulfate_percent) {
        return sea_reaches(site) ? class_by_sea(site)
                                 : open(site.sea ? "'soil_sulfate'" : "'sea' and 'soil_sulfate'");
    }
    const SulfateBand& band = band_of(*site.soil_sulfate_percent, rules.soil_sulfate);
    const bool soil_is_harmless = &band == &rules.soil_sulfate.front();
    if (soil_is_harmless && !site.sea) {
        return open("'sea'");
    }
    if (soil_is_harmless && sea_reaches(site)) {
        return class_by_sea(site);
    }
    std::string text = "soil with {sulfate} of water-soluble sulfate";
    if (sea_reaches(site)) {
        text += ", at least what sea water asks";
    }
    return {band.class_name,
            {text, {quantity("sulfate", {*site.soil_sulfate_percent, Measure::sulfate})}}};
}

Found water_class(const Site& site) {
    if (is_tidal(site)) {
        return {"W2",
                {"the tide reaches the wall; the table leaves to the designer whether low "
                 "permeability is needed: the safe side is taken",
                 {}}};
    }
    if (!site.sea) {
        return open("'sea'");
    }
    const std::string permeability =
        "; where low permeability is needed, which the designer says, state W2";
    if (sea_reaches(site)) {
        return {"W1", {"spray wets the wall" + permeability, {}}};
    }
    if (is_yes(site.wet_when_freezing) || is_yes(site.deicer)) {
        return {"W1", {"water reaches the wall" + permeability, {}}};
    }
    if (is_yes(site.freezing)) {
        return {"W1",
                {"it stands where it freezes and is taken as rained on, on the safe side" +
                     permeability,
                 {}}};
    }
    return {"", {"the site does not say whether the concrete is dry in service", {}}};
}

Found corrosion_class(const Site& site, bool reinforced) {
    if (!reinforced) {
        return {"", {"plain concrete has no bars to protect", {}}};
    }
    if (sea_reaches(site) || is_yes(site.deicer)) {
        const bool both = sea_reaches(site) && is_yes(site.deicer);
        return {"C2",
                {both                ? "moisture with chloride of deicing salt and of the sea"
                 : sea_reaches(site) ? "moisture with chloride of the sea or of its spray"
                                     : "moisture with chloride of deicing salt",
                 {}}};
    }
    if (!site.deicer || !site.sea) {
        return open(site.sea ? "'deicer'" : site.deicer ? "'sea'" : "'deicer' and 'sea'");
    }
    if (is_yes(site.wet_when_freezing)) {
        return {"C1", {"moist, no chloride from outside", {}}};
    }
    if (is_yes(site.freezing)) {
        return {"C1",
                {"no chloride from outside; it stands where it freezes and is taken as moist, on "
                 "the safe side",
                 {}}};
    }
    return {"", {"the site does not say whether the concrete is dry or moist", {}}};
}

const char* step_name(char category) {
    static const std::map<char, const char*> names{{'F', "exposure_freezing"},
                                                   {'S', "exposure_sulfate"},
                                                   {'W', "exposure_water"},
                                                   {'C', "exposure_corrosion"}};
    return names.at(category);
}

} // namespace

std::vector<SiteClass> site_classes(const Site& site, bool reinforced, const SiteRules& rules) {
    std::vector<SiteClass> classes;
    const auto add = [&](char category, Found found) {
        classes.push_back({category, std::move(found.name), std::move(found.reason), rules.source});
    };
    add('F', freezing_class(site));
    add('S', sulfate_class(site, rules));
    add('W', water_class(site));
    add('C', corrosion_class(site, reinforced));
    return classes;
}

std::string class_in_force(const Requirements& requirements, char category) {
    const auto found = std::ranges::find(requirements.exposure, category,
                                         [](const std::string& name) { return name.front(); });
    return found == requirements.exposure.end() ? "" : *found;
}

void add_site_classes(Requirements& requirements, const SiteRules& rules) {
    if (!requirements.site) {
        return;
    }
    for (const SiteClass& found :
         site_classes(*requirements.site, requirements.reinforced, rules)) {
        if (!found.name.empty() && class_in_force(requirements, found.category).empty()) {
            requirements.exposure.push_back(found.name);
            requirements.exposure_by_site.push_back(found.name);
        }
    }
    const std::string categories = "FSWC"; // as the code's table lists them
    std::ranges::stable_sort(requirements.exposure, {}, [&](const std::string& name) {
        return categories.find(name.front());
    });
}

void record_site(const Requirements& requirements, const Tables& tables, Worksheet& worksheet) {
    if (!requirements.site) {
        return;
    }
    for (const SiteClass& found :
         site_classes(*requirements.site, requirements.reinforced, tables.code.site)) {
        if (found.name.empty()) {
            continue; // told by the check exposure.stated
        }
        Phrase reason = found.reason;
        reason.text = "{class} by the site: " + reason.text;
        reason.arguments.push_back(word("class", found.name));
        const std::string in_force = class_in_force(requirements, found.category);
        if (std::ranges::count(requirements.exposure_by_site, found.name) == 0) {
            reason.text += "; {stated} is stated and stands";
            reason.arguments.push_back(word("stated", in_force));
        }
        worksheet.steps.push_back({.quantity = step_name(found.category),
                                   .value = std::nullopt,
                                   .measure = Measure::ratio,
                                   .provenance = Provenance::code,
                                   .reason = std::move(reason),
                                   .source = found.source,
                                   .marks = with_confidence({}, found.source)});
    }
}

} // namespace boardmark::core
