#include "../basis/phrases.hpp"
#include "sections.hpp"

namespace boardmark::core {
namespace {

Argument warmth(const char* name, double celsius) {
    return quantity(name, {celsius, Measure::temperature});
}

void add_protection(const WallPlacing& placing, const ColdPlan& plan, BriefSection& section) {
    const char* means = plan.freezes ? "insulating blankets or a heated enclosure"
                                     : "blankets, or a windproof cover";
    section.items.push_back(
        {"Hold the concrete at {least} or more at its face, edges and corners first of all "
         "[{source}], for "
         "{days} after placing [{days_source}]: {means}",
         {warmth("least", plan.least_c.value), quantity("days", {plan.days, Measure::age}),
          word("means", means), word("source", plan.least_c.source.citation),
          word("days_source", plan.days_source.citation)}});
    if (placing.held_at_c && placing.protected_until_h) {
        section.items.push_back(
            {"Planned: held at {held} until {until} after placing",
             {warmth("held", *placing.held_at_c),
              quantity("until", {*placing.protected_until_h, Measure::duration})}});
    } else {
        section.items.push_back({"NO PROTECTION IS PLANNED YET: who brings what, and who keeps it "
                                 "going at night?",
                                 {}});
    }
    const bool bared = placing.strip_after_h && placing.protected_until_h &&
                       *placing.strip_after_h < *placing.protected_until_h;
    if (bared) {
        section.items.push_back({"Faces are stripped while the protection still stands: strip in "
                                 "short lengths and cover and heat them again at once",
                                 {}});
    }
    if (plan.days < plan.days_if_loaded) {
        section.items.push_back(
            {"No backfill and no load in that time; where a load comes, protect it for {days}",
             {quantity("days", {plan.days_if_loaded, Measure::age})}});
    }
}

void add_frost(const ColdPlan& plan, BriefSection& section) {
    const Argument needed = quantity("needed", {plan.frost_strength_mpa, Measure::strength});
    section.items.push_back(
        plan.frost_strength_h
            ? Phrase{"It must have {needed} before it first freezes: not before {age} at the "
                     "temperature held, an estimate; strength tests decide",
                     {needed, no_less_than("age", {*plan.frost_strength_h, Measure::duration})}}
            : Phrase{"It must have {needed} before it first freezes; strength tests decide",
                     {needed}});
    section.items.push_back(
        {"Test the strength, on specimens kept beside the wall or in the wall itself, before the "
         "protection ends, before faces are stripped and before props are removed",
         {}});
}

void add_cooling(const ColdPlan& plan, BriefSection& section) {
    section.items.push_back(
        {"When the protection ends let it cool slowly, at most {fall} in the first 24 h "
         "[{source}]: "
         "heat down step by step, covers left on until it is as cold as the air",
         {quantity("fall", {plan.most_fall_k.value, Measure::temperature_difference}),
          word("source", plan.most_fall_k.source.citation)}});
}

} // namespace

BriefSection brief_of_cold(const BriefCase& brief) {
    BriefSection section{"IN THE COLD", {}};
    const auto& plan = brief.plan.after.cold;
    if (!plan) {
        return section;
    }
    const WallPlacing& placing = brief.wall.placing;
    section.items.push_back(
        placing.lowest_air_c
            ? Phrase{"Coldest air at placing or forecast {coldest}",
                     {warmth("coldest", plan->coldest_c)}}
            : Phrase{
                  "Air at placing {coldest}; no forecast is stated: check it before the first load",
                  {warmth("coldest", plan->coldest_c)}});
    section.items.push_back({"Before placing: no ice or snow in the forms, nothing cast on frozen "
                             "ground or against frozen steel and boards; covers and heaters at "
                             "hand and tried",
                             {}});
    add_protection(placing, *plan, section);
    add_frost(*plan, section);
    section.items.push_back({"Read the temperature of air and concrete at corners, top edge and "
                             "middle twice a day and write it down; a reading below the one to be "
                             "held means act at once",
                             {}});
    section.items.push_back({"Heaters blow past the face, never onto it, and their fumes go "
                             "outside: they mark fresh concrete, and carbon monoxide kills; keep "
                             "fire away from covers",
                             {}});
    section.items.push_back({"No wet curing where it may freeze: forms left on and covers keep "
                             "the moisture in; no cover touches the face",
                             {}});
    add_cooling(*plan, section);
    return section;
}

} // namespace boardmark::core
