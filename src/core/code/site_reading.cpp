// A code's table from sites to exposure classes, row by row. The classes are the table's.

#include "site_reading.hpp"

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"

#include <algorithm>
#include <cassert>
#include <utility>

namespace boardmark::core {
namespace {

FactValue value_of(std::optional<bool> answer) {
    return !answer ? FactValue::open : *answer ? FactValue::yes : FactValue::no;
}

/// What is wet when it freezes stands where it freezes, whoever leaves that out.
FactValue freezing_at(const Site& site) {
    return !site.freezing && site.wet_when_freezing == true ? FactValue::yes
                                                            : value_of(site.freezing);
}

FactValue value_of(std::optional<Sea> sea) {
    if (!sea) {
        return FactValue::open;
    }
    switch (*sea) {
    case Sea::none:
        return FactValue::no;
    case Sea::spray:
        return FactValue::spray;
    case Sea::tidal:
        return FactValue::tidal;
    }
    return FactValue::open;
}

FactValue value_of(std::optional<Wetting> wetting) {
    if (!wetting) {
        return FactValue::open;
    }
    switch (*wetting) {
    case Wetting::dry:
        return FactValue::dry;
    case Wetting::sheltered:
        return FactValue::sheltered;
    case Wetting::rain:
        return FactValue::rain;
    case Wetting::long_wet:
        return FactValue::long_wet;
    case Wetting::under_water:
        return FactValue::under_water;
    }
    return FactValue::open;
}

FactValue value_of(std::optional<Facing> facing) {
    return !facing                       ? FactValue::open
           : *facing == Facing::vertical ? FactValue::vertical
                                         : FactValue::horizontal;
}

const SulfateBand* band_of(std::optional<double> percent, const std::vector<SulfateBand>& bands) {
    if (!percent || bands.empty()) {
        return nullptr;
    }
    const SulfateBand* found = &bands.front();
    for (const SulfateBand& band : bands) {
        const bool reached = band.holds_at_bound ? !below(*percent, band.from_percent)
                                                 : above(*percent, band.from_percent);
        found = reached ? &band : found;
    }
    return found;
}

FactValue value_of(const SulfateBand* band, const std::vector<SulfateBand>& bands) {
    return !band ? FactValue::open : band == &bands.front() ? FactValue::harmless : FactValue::more;
}

} // namespace

SiteReading::SiteReading(const Site& site, bool reinforced, const SiteRules& rules)
    : site_{site}
    , rules_{rules}
    , band_{band_of(site.soil_sulfate_percent, rules.soil_sulfate)}
    , facts_{freezing_at(site),
             value_of(site.wet_when_freezing),
             value_of(site.deicer),
             value_of(site.sea),
             value_of(band_, rules.soil_sulfate),
             reinforced ? FactValue::yes : FactValue::no,
             value_of(site.salty_air),
             value_of(site.wetting),
             value_of(site.facing),
             value_of(site.aggressive_ground)} {}

const SiteRule* SiteReading::row_of(std::size_t category) const {
    if (category >= rules_.of_category.size()) {
        return nullptr;
    }
    const auto& rows = rules_.of_category[category];
    const auto found = std::ranges::find_if(rows, [&](const SiteRule& rule) {
        return std::ranges::all_of(rule.conditions, [&](const SiteCondition& condition) {
            const auto fact = static_cast<std::size_t>(condition.fact);
            return (condition.values & static_cast<unsigned>(facts_[fact])) != 0;
        });
    });
    return found == rows.end() ? nullptr : &*found;
}

const std::string& SiteReading::class_of(std::size_t category) const {
    static const std::string none;
    const SiteRule* row = row_of(category);
    if (!row) {
        return none;
    }
    assert(!row->by_soil || band_); // such a row asks that the sulfate is stated
    return row->by_soil ? band_->class_name : row->class_name;
}

Phrase SiteReading::reason_of(std::size_t category) const {
    const SiteRule* row = row_of(category);
    if (!row) {
        return {rules_.is_known() ? "the code says nothing about such a site"
                                  : "no table here leads from a site to the code's classes",
                {}};
    }
    if (!row->missing.empty()) {
        return {"{missing} is not stated for the site", {word("missing", row->missing)}};
    }
    Phrase reason{row->reason, {}};
    if (row->by_soil) {
        reason.arguments.push_back(
            quantity("sulfate", {*site_.soil_sulfate_percent, Measure::sulfate}));
    }
    return reason;
}

bool SiteReading::at_worst(std::size_t category) const {
    const SiteRule* row = row_of(category);
    return row && !row->missing.empty() && !row->class_name.empty();
}

bool SiteReading::asks_none(std::size_t category) const {
    const SiteRule* row = row_of(category);
    return row && row->asks_none;
}

std::vector<SiteClass> site_classes(const Site& site, bool reinforced, const SiteRules& rules) {
    const SiteReading reading{site, reinforced, rules};
    std::vector<SiteClass> classes;
    for (std::size_t category = 0; category < rules.of_category.size(); ++category) {
        Phrase reason = reading.reason_of(category);
        if (reading.at_worst(category)) {
            reason.text += "; of the classes that are possible the most severe is taken";
        }
        classes.push_back({category, reading.class_of(category), std::move(reason), rules.source});
    }
    return classes;
}

} // namespace boardmark::core
