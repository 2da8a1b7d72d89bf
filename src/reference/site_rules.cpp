#include "site_rules.hpp"

#include "lookup.hpp"

#include <algorithm>
#include <cassert>
#include <iterator>
#include <utility>

namespace boardmark::reference {
namespace {

using core::FactValue;
using core::SiteFact;

constexpr std::pair<std::string_view, SiteFact> fact_names[] = {
    {"freezing", SiteFact::freezing},
    {"wet_when_freezing", SiteFact::wet_when_freezing},
    {"deicer", SiteFact::deicer},
    {"sea", SiteFact::sea},
    {"soil_sulfate", SiteFact::soil_sulfate},
    {"reinforced", SiteFact::reinforced},
    {"salty_air", SiteFact::salty_air},
    {"wetting", SiteFact::wetting},
    {"facing", SiteFact::facing},
    {"aggressive_ground", SiteFact::aggressive_ground}};

FactValue value_named(std::string_view word) {
    static constexpr std::pair<std::string_view, FactValue> values[] = {
        {"open", FactValue::open},
        {"no", FactValue::no},
        {"yes", FactValue::yes},
        {"spray", FactValue::spray},
        {"tidal", FactValue::tidal},
        {"harmless", FactValue::harmless},
        {"more", FactValue::more},
        {"dry", FactValue::dry},
        {"sheltered", FactValue::sheltered},
        {"rain", FactValue::rain},
        {"long wet", FactValue::long_wet},
        {"under water", FactValue::under_water},
        {"vertical", FactValue::vertical},
        {"horizontal", FactValue::horizontal}};
    const auto found =
        std::ranges::find(values, word, &std::pair<std::string_view, FactValue>::first);
    assert(found != std::end(values));
    return found->second;
}

/// In the order of the facts. Few of a row's notes are facts, and few facts stand in a row.
std::vector<core::SiteCondition> conditions_of(const EmbeddedRow& line) {
    std::vector<core::SiteCondition> conditions;
    for (const EmbeddedNote& said : line.notes) {
        const auto known =
            std::ranges::find(fact_names, said.name, &std::pair<std::string_view, SiteFact>::first);
        if (known == std::end(fact_names)) {
            continue;
        }
        core::SiteCondition condition{known->second, 0};
        for (const std::string_view word : split(said.text, " or ")) {
            condition.values |= static_cast<unsigned>(value_named(word));
        }
        if (condition.values != 0) {
            conditions.push_back(condition);
        }
    }
    std::ranges::sort(conditions, {}, &core::SiteCondition::fact);
    return conditions;
}

core::SiteRule rule_of(const EmbeddedRow& line) {
    const std::string_view class_name = note(line, "class");
    const bool by_soil = class_name == "soil";
    return {.conditions = conditions_of(line),
            .class_name = std::string{by_soil ? "" : class_name},
            .by_soil = by_soil,
            .reason = std::string{note(line, "reason")},
            .missing = std::string{note(line, "missing")},
            .open_point = std::string{note(line, "open_point")},
            .asks_none = note(line, "asks") == "none"};
}

} // namespace

core::SiteRules site_rules(const CodeData& data) {
    core::SiteRules rules;
    if (const EmbeddedTable* sulfate = data.find("soil-sulfate")) {
        for (const EmbeddedRow& line : sulfate->rows) {
            rules.soil_sulfate.push_back({.class_name = std::string{line.name},
                                          .from_percent = cell(*sulfate, line, "from"),
                                          .holds_at_bound = note(line, "bound") == "itself"});
        }
    }
    if (const EmbeddedTable* printed = data.find("site")) {
        rules.source = source_of(printed->source);
        for (const EmbeddedRow& category : data.find("exposure")->rows) {
            if (category.group != "category") {
                continue;
            }
            auto& rows = rules.of_category.emplace_back();
            for (const EmbeddedRow& line : printed->rows) {
                if (line.group == category.name) {
                    rows.push_back(rule_of(line));
                }
            }
        }
    }
    return rules;
}

} // namespace boardmark::reference
