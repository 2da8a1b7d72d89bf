#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/paper/job_papers.hpp>
#include <boardmark/core/wall/salt_at_face.hpp>

#include "../basis/phrases.hpp"
#include "../mix/high_range_reducer.hpp"
#include "sections.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

struct Question {
    bool open;
    Phrase text;
};

std::vector<Question> of_the_concrete(const BriefCase& brief) {
    const auto reducers = high_range_reducers(brief.plan.proportions);
    const bool reducer = !reducers.empty();
    bool retards_known = true;
    bool retention_known = true;
    for (const Ingredient* one : reducers) {
        retards_known = retards_known && one->material->admixture.retards.has_value();
        retention_known = retention_known && !one->material->admixture.retains.empty();
    }
    return {
        {!brief.asked.slump_window,
         {"Which slumps are permitted at placing, lowest and highest? The highest decides what the "
          "forms must carry",
          {}}},
        {reducer && !retards_known,
         {"Does the reducer delay setting? Its maker knows; until then the forms are taken to "
          "carry more",
          {}}},
        {reducer && !retention_known,
         {"How much slump is left 30 and 60 min after mixing? The reducer's maker or a trial "
          "knows",
          {}}},
        {reducer,
         {"May reducer be added again on site, how often, by whom, and who tests slump and air "
          "after it?",
          {}}},
        {brief.asked.exposure.empty(),
         {"Which exposure classes apply? The designer of the structure states them", {}}},
        {true, {"Will cement, sand, stone and plant stay the same from mock-up to last load?", {}}},
    };
}

/// What the files of the job decided under that key; empty where they did not.
std::string decided(const BriefCase& brief, const std::string& key) {
    for (const JobPapers* job : {brief.wall.papers.get(), brief.asked.papers.get()}) {
        const std::string text = job ? decision(*job, key) : "";
        if (!text.empty()) {
            return text;
        }
    }
    return "";
}

Phrase who_sends_loads_back(const BriefCase& brief) {
    const std::string who = decided(brief, "loads_rejected_by");
    return who.empty()
               ? Phrase{"Who may send a load back, and by what test on site?", {}}
               : Phrase{"By what test on site is a load sent back? By whom is decided: {who}",
                        {word("who", who)}};
}

std::vector<Question> of_the_site(const BriefCase& brief) {
    const WallPlacing& placing = brief.wall.placing;
    const auto& mockup = brief.wall.mockup;
    const auto& ties = brief.wall.ties;
    const bool salt = salt_exposure(brief.asked, brief.tables.code).at_face != SaltAtFace::none;
    const bool rusting_ties = ties && ties->kind == TieKind::mild_steel;
    return {
        {std::ranges::any_of(brief.plan.forces,
                             [](const FormForces& one) { return !one.rise.by(); }),
         {"How fast will the concrete rise, or how much does the crew place in an hour?", {}}},
        {std::ranges::any_of(
             brief.plan.forces,
             [](const FormForces& one) { return one.rise.stated_m_h && !one.rise.output_m3_h; }),
         {"How much does the crew place in an hour? The forms are planned for the stated rise",
          {}}},
        {!placing.concrete_c,
         {"How warm will the concrete be in the form? The air's temperature does not say it", {}}},
        {!placing.form_pressure_kpa,
         {"For which pressure are the forms designed, and by whom?", {}}},
        {!ties, {"Which ties, on which grid, and what working load do they have?", {}}},
        {ties && !ties->working_load_kn && !ties->breaking_load_kn,
         {"What working load do the ties have, and is the printed load a working or a breaking "
          "load?",
          {}}},
        {salt && rusting_ties && (!ties->cone_mm || !ties->plug),
         {"How far behind the face do the ties of mild steel end, and are their holes closed?",
          {}}},
        {salt && brief.asked.reinforced &&
             (decided(brief, "bar_supports").empty() || decided(brief, "tying_wire").empty()),
         {"Of what are chairs and tying wire, and how near to a face does each come? Where salt "
          "reaches it, plain steel there rusts and stains; ends of wire are bent away from the "
          "form",
          {}}},
        {!placing.vibrator_head_mm, {"Which vibrators, and how many stand by?", {}}},
        {!placing.setting_h,
         {"How long, at the day's temperature, until a lift can no longer be vibrated together "
          "with the next?",
          {}}},
        {!placing.truck_m3, {"How large are the loads, and how long is the round trip?", {}}},
        {!placing.strip_after_h, {"At which one age will the forms of all faces be stripped?", {}}},
        {!placing.loaded_after_h,
         {"When does backfill or another load come on it, and which strength must it have by then? "
          "The engineer states it",
          {}}},
        {!brief.plan.after.soffits.empty() && !placing.soffit_strip_after_h,
         {"When are forms and props of the soffits removed, and at which strength? The engineer "
          "states it",
          {}}},
        {!placing.lowest_air_c,
         {"How cold will the air get until the forms are stripped and the protection ends?", {}}},
        {brief.plan.after.cold && !(placing.held_at_c && placing.protected_until_h),
         {"How is the wall protected from the cold, how warm and how long, and who keeps it up?",
          {}}},
        {!mockup,
         {"Who builds a mock-up panel, how large, where, and when, so that it can be judged before "
          "the boards are ordered?",
          {}}},
        {mockup && mockup->viewed_from.empty(),
         {"From which distance, at which age and in which light is the face judged?", {}}},
        {mockup && mockup->signed_by.empty(), {"Who signs the mock-up?", {}}},
        {!brief.wall.boards, {"Which boards: width, thickness, wood, surface, treatment?", {}}},
        {brief.wall.boards && brief.wall.boards->treatment.empty(),
         {"How are the boards treated: sealed, soaked, aged against sugars?", {}}},
        {!brief.wall.edges, {"Are edges chamfered, tooled or sharp?", {}}},
        {!brief.wall.reinforcement,
         {"Which bars, layers and cover? The engineer's drawings say", {}}},
        {true, who_sends_loads_back(brief)},
        {true, {"What happens at a stop: where may a lift end, and how is the line made?", {}}},
    };
}

} // namespace

std::vector<Phrase> brief_questions(const BriefCase& brief) {
    std::vector<Phrase> questions;
    for (const auto& group : {of_the_concrete(brief), of_the_site(brief)}) {
        for (const Question& question : group) {
            if (question.open) {
                questions.push_back(question.text);
            }
        }
    }
    return questions;
}

} // namespace boardmark::core
