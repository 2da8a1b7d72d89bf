#include <boardmark/core/panels/panel_room.hpp>

#include "../checks/exposure_limits.hpp"
#include "clause_list.hpp"
#include "clause_words.hpp"
#include "paper_days.hpp"

#include <algorithm>
#include <set>

namespace boardmark::core {
namespace {

constexpr const char* general = "GENERAL";

std::vector<std::string> standards_named(const PaperCase& papers) {
    std::vector<std::string> named;
    if (!papers.asked.code.empty()) {
        named.push_back(papers.asked.code);
    }
    for (const Ingredient& ingredient : papers.mix.ingredients) {
        if (ingredient.material && !ingredient.material->standard.empty() &&
            std::ranges::count(named, ingredient.material->standard) == 0) {
            named.push_back(ingredient.material->standard);
        }
    }
    return named;
}

/// "2027-04-19", or what is left open.
Phrase on_the_day(Phrase text, const std::optional<Day>& day) {
    if (day) {
        text.text += ": by {day}";
        text.arguments.push_back(word("day", date_text(*day)));
    }
    return text;
}

const char* shown_as(PanelFeature feature) {
    switch (feature) {
    case PanelFeature::face:
        return "a plain field of the face";
    case PanelFeature::board_joint:
        return "board joints";
    case PanelFeature::tie:
        return "two form ties";
    case PanelFeature::corner:
        return "a corner";
    case PanelFeature::joint:
        return "a contraction joint";
    case PanelFeature::lift_line:
        return "a line between lifts";
    case PanelFeature::box_out:
        return "the edge of a box-out";
    case PanelFeature::repair:
        break;
    }
    return "a patch and a filled tie hole, or the place of one";
}

/// What the panel shows: as `mockup.shows` has it, else of the wall as far as the file has it.
Phrase shown_on_the_panel(const PaperCase& papers, const std::vector<PanelFeature>& wished) {
    const Wall& wall = *papers.wall;
    std::vector<std::string> parts;
    for (const PanelFeature feature : wished) {
        parts.emplace_back(shown_as(feature));
    }
    for (const PanelFeature feature :
         {PanelFeature::board_joint, PanelFeature::tie, PanelFeature::joint,
          PanelFeature::lift_line, PanelFeature::corner, PanelFeature::box_out}) {
        if (wished.empty() && walls_have(feature, wall, *papers.plan)) {
            parts.emplace_back(shown_as(feature));
        }
    }
    if (wall.reinforcement) { // no word of the key names them: no panel is cast without
        parts.emplace_back("the bars with their supports");
    }
    if (wished.empty()) {
        parts.emplace_back(shown_as(PanelFeature::repair));
    }
    return {wished.empty() ? "It shows {parts}" : "It shows, the most important first: {parts}",
            {word("parts", joined(parts))}};
}

void require_papers_in_time(const PaperCase& papers, ClauseList& list) {
    const PaperDays days = paper_days(papers);
    const TypicalFigure& ahead = papers.rules("mix_ahead");
    const Argument by = as_days("ahead", ahead.value);
    const ClauseReason reason{
        {"the mix is judged, answered and corrected before concrete is ordered", {}}, ahead.source};
    const char* text = days.mockup_is_first
                           ? "The mix and its papers are handed in {ahead} before the mock-up is "
                             "cast, which is the first concrete of the work"
                           : "The mix and its papers are handed in {ahead} before the first pour";
    if (days.mix) {
        list.require(on_the_day({text, {by}}, days.mix), reason);
    } else {
        list.choose("", {std::string{text} + ": {choice}", {by}},
                    {"schedule.first_pour",
                     {"first pour on YEAR-MONTH-DAY"},
                     {"state the day; every other day of the papers is counted from it", {}}},
                    reason);
    }
}

} // namespace

ClauseGroup clauses_of_references(const PaperCase& papers) {
    ClauseList list{general, "references"};
    const auto named = standards_named(papers);
    if (!named.empty()) {
        list.require({"These documents count, in the edition named or, where none is named, in the "
                      "one in force at the tender: {named}",
                      {word("named", joined(named))}},
                     {{"code and material standards of the files", {}}});
    }
    list.require({"Where clauses, drawings and a document differ, the stricter counts, and the "
                  "designer is asked before the work goes on",
                  {}},
                 trade_reason("a contradiction that is built is paid for twice"));
    list.require({"The structure is the licensed engineer's: the engineer's drawings and the local "
                  "code stand above these clauses",
                  {}},
                 trade_reason("nothing here designs a structure"));
    if (papers.wall) {
        list.require({"The drawings of faces, sections, boards, ties, joints and lift lines made "
                      "from the same wall file belong to these clauses",
                      {}},
                     {{"places are drawn, not described", {}}});
    }
    return list.group();
}

ClauseGroup clauses_of_submittals(const PaperCase& papers) {
    ClauseList list{general, "submittals"};
    require_papers_in_time(papers, list);
    list.require({"No concrete is placed, a mock-up included, before the mix has come back as "
                  "accepted",
                  {}},
                 trade_reason("a wall has one chance"));
    for (const auto& line : paper_ages_asked(papers)) {
        list.require({"{paper}: {age} old on the day of the first pour",
                      {word("paper", line.paper), word("age", line.told)}},
                     {{"an old paper speaks of other material", {}}, line.rule.source});
    }
    list.require({"Each paper names material, source and date. A change of any source is a new "
                  "submittal with trial batches of its own",
                  {}},
                 {{"the concrete that was judged is the concrete that is placed", {}},
                  papers.tables.finish->constancy_source});
    if (papers.wall) {
        const TypicalFigure& ahead = papers.rules("drawings_ahead");
        const PaperDays days = paper_days(papers);
        list.require(
            on_the_day({papers.wall->boards
                            ? "Form drawings with boards, ties and joints, a sample of the boards "
                              "as treated, data sheets of ties, release agent and curing: {ahead} "
                              "before the mock-up, or the forms where there is none"
                            : "Form drawings with ties and joints, data sheets of ties, release "
                              "agent and curing: {ahead} before the forms are built",
                        {as_days("ahead", ahead.value)}},
                       days.drawings),
            {{"forms are changed on paper, not on site", {}}, ahead.source});
    }
    return list.group();
}

ClauseGroup clauses_of_quality(const PaperCase& papers) {
    ClauseList list{general, "quality"};
    const JobPapers& job = papers.job;
    list.decide(job, "tests_by",
                {"Concrete is sampled and tested by technicians certified for it, of {choice}", {}},
                {"",
                 {"a laboratory that the owner pays", "a laboratory that the contractor pays"},
                 {"whoever tests should not be paid by who is tested", {}}},
                trade_reason("results are worth what their independence is"));
    list.decide(job, "loads_rejected_by",
                {"A load may be sent back by {choice}; the name is told at the conference, and the "
                 "person is there for every load",
                 {}},
                {"",
                 {"the technician who tests", "the designer's representative"},
                 {"the one who reads the test decides soonest; a decision after the load is in the "
                  "form is none",
                  {}}},
                trade_reason("a limit that nobody may enforce is none"));
    const TypicalFigure& ahead = papers.rules("conference_ahead");
    const PaperDays days = paper_days(papers);
    list.require(
        on_the_day({"Conference {ahead} before the first pour at the latest, with contractor, crew "
                    "leader, supplier, laboratory and designer: mix, forms, rate of rise, joints, "
                    "weather, curing, tests, water on site, repair; minutes to all",
                    {as_days("ahead", ahead.value)}},
                   days.conference),
        {{"each of them holds a part of the face", {}}, ahead.source});
    if (papers.asked.board_marked) {
        list.require(
            {"One plant, and one source of each material, from the mock-up to the last "
             "load; the tickets prove it",
             {}},
            {{"another source is another colour", {}}, papers.tables.finish->constancy_source});
    }
    return list.group();
}

ClauseGroup clauses_of_mockup(const PaperCase& papers) {
    ClauseList list{general, "mock-up"};
    if (!papers.wall || !(papers.wall->mockup || papers.asked.board_marked)) {
        return list.group();
    }
    const Mockup mockup = papers.wall->mockup.value_or(Mockup{});
    const bool sized = mockup.length_m && mockup.height_m && mockup.thickness_mm;
    const ClauseReason size_reason =
        trade_reason("only the full height shows what pressure, lifts and vibration do to a face");
    if (sized) {
        list.require(
            {mockup.number == 1 ? "On the site, apart from the work: one panel of "
                                  "{length} by {height}, {thickness} thick"
                                : "On the site, apart from the work: {number} panels of "
                                  "{length} by {height}, {thickness} thick",
             {as_count("number", mockup.number), as_metres("length", *mockup.length_m),
              as_metres("height", *mockup.height_m), as_length("thickness", *mockup.thickness_mm)}},
            size_reason);
    } else {
        list.choose(
            "", {"On the site, apart from the work: one panel of {choice}", {}},
            {"mockup",
             {"the wall's height and thickness, two form panels long", "length, height, thickness"},
             {"take the full height and thickness of the wall; less proves less", {}}},
            size_reason);
    }
    list.require(shown_on_the_panel(papers, mockup.shows),
                 trade_reason("what was not tried there is tried on the wall"));
    const PaperDays days = paper_days(papers);
    Phrase cast{"Of a whole production load, with the boards, treatment, release agent, ties, "
                "vibrators, crew and stripping age of the work",
                {}};
    if (const std::string& season = papers.wall->placing.season; !season.empty()) {
        cast.text += ", in its season: {season}";
        cast.arguments.push_back(word("season", season));
    }
    if (days.mockup) {
        cast.text += "; cast by {cast}";
        cast.arguments.push_back(word("cast", date_text(*days.mockup)));
    }
    list.require(std::move(cast), {{"time for a second one if the first is not accepted", {}},
                                   papers.rules("mockup_ahead").source});
    const TypicalFigure& distance = papers.rules("viewing_distance");
    list.choose(mockup.viewed_from, {"Judged from {choice}, as the whole first, then near", {}},
                {"mockup.viewed_from",
                 {"the distance of use, dry, in daylight without raking light, at 28 days",
                  "a stated distance"},
                 {"precast faces are judged from {distance} or more ({source}); people come nearer "
                  "to a bench",
                  {as_metres("distance", distance.value / 1000),
                   word("source", distance.source.citation)}}},
                trade_reason("raking light and a wet face condemn any concrete"));
    list.choose(mockup.signed_by, {"Accepted in writing by {choice}", {}},
                {"mockup.signed_by",
                 {"the designer", "designer and contractor"},
                 {"one person decides; two sign that they saw it", {}}},
                trade_reason("who judges the panel judges the wall"));
    list.require({"It stands undamaged and uncleaned until handover; every face of the work is "
                  "compared with it at the same age, dry",
                  {}},
                 trade_reason("the panel is the only measure of colour and pores that both sides "
                              "have seen"));
    list.require({"A panel that is not accepted is cast again; no form of the work is lined with "
                  "boards before one is accepted",
                  {}},
                 trade_reason("boards that are cut cannot be chosen again"));
    return list.group();
}

} // namespace boardmark::core
