// Knowing less of a site is never more lenient: every site of every code, whole or with answers
// left out. Exhaustive, so nothing is drawn.

#include <boardmark/reference/tables.hpp>

#include "core/code/site_reading.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <string>
#include <vector>

using namespace boardmark;
using core::Facing;
using core::Sea;
using core::Site;
using core::SiteFact;
using core::Wetting;

namespace {

/// What one key may say: nothing first, then each answer that a table can tell apart.
struct Key {
    SiteFact fact;
    std::vector<void (*)(Site&)> answers;
};

const std::vector<Key>& keys() {
    static const auto nothing = [](Site&) {};
    static const std::vector<Key> all = {
        {SiteFact::freezing,
         {nothing, [](Site& site) { site.freezing = false; },
          [](Site& site) { site.freezing = true; }}},
        {SiteFact::wet_when_freezing,
         {nothing, [](Site& site) { site.wet_when_freezing = false; },
          [](Site& site) { site.wet_when_freezing = true; }}},
        {SiteFact::deicer,
         {nothing, [](Site& site) { site.deicer = false; },
          [](Site& site) { site.deicer = true; }}},
        {SiteFact::sea,
         {nothing, [](Site& site) { site.sea = Sea::none; },
          [](Site& site) { site.sea = Sea::spray; }, [](Site& site) { site.sea = Sea::tidal; }}},
        {SiteFact::soil_sulfate,
         {nothing, [](Site& site) { site.soil_sulfate_percent = 0.05; },
          [](Site& site) { site.soil_sulfate_percent = 0.15; },
          [](Site& site) { site.soil_sulfate_percent = 5; }}},
        {SiteFact::salty_air,
         {nothing, [](Site& site) { site.salty_air = false; },
          [](Site& site) { site.salty_air = true; }}},
        {SiteFact::wetting,
         {nothing, [](Site& site) { site.wetting = Wetting::dry; },
          [](Site& site) { site.wetting = Wetting::sheltered; },
          [](Site& site) { site.wetting = Wetting::rain; },
          [](Site& site) { site.wetting = Wetting::long_wet; },
          [](Site& site) { site.wetting = Wetting::under_water; }}},
        {SiteFact::facing,
         {nothing, [](Site& site) { site.facing = Facing::vertical; },
          [](Site& site) { site.facing = Facing::horizontal; }}},
        {SiteFact::aggressive_ground,
         {nothing, [](Site& site) { site.aggressive_ground = false; },
          [](Site& site) { site.aggressive_ground = true; }}},
    };
    return all;
}

/// What the reader refuses: one answer rules the other out.
bool contradicts_itself(const Site& site) {
    const bool reached = site.sea && *site.sea != Sea::none;
    const bool dry = site.wetting == Wetting::dry || site.wetting == Wetting::sheltered;
    return (site.salty_air == false && reached) ||
           (dry && (site.wet_when_freezing == true || reached)) ||
           (site.freezing == false && site.wet_when_freezing == true) ||
           (site.freezing == true && site.wet_when_freezing == false && site.sea == Sea::tidal);
}

/// The keys that a code's rows ask for.
std::vector<Key> keys_of(const core::CodeTables& code) {
    std::vector<Key> asked;
    std::ranges::copy_if(keys(), std::back_inserter(asked), [&](const Key& key) {
        return std::ranges::any_of(code.site->of_category, [&](const auto& rows) {
            return std::ranges::any_of(rows, [&](const core::SiteRule& row) {
                return std::ranges::count(row.conditions, key.fact, &core::SiteCondition::fact) > 0;
            });
        });
    });
    return asked;
}

using Answers = std::vector<std::size_t>;

Site site_of(const Answers& answers, const std::vector<Key>& asked) {
    Site site;
    for (std::size_t i = 0; i < asked.size(); ++i) {
        asked[i].answers[answers[i]](site);
    }
    return site;
}

/// What a site asks in one category: the place of its class there, 0 for none and for the mildest.
struct Asked {
    std::ptrdiff_t severity;
    bool settled; ///< the class stands, or the site needs none; else `not checked` tells what is
                  ///< missing
};

Asked asked_by(const Site& site, std::size_t category, const core::CodeTables& code) {
    const core::SiteReading reading{site, true, code.site};
    const std::string& name = reading.class_of(category);
    if (name.empty()) {
        return {0, reading.asks_none(category)};
    }
    const auto mildest = std::ranges::find(code.classes, category, &core::ExposureClass::category);
    const core::SiteRule& row = *reading.row_of(category);
    return {code.find_class(name) - &*mildest, row.missing.empty() && row.open_point.empty()};
}

bool next(Answers& answers, const std::vector<Key>& asked) {
    for (std::size_t i = 0; i < answers.size(); ++i) {
        if (++answers[i] < asked[i].answers.size()) {
            return true;
        }
        answers[i] = 0;
    }
    return false;
}

/// Holds a site that lacks one answer against the same site with each answer that is possible.
void hold_without(std::size_t key, const Answers& answers, const std::vector<Key>& asked,
                  const core::CodeTables& code) {
    const Site site = site_of(answers, asked);
    for (std::size_t category = 0; category < code.categories.size(); ++category) {
        const Asked without = asked_by(site, category, code);
        std::vector<Asked> with;
        Answers told = answers;
        while (++told[key] < asked[key].answers.size()) {
            const Site whole = site_of(told, asked);
            if (!contradicts_itself(whole)) {
                with.push_back(asked_by(whole, category, code));
            }
        }
        const auto [mildest, severest] = std::ranges::minmax(with, {}, &Asked::severity);
        const bool all_settled = std::ranges::all_of(with, &Asked::settled);
        INFO(code.name << ", category " << code.categories[category].name << ", key " << key
                       << ", answers " << Catch::StringMaker<Answers>::convert(answers));
        REQUIRE(without.severity >= mildest.severity);
        REQUIRE((!without.settled || without.severity >= severest.severity));
        // The tables of ACI name sea water and its spray: of salty air is asked who speaks of it.
        const bool is_hint = asked[key].fact == SiteFact::salty_air && code.name.starts_with("ACI");
        REQUIRE((!without.settled || all_settled || is_hint));
        // The most sulfate that a soil may hold has no bound that one would take for granted.
        const bool bounded = asked[key].fact != SiteFact::soil_sulfate;
        REQUIRE((!bounded || mildest.severity == 0 || without.severity >= severest.severity));
    }
}

} // namespace

TEST_CASE("a site that says less asks no less, and leaves open what it does not settle") {
    for (const std::string& name : reference::codes()) {
        const core::CodeTables code = *reference::code(name, core::UnitSystem::si);
        const std::vector<Key> asked = keys_of(code);
        if (asked.empty()) {
            continue;
        }
        Answers answers(asked.size(), 0);
        do {
            if (contradicts_itself(site_of(answers, asked))) {
                continue;
            }
            for (std::size_t key = 0; key < asked.size(); ++key) {
                if (answers[key] == 0) {
                    hold_without(key, answers, asked, code);
                }
            }
        } while (next(answers, asked));
    }
}
